import type { ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import type { Coverage, CoverageCase, Role, SideRef, Who } from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import type { Change } from '../parts/change.ts';
import { Conditions } from '../parts/Conditions.tsx';
import { CoverJobFields } from '../parts/CoverJobFields.tsx';
import { OrderedList } from '../parts/OrderedList.tsx';
import { SIDES_WITH_CALL } from '../parts/SidePicker.tsx';
import { everyWho, whoKey, WhoPicker } from '../parts/WhoPicker.tsx';

type Told = Coverage['tells'][number];

interface Props {
  readonly tells: readonly Told[];
  readonly roles: readonly Role[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<readonly Told[]>;
}

/** What a shell tells each man, as a sentence that opens. It tells only men whom the rush leaves free. */
export function TellList({ tells, roles, words, disabled, onChange }: Props): ReactElement {
  const told = new Set(tells.map(({ who }) => whoKey(who)));
  const free = everyWho(roles).find((who) => !told.has(whoKey(who)));
  const put = (index: number, tell: Told, gesture: string | null): void => onChange(tells.with(index, tell), gesture);
  return (
    <OrderedList
      one="man"
      large
      of="of what is told"
      items={tells}
      min={0}
      max={MAX_ENTRIES.tells}
      ordered
      disabled={disabled}
      none="Nobody is told anything yet."
      fresh={free === undefined ? null : (): Told => ({ who: free, cases: [FIRST_CASE] })}
      onChange={(next) => onChange(next, null)}
    >
      {(tell, index) => (
        <details className="rule">
          <summary>{words.coverageTell(tell)}</summary>
          <div className="rule-body">
            <WhoPicker
              label="Who"
              who={tell.who}
              roles={roles}
              words={words}
              disabled={disabled}
              onChange={(who, gesture) => put(index, { ...tell, who }, gesture)}
            />
            <Cases
              of={`of ${words.who(tell.who)}`}
              cases={tell.cases}
              sides={sidesOf(tell.who, roles)}
              words={words}
              disabled={disabled}
              onChange={(cases, gesture) => put(index, { ...tell, cases }, gesture)}
            />
          </div>
        </details>
      )}
    </OrderedList>
  );
}

const FIRST_CASE: CoverageCase = {
  when: [],
  job: { kind: 'drop', zone: 'hook', side: 'middle', run: { fits: [], firm: false, support: null } },
};

/** A man in the middle has no side of his own. */
function sidesOf(who: Who, roles: readonly Role[]): readonly SideRef[] {
  const middle = who.kind === 'role' && roles.find(({ id }) => id === who.role)?.side.kind === 'middle';
  return middle ? SIDES_WITH_CALL.filter((side) => side !== 'mine' && side !== 'other') : SIDES_WITH_CALL;
}

interface CasesProps {
  readonly of: string;
  readonly cases: readonly CoverageCase[];
  readonly sides: readonly SideRef[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  readonly onChange: Change<readonly CoverageCase[]>;
}

function Cases({ of, cases, sides, words, disabled, onChange }: CasesProps): ReactElement {
  const put = (index: number, next: CoverageCase, gesture: string | null): void =>
    onChange(cases.with(index, next), gesture);
  return (
    <OrderedList
      one="rule"
      large
      of={of}
      items={cases}
      min={1}
      max={MAX_ENTRIES.cases}
      ordered
      disabled={disabled}
      fresh={() => FIRST_CASE}
      onChange={(next) => onChange(next, null)}
    >
      {(each, index) => (
        <div className="case">
          <p className="part-label">
            {index === 0 ? 'First rule' : `Else, rule ${index + 1}`}
            {each.when.length === 0 ? ': always' : ', if all of this holds'}
          </p>
          <Conditions
            of={`of rule ${index + 1} ${of}`}
            tests={each.when}
            sides={sides}
            words={words}
            disabled={disabled}
            onChange={(when, gesture) => put(index, { ...each, when }, gesture)}
          />
          <CoverJobFields
            of={`in rule ${index + 1} ${of}`}
            job={each.job}
            sides={sides}
            words={words}
            disabled={disabled}
            onChange={(job, gesture) => put(index, { ...each, job }, gesture)}
          />
        </div>
      )}
    </OrderedList>
  );
}
