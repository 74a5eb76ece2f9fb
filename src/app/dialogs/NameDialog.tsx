import { useId, useState, type ReactElement } from 'react';
import { Dialog } from '../parts/Dialog.tsx';
import { useNotice } from '../session/session.ts';

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
  const notice = useNotice();
  const [refusedAt, setRefusedAt] = useState<number | null>(null);
  return (
    <Dialog title={title} onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (onName(name)) onClose();
          else setRefusedAt(notice.number);
        }}
      >
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
          <p className="problem" id={`${id}-problem`} role="alert">
            {refusedAt !== null && notice.number > refusedAt ? notice.text : ''}
          </p>
        </div>
        <div className="button-row">
          <button type="submit" className="is-main">
            {action}
          </button>
          <button type="button" onClick={onClose}>
            Cancel
          </button>
        </div>
      </form>
    </Dialog>
  );
}
