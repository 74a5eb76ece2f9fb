import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import type { Comparison, LookTest, SideRef } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import type { Change } from './change.ts';
import { OrderedList } from './OrderedList.tsx';
import { PickList, type OptionGroup } from './PickList.tsx';
import { SidePicker } from './SidePicker.tsx';

interface Props {
  /** What they are the conditions of, for those who hear it: "of rule 2". */
  readonly of: string;
  readonly tests: readonly LookTest[];
  /** The sides that can be spoken of here; the first one is what a new condition speaks of. */
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<readonly LookTest[]>;
}

/** The conditions of a rule, all of which must hold: what the look shows, and on which side. */
export function Conditions({ of, tests, sides, words, disabled, onChange }: Props): ReactElement {
  const first = sides[0] ?? 'left';
  const groups = optionGroups(first, words);
  const put = (index: number, test: LookTest): void => onChange(tests.with(index, test), null);
  return (
    <OrderedList
      one="condition"
      of={of}
      items={tests}
      min={0}
      max={MAX_ENTRIES.tests}
      ordered={false}
      disabled={disabled}
      none="No condition: it always holds."
      fresh={(): LookTest => ({ kind: 'bodies', side: first, compare: 'at-least', count: 3 })}
      onChange={(next) => onChange(next, null)}
    >
      {(test, index) => (
        <div className="condition-row">
          <PickList
            label={`Condition ${index + 1} ${of}`}
            hideLabel
            value={keyOf(test)}
            ownWords={words.testAlone(test)}
            groups={groups}
            disabled={disabled}
            onPick={(key) => {
              const picked = choices(test.kind === 'backs' ? first : test.side).find((each) => keyOf(each) === key);
              if (picked !== undefined) put(index, picked);
            }}
          />
          {test.kind !== 'backs' && (
            <SidePicker
              label={`Side of condition ${index + 1} ${of}`}
              side={test.side}
              sides={sides}
              words={words}
              disabled={disabled}
              onPick={(side) => put(index, { ...test, side })}
            />
          )}
        </div>
      )}
    </OrderedList>
  );
}

const COUNTS = {
  bodies: [
    ['at-least', 3],
    ['at-most', 2],
    ['at-least', 4],
    ['at-most', 3],
    ['exactly', 3],
  ],
  receivers: [
    ['at-least', 2],
    ['at-most', 1],
    ['at-least', 3],
    ['at-most', 2],
    ['exactly', 1],
    ['exactly', 2],
    ['exactly', 3],
    ['at-least', 4],
    ['at-most', 0],
  ],
  backs: [
    ['at-most', 0],
    ['at-least', 1],
    ['exactly', 1],
    ['at-least', 2],
  ],
} as const satisfies Readonly<Record<string, readonly (readonly [Comparison, number])[]>>;

/** What can be asked of a look; anything else a file says stays as it is until it is changed. */
function choices(side: SideRef): readonly LookTest[] {
  return [
    ...COUNTS.bodies.map(([compare, count]): LookTest => ({ kind: 'bodies', side, compare, count })),
    ...COUNTS.receivers.map(([compare, count]): LookTest => ({ kind: 'receivers', side, compare, count })),
    ...COUNTS.backs.map(([compare, count]): LookTest => ({ kind: 'backs', compare, count })),
    { kind: 'field', side },
    { kind: 'back', side },
  ];
}

/** What is asked, whatever the side. */
function keyOf(test: LookTest): string {
  return test.kind === 'field' || test.kind === 'back' ? test.kind : `${test.kind} ${test.compare} ${test.count}`;
}

function optionGroups(side: SideRef, words: RuleWords): readonly OptionGroup[] {
  const all = choices(side);
  const group = (name: string, kinds: readonly LookTest['kind'][]): OptionGroup => ({
    name,
    options: all
      .filter(({ kind }) => kinds.includes(kind))
      .map((test) => ({ value: keyOf(test), label: words.testAlone(test) })),
  });
  return [
    group('The line', ['bodies']),
    group('Receivers', ['receivers']),
    group('Backfield', ['backs', 'back']),
    group('Field', ['field']),
  ];
}
