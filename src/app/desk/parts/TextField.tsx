import { useId, useState, type ReactElement } from 'react';
import { useNotice } from '../../session/session.ts';

interface Props {
  readonly label: string;
  readonly unit?: string;
  readonly value: string;
  readonly disabled: boolean;
  /** True when it was taken; otherwise the notice says why not, and what was typed stays. */
  readonly onChange: (value: string) => boolean;
}

/** A short text that is taken when the field is left or Enter is pressed; a refusal is said at the field. */
export function TextField({ label, unit, value, disabled, onChange }: Props): ReactElement {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [refusedAt, setRefusedAt] = useState<number | null>(null);
  const notice = useNotice();
  const take = (): void => {
    if (draft === null) return;
    if (draft.trim() === value || onChange(draft)) {
      setDraft(null);
      setRefusedAt(null);
    } else setRefusedAt(notice.number);
  };
  const problem = refusedAt !== null && notice.number > refusedAt ? notice.text : '';
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {unit !== undefined && <span className="hint"> {unit}</span>}
      </label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        value={draft ?? value}
        disabled={disabled}
        aria-invalid={problem !== ''}
        aria-describedby={`${id}-problem`}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
      <p className="problem" id={`${id}-problem`} role="alert">
        {problem}
      </p>
    </div>
  );
}
