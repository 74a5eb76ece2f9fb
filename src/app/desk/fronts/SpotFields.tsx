import type { ReactElement } from 'react';
import { BODIES, LEVERAGES, type Spot } from '../../../engine/index.ts';
import { BODY_WORDS, LEVERAGE_WORDS } from '../../../report/index.ts';
import { Select, type Option } from '../../parts/Choice.tsx';
import type { Change } from '../parts/change.ts';
import { NumberField } from '../parts/NumberField.tsx';

/** Yards off the ball a rule can put a man: from his edge of the neutral zone to the deepest safety. */
const DEPTH = { min: 0.2, max: 40 } as const;
/** Yards across that can be said: the field is not wider. */
const MOST_ACROSS = 50;
/** Eligible receivers there can be on one side. */
const MOST_RECEIVERS = 5;

const KINDS: readonly Option<Spot['kind']>[] = [
  { value: 'technique', label: 'On a man of the line' },
  { value: 'edge', label: 'Outside the last man' },
  { value: 'receiver', label: 'On a receiver' },
  { value: 'apex', label: 'Between last man and receiver' },
  { value: 'ball', label: 'From the ball' },
];

interface Props {
  readonly spot: Spot;
  readonly disabled: boolean;
  readonly onChange: Change<Spot>;
}

/** Where a rule puts a man, as one choice and the numbers that belong to it. */
export function SpotFields({ spot, disabled, onChange }: Props): ReactElement {
  return (
    <div className="rule-fields">
      <Select
        label="Stands"
        wide
        value={spot.kind}
        options={KINDS}
        disabled={disabled}
        onChoose={(kind) => {
          if (kind !== null && kind !== spot.kind) onChange(freshSpot(kind, spot.depth), null);
        }}
      />
      <OwnFields spot={spot} disabled={disabled} onChange={onChange} />
      <NumberField
        label="Depth"
        unit="yd off ball"
        value={spot.depth}
        {...DEPTH}
        step={0.5}
        disabled={disabled}
        onChange={(depth, gesture) => onChange({ ...spot, depth }, gesture)}
      />
    </div>
  );
}

function OwnFields({ spot, disabled, onChange }: Props): ReactElement {
  switch (spot.kind) {
    case 'technique':
      return (
        <>
          <Select
            label="How"
            value={spot.leverage}
            options={LEVERAGES.map((value) => ({ value, label: LEVERAGE_WORDS[value] }))}
            disabled={disabled}
            onChoose={(leverage) => {
              if (leverage !== null) onChange({ ...spot, leverage }, null);
            }}
          />
          <Select
            label="Whom"
            value={spot.on}
            options={BODIES.map((value) => ({ value, label: `the ${BODY_WORDS[value]}` }))}
            disabled={disabled}
            onChoose={(on) => {
              if (on !== null) onChange({ ...spot, on }, null);
            }}
          />
        </>
      );
    case 'edge':
      return <Across label="Outside him" unit="yd" min={0} spot={spot} disabled={disabled} onChange={onChange} />;
    case 'receiver':
      return (
        <>
          <Select
            label="How"
            value={spot.leverage}
            options={ON_RECEIVER}
            disabled={disabled}
            onChoose={(leverage) => {
              if (leverage !== null) onChange({ ...spot, leverage }, null);
            }}
          />
          <ReceiverNumber spot={spot} disabled={disabled} onChange={onChange} />
        </>
      );
    case 'apex':
      return <ReceiverNumber spot={spot} disabled={disabled} onChange={onChange} />;
    case 'ball':
      return (
        <Across
          label="Across"
          unit="yd to his side, minus: away"
          min={-MOST_ACROSS}
          spot={spot}
          disabled={disabled}
          onChange={onChange}
        />
      );
  }
}

const ON_RECEIVER: readonly Option<'inside' | 'head' | 'outside'>[] = [
  { value: 'inside', label: 'inside of' },
  { value: 'head', label: 'head up on' },
  { value: 'outside', label: 'outside of' },
];

interface AcrossProps {
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly spot: Extract<Spot, { kind: 'edge' | 'ball' }>;
  readonly disabled: boolean;
  readonly onChange: Change<Spot>;
}

function Across({ label, unit, min, spot, disabled, onChange }: AcrossProps): ReactElement {
  return (
    <NumberField
      label={label}
      unit={unit}
      value={spot.offset}
      min={min}
      max={MOST_ACROSS}
      step={0.5}
      disabled={disabled}
      onChange={(offset, gesture) => onChange({ ...spot, offset }, gesture)}
    />
  );
}

interface NumberProps {
  readonly spot: Extract<Spot, { kind: 'receiver' | 'apex' }>;
  readonly disabled: boolean;
  readonly onChange: Change<Spot>;
}

function ReceiverNumber({ spot, disabled, onChange }: NumberProps): ReactElement {
  return (
    <NumberField
      label="Receiver"
      unit="number, from outside"
      value={spot.number}
      min={1}
      max={MOST_RECEIVERS}
      step={1}
      disabled={disabled}
      onChange={(number, gesture) => onChange({ ...spot, number }, gesture)}
    />
  );
}

/** A spot of another kind, at the same depth. */
function freshSpot(kind: Spot['kind'], depth: number): Spot {
  switch (kind) {
    case 'technique':
      return { kind, on: 'tackle', leverage: 'outside-foot', depth };
    case 'edge':
      return { kind, offset: 1, depth };
    case 'receiver':
      return { kind, number: 1, leverage: 'inside', depth };
    case 'apex':
      return { kind, number: 2, depth };
    case 'ball':
      return { kind, offset: 0, depth };
  }
}
