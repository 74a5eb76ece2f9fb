import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import type { AlignRule, FrontId } from '../../../engine/index.ts';
import { lowered, type RuleWords } from '../../../report/index.ts';
import { setAlignRules } from '../../../store/index.ts';
import { Conditions } from '../parts/Conditions.tsx';
import { OrderedList } from '../parts/OrderedList.tsx';
import { sidesOfMan } from '../parts/SidePicker.tsx';
import { useEdit } from '../parts/useEdit.ts';
import type { FrontManOf } from './men.ts';
import { SpotFields } from './SpotFields.tsx';

interface Props {
  readonly front: FrontId;
  readonly man: FrontManOf;
  readonly words: RuleWords;
  readonly disabled: boolean;
}

/** The alignment rules of one man: the first that holds and can be placed is where he stands. */
export function RuleList({ front, man, words, disabled }: Props): ReactElement {
  const edit = useEdit();
  const { role, entry } = man;
  const put = (rules: readonly AlignRule[], gesture: string | null): void => {
    edit(`changed where ${role.letter} (${role.name}) stands`, gesture, (now) =>
      setAlignRules(now, { front, role: role.id, rules }),
    );
  };
  const change = (index: number, rule: AlignRule, gesture: string | null): void =>
    put(entry.rules.with(index, rule), gesture);
  return (
    <OrderedList
      one="rule"
      large
      of={`of ${role.letter}`}
      items={entry.rules}
      min={1}
      max={MAX_ENTRIES.rules}
      ordered
      disabled={disabled}
      fresh={(): AlignRule => ({ when: [], spot: { kind: 'ball', offset: 0, depth: 5 } })}
      onChange={(rules) => put(rules, null)}
    >
      {(rule, index) => (
        <details className="rule">
          <summary>{index === 0 ? words.alignRule(rule) : `Else ${lowered(words.alignRule(rule))}`}</summary>
          <div className="rule-body">
            <Conditions
              of={`of rule ${index + 1}`}
              tests={rule.when}
              sides={sidesOfMan(role)}
              words={words}
              disabled={disabled}
              onChange={(when, gesture) => change(index, { ...rule, when }, gesture)}
            />
            <SpotFields
              spot={rule.spot}
              disabled={disabled}
              onChange={(spot, gesture) => change(index, { ...rule, spot }, gesture)}
            />
          </div>
        </details>
      )}
    </OrderedList>
  );
}
