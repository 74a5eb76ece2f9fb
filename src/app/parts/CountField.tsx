import { useState, type ReactElement } from 'react';
import { TypedField } from './TypedField.tsx';

interface Props {
  readonly label: string;
  /** Said behind the label: "of camp". */
  readonly unit?: string;
  /** Null: not said. */
  readonly value: number | null;
  readonly min: number;
  readonly max: number;
  readonly disabled: boolean;
  readonly onChange: (value: number | null) => void;
}

/** A whole number that need not be said. It is kept on Enter or when the field is left; half a number changes nothing. */
export function CountField({ label, unit, value, min, max, disabled, onChange }: Props): ReactElement {
  const [draft, setDraft] = useState<string | null>(null);
  const read = draft === null ? value : readCount(draft, min, max);
  const keep = (): void => {
    setDraft(null);
    if (read !== undefined && read !== value) onChange(read);
  };
  return (
    <TypedField
      label={label}
      unit={unit}
      problem={read === undefined ? `A whole number from ${min} to ${max}, or nothing.` : ''}
      invalid={read === undefined}
      input={{
        inputMode: 'numeric',
        placeholder: 'Not said',
        value: draft ?? (value === null ? '' : String(value)),
        disabled,
        onChange: (event) => setDraft(event.target.value),
        onBlur: keep,
        onKeyDown: (event) => {
          if (event.key === 'Enter') keep();
          if (event.key === 'Escape') setDraft(null);
        },
      }}
    />
  );
}

/** The number a text is; null for none; undefined when it is neither. */
function readCount(text: string, min: number, max: number): number | null | undefined {
  if (text.trim() === '') return null;
  const number = Number(text);
  return Number.isInteger(number) && number >= min && number <= max ? number : undefined;
}
