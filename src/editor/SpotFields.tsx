import { useId, useState, type ReactElement } from 'react';
import type { Point, Yards } from '../engine/index.ts';
import { NUDGE } from './tools/index.ts';

interface Props {
  readonly at: Point;
  /** True for a man of the offence, whose depth is counted the other way. */
  readonly offence: boolean;
  readonly disabled: boolean;
  /** `gesture` is the same while one field keeps the focus. */
  readonly onMove: (to: Point, gesture: string) => void;
  readonly onMoveEnd: () => void;
}

/** Where a man stands, as two numbers that can be typed: the way to move him without dragging or arrow keys. */
export function SpotFields({ at, offence, disabled, onMove, onMoveEnd }: Props): ReactElement {
  const depth = offence ? 0 - at.y : at.y;
  const put = (to: Point, gesture: string): void => onMove(to, gesture);
  return (
    <div className="spot-fields">
      <YardField
        label="Across"
        hint="yards from the ball, minus is the defence’s left"
        value={at.x}
        disabled={disabled}
        onValue={(x) => put({ ...at, x }, 'typed across')}
        onEnd={onMoveEnd}
      />
      <YardField
        label="Depth"
        hint="yards off the ball"
        value={depth}
        disabled={disabled}
        onValue={(value) => put({ ...at, y: offence ? 0 - value : value }, 'typed depth')}
        onEnd={onMoveEnd}
      />
    </div>
  );
}

interface YardFieldProps {
  readonly label: string;
  readonly hint: string;
  readonly value: Yards;
  readonly disabled: boolean;
  readonly onValue: (value: Yards) => void;
  readonly onEnd: () => void;
}

function YardField({ label, hint, value, disabled, onValue, onEnd }: YardFieldProps): ReactElement {
  const id = useId();
  // What is being typed, which may be half a number; null when nothing is.
  const [draft, setDraft] = useState<string | null>(null);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="number"
        step={NUDGE}
        value={draft ?? String(Math.round(value * 100) / 100)}
        disabled={disabled}
        aria-describedby={`${id}-hint`}
        onChange={(event) => {
          setDraft(event.target.value);
          if (Number.isFinite(event.target.valueAsNumber)) onValue(event.target.valueAsNumber);
        }}
        onBlur={() => {
          setDraft(null);
          onEnd();
        }}
      />
      <p className="hint" id={`${id}-hint`}>
        {hint}
      </p>
    </div>
  );
}
