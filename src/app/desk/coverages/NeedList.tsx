import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import { type Coverage, type Role, type Who } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import type { Change } from '../parts/change.ts';
import { Conditions } from '../parts/Conditions.tsx';
import { OrderedList } from '../parts/OrderedList.tsx';
import { SIDES_WITH_CALL } from '../parts/SidePicker.tsx';
import { everyWho, whoKey, WhoPicker } from '../parts/WhoPicker.tsx';
import { ZonePicker } from '../parts/ZonePicker.tsx';

type Need = Coverage['needs'][number];

interface Props {
  readonly needs: readonly Need[];
  readonly roles: readonly Role[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<readonly Need[]>;
}

/** The zones a shell cannot do without, each with its condition and the men who may take it, the most natural first. */
export function NeedList({ needs, roles, words, disabled, onChange }: Props): ReactElement {
  const put = (index: number, need: Need, gesture: string | null): void => onChange(needs.with(index, need), gesture);
  return (
    <OrderedList
      one="zone"
      large
      of=""
      items={needs}
      min={0}
      max={MAX_ENTRIES.needs}
      ordered={false}
      disabled={disabled}
      none="No zone must be filled: everybody has a man, or is told his zone."
      fresh={(): Need => ({ when: [], zone: 'third', side: 'call', takers: [] })}
      onChange={(next) => onChange(next, null)}
    >
      {(need, index) => (
        <details className="rule">
          <summary>{words.need(need)}</summary>
          <div className="rule-body">
            <ZonePicker
              label={`Zone ${index + 1}`}
              zone={need.zone}
              side={need.side}
              words={words}
              disabled={disabled}
              onChange={(place, gesture) => put(index, { ...need, ...place }, gesture)}
            />
            <p className="part-label">Needed if</p>
            <Conditions
              of={`of zone ${index + 1}`}
              tests={need.when}
              sides={SIDES_WITHOUT_A_MAN}
              words={words}
              disabled={disabled}
              onChange={(when, gesture) => put(index, { ...need, when }, gesture)}
            />
            <p className="part-label">Who may take it, the most natural first</p>
            <Takers
              of={`of zone ${index + 1}`}
              takers={need.takers}
              roles={roles}
              words={words}
              disabled={disabled}
              onChange={(takers, gesture) => put(index, { ...need, takers }, gesture)}
            />
          </div>
        </details>
      )}
    </OrderedList>
  );
}

/** A zone is nobody's own, so its condition can only speak of the call, or plainly. */
const SIDES_WITHOUT_A_MAN = SIDES_WITH_CALL.filter((side) => side !== 'mine' && side !== 'other');

interface TakersProps {
  readonly of: string;
  readonly takers: readonly Who[];
  readonly roles: readonly Role[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<readonly Who[]>;
}

function Takers({ of, takers, roles, words, disabled, onChange }: TakersProps): ReactElement {
  const taken = new Set(takers.map(whoKey));
  const free = everyWho(roles).find((who) => !taken.has(whoKey(who)));
  return (
    <OrderedList
      one="man"
      of={of}
      items={takers}
      min={0}
      max={MAX_ENTRIES.takers}
      ordered
      disabled={disabled}
      none="Nobody yet: only a man who is told to will be there."
      fresh={free === undefined ? null : () => free}
      onChange={(next) => onChange(next, null)}
    >
      {(who, index) => (
        <WhoPicker
          label={`Man ${index + 1} ${of}`}
          hideLabel
          who={who}
          roles={roles}
          words={words}
          disabled={disabled}
          onChange={(picked, gesture) => {
            // A man who was in the list already comes here; nobody is in it twice.
            const others = takers.with(index, picked);
            onChange(
              others.filter((each, at) => at === index || whoKey(each) !== whoKey(picked)),
              gesture,
            );
          }}
        />
      )}
    </OrderedList>
  );
}
