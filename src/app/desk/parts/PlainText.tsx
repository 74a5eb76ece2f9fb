import { useId, type ReactElement } from 'react';

interface Props {
  readonly label: string;
  readonly unit?: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A text field of a dialog: what is typed is judged when the dialog is done. */
export function PlainText({ label, unit, value, onChange }: Props): ReactElement {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {unit !== undefined && <span className="hint"> {unit}</span>}
      </label>
      <input id={id} type="text" value={value} autoComplete="off" onChange={(event) => onChange(event.target.value)} />
    </div>
  );
}
