import { useId, useState, type ReactElement } from 'react';
import { MakeDialog } from './MakeDialog.tsx';

interface Props {
  readonly title: string;
  readonly label: string;
  readonly start: string;
  readonly action: string;
  /** True when the name was taken; otherwise the notice says why not, and the dialog stays. */
  readonly onName: (name: string) => boolean;
  readonly onClose: () => void;
}

/** Asks for a name. */
export function NameDialog({ title, label, start, action, onName, onClose }: Props): ReactElement {
  const id = useId();
  const [name, setName] = useState(start);
  return (
    <MakeDialog title={title} action={action} onMake={() => onName(name)} onClose={onClose} problemId={`${id}-problem`}>
      <div className="field">
        <label htmlFor={id}>{label}</label>
        <input
          id={id}
          type="text"
          value={name}
          autoComplete="off"
          aria-describedby={`${id}-problem`}
          onChange={(event) => setName(event.target.value)}
        />
      </div>
    </MakeDialog>
  );
}
