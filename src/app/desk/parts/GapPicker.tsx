import type { ReactElement } from 'react';
import { BODIES, GAP_LETTERS, type GapRef, type SideRef } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import type { Change } from './change.ts';
import { OrderedList } from './OrderedList.tsx';
import { PickList, type OptionGroup } from './PickList.tsx';
import { SidePicker } from './SidePicker.tsx';

interface Props {
  /** What it is, for those who hear it: "Gap 1 of the nose". */
  readonly label: string;
  readonly gap: GapRef;
  /** The sides that can be spoken of here. */
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<GapRef>;
}

/** One gap as a rule names it: by its letter, as the edge, or outside a body; and its side. */
export function GapPicker({ label, gap, sides, words, disabled, onChange }: Props): ReactElement {
  return (
    <div className="gap-picker">
      <PickList
        label={label}
        hideLabel
        value={keyOf(gap)}
        ownWords={words.gapAlone(gap)}
        groups={optionGroups(gap.side, words)}
        disabled={disabled}
        onPick={(key) => {
          const picked = choices(gap.side).find((each) => keyOf(each) === key);
          if (picked !== undefined) onChange(picked, null);
        }}
      />
      <SidePicker
        label={`Side of: ${label}`}
        side={gap.side}
        sides={sides}
        words={words}
        disabled={disabled}
        onPick={(side) => onChange({ ...gap, side }, null)}
      />
    </div>
  );
}

interface ListProps extends Omit<Props, 'label' | 'gap' | 'onChange'> {
  /** Whose gaps they are, for those who hear it: "of the nose". */
  readonly of: string;
  readonly gaps: readonly GapRef[];
  readonly min: number;
  readonly max: number;
  /** What is said when there is none. */
  readonly none?: string;
  readonly onChange: Change<readonly GapRef[]>;
}

/** Gaps in their order, the first one first. */
export function GapList({ of, gaps, min, max, none, sides, words, disabled, onChange }: ListProps): ReactElement {
  return (
    <OrderedList
      one="gap"
      of={of}
      items={gaps}
      min={min}
      max={max}
      ordered
      disabled={disabled}
      {...(none === undefined ? {} : { none })}
      fresh={(): GapRef => ({ kind: 'letter', side: sides[0] ?? 'left', letter: 'A' })}
      onChange={(next) => onChange(next, null)}
    >
      {(gap, index) => (
        <GapPicker
          label={`Gap ${index + 1} ${of}`}
          gap={gap}
          sides={sides}
          words={words}
          disabled={disabled}
          onChange={(picked, gesture) => onChange(gaps.with(index, picked), gesture)}
        />
      )}
    </OrderedList>
  );
}

function choices(side: SideRef): readonly GapRef[] {
  return [
    ...GAP_LETTERS.map((letter): GapRef => ({ kind: 'letter', side, letter })),
    { kind: 'edge', side },
    ...BODIES.map((body): GapRef => ({ kind: 'outside', side, body })),
  ];
}

function keyOf(gap: GapRef): string {
  switch (gap.kind) {
    case 'letter':
      return `letter ${gap.letter}`;
    case 'edge':
      return 'edge';
    case 'outside':
      return `outside ${gap.body}`;
  }
}

function optionGroups(side: SideRef, words: RuleWords): readonly OptionGroup[] {
  const all = choices(side);
  const group = (name: string, kinds: readonly GapRef['kind'][]): OptionGroup => ({
    name,
    options: all
      .filter(({ kind }) => kinds.includes(kind))
      .map((gap) => ({ value: keyOf(gap), label: words.gapAlone(gap) })),
  });
  return [group('By letter', ['letter']), group('By a man of the line', ['edge', 'outside'])];
}
