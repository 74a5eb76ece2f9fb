import { useState, type ReactElement } from 'react';
import { TypedField } from '../../parts/TypedField.tsx';
import { useRefusal } from '../../session/useRefusal.ts';

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
  const [draft, setDraft] = useState<string | null>(null);
  const { problem, settle } = useRefusal();
  const take = (): void => {
    if (draft === null) return;
    const isTaken = draft.trim() === value || onChange(draft);
    if (isTaken) setDraft(null);
    settle(isTaken);
  };
  return (
    <TypedField
      label={label}
      unit={unit}
      problem={problem}
      invalid={problem !== ''}
      input={{
        value: draft ?? value,
        disabled,
        onChange: (event) => setDraft(event.target.value),
        onBlur: take,
        onKeyDown: (event) => {
          if (event.key === 'Enter') take();
        },
      }}
    />
  );
}
