import { useId, useState, type KeyboardEvent, type ReactElement } from 'react';
import { useSession } from '../../session/session.ts';
import { TypedField } from '../../parts/TypedField.tsx';
import type { Change } from './change.ts';

interface Props {
  readonly label: string;
  /** Said behind the label: "yards". */
  readonly unit?: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** What one press of an arrow key adds. A whole one: only whole numbers are taken. */
  readonly step: number;
  readonly disabled: boolean;
  readonly onChange: Change<number>;
}

interface Draft {
  readonly text: string;
  /** The value it was typed over; when another one stands here the draft is of no account. */
  readonly of: number;
}

/**
 * A number that is typed or stepped with the arrow keys. What makes no sense is refused in words and stays to be mended;
 * nothing has changed until then. While it keeps the focus it is one step of the history.
 */
export function NumberField({ label, unit, value, min, max, step, disabled, onChange }: Props): ReactElement {
  const { store } = useSession();
  const id = useId();
  const [draft, setDraft] = useState<Draft | null>(null);
  const text = draft !== null && draft.of === value ? draft.text : numberText(value);
  const read = readNumber(text, min, max, Number.isInteger(step));
  const gesture = `typed ${id}`;
  const type = (next: string): void => {
    const number = readNumber(next, min, max, Number.isInteger(step));
    setDraft({ text: next, of: number ?? value });
    if (number !== null && number !== value) onChange(number, gesture);
  };
  const press = (event: KeyboardEvent): void => {
    const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (way === 0 || disabled) return;
    event.preventDefault();
    type(numberText(Math.min(max, Math.max(min, value + way * step))));
  };
  return (
    <TypedField
      label={label}
      unit={unit}
      problem={
        read === null
          ? `A ${Number.isInteger(step) ? 'whole number' : 'number'} from ${numberText(min)} to ${numberText(max)}, please. Until then it stays ${numberText(value)}.`
          : ''
      }
      invalid={read === null}
      input={{
        inputMode: 'decimal',
        value: text,
        disabled,
        onChange: (event) => type(event.target.value),
        onKeyDown: press,
        onBlur: () => {
          if (read !== null) setDraft(null);
          store.endGesture();
        },
      }}
    />
  );
}

function readNumber(text: string, min: number, max: number, whole: boolean): number | null {
  const kept = text.trim().replace(',', '.');
  const number = Number(kept);
  if (kept === '' || !Number.isFinite(number) || number < min || number > max) return null;
  return whole && !Number.isInteger(number) ? null : number;
}

/** Two decimals are finer than anybody can stand. */
function numberText(value: number): string {
  return String(Math.round(value * 100) / 100);
}
