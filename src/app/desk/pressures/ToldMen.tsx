import { useState, type ReactElement } from 'react';
import { MAX_ENTRIES } from '../../../document/index.ts';
import {
  sameWho,
  type LookTest,
  type Pressure,
  type Role,
  type Tell,
  type TellCase,
  type Who,
} from '../../../engine/index.ts';
import type { RuleWords } from '../../../report/index.ts';
import { retell, setCases, tellMan, untell } from '../../../store/index.ts';
import { OneOf } from '../parts/OneOf.tsx';
import { OrderedList } from '../parts/OrderedList.tsx';
import { useEdit, type Edit } from '../parts/useEdit.ts';
import { everyWho } from '../parts/WhoPicker.tsx';
import { CaseForm } from './CaseForm.tsx';
import { FIRST_CASE } from './jobForms.ts';

interface Props {
  readonly pressure: Pressure;
  readonly roles: readonly Role[];
  readonly words: RuleWords;
  readonly disabled: boolean;
  /** Starts picking a job on the field, for that man or for whoever is clicked. */
  readonly onPick: (who: Who | null) => void;
}

/** The men a pressure tells something, each with his sentence; a row opens the form of its job. */
export function ToldMen(props: Props): ReactElement {
  const { pressure, roles, disabled, onPick } = props;
  const [making, setMaking] = useState(false);
  const edit = useEdit();
  const untold = everyWho(roles).filter((who) => !pressure.tells.some((tell) => sameWho(tell.who, who)));
  return (
    <div className="told">
      {pressure.tells.length === 0 && (
        <p className="hint">Nobody yet: everybody plays his base job, or what the coverage gives him.</p>
      )}
      <ul className="told-list">
        {pressure.tells.map((tell, index) => (
          // Two tellings of a file may have one name, so the place is the key.
          <li key={index}>
            <ToldMan {...props} tell={tell} untold={untold} edit={edit} />
          </li>
        ))}
      </ul>
      {making ? (
        <NewTell {...props} untold={untold} edit={edit} onClose={() => setMaking(false)} />
      ) : (
        <div className="button-row">
          <button type="button" className="is-main" disabled={disabled} onClick={() => onPick(null)}>
            Pick on the field
          </button>
          <button type="button" disabled={disabled || untold.length === 0} onClick={() => setMaking(true)}>
            Tell a man…
          </button>
        </div>
      )}
    </div>
  );
}

interface ManProps extends Props {
  readonly tell: Tell;
  readonly untold: readonly Who[];
  readonly edit: Edit;
}

function ToldMan({ pressure, roles, words, disabled, onPick, tell, untold, edit }: ManProps): ReactElement {
  const { who, cases } = tell;
  const him = words.who(who);
  const put = (next: readonly TellCase[], gesture: string | null): void => {
    edit(`changed what ${pressure.name} tells ${him}`, gesture, (now) =>
      setCases(now, { pressure: pressure.id, who, cases: next }),
    );
  };
  const form = (told: TellCase, at: number): ReactElement => (
    <CaseForm
      told={told}
      of={cases.length === 1 ? `of ${him}` : `of ${him}, rule ${at + 1}`}
      roles={roles}
      mate={mateOf(who, roles)}
      words={words}
      disabled={disabled}
      onChange={(next, gesture) => put(cases.with(at, next), gesture)}
    />
  );
  return (
    <details className="rule">
      <summary>{words.tell(tell)}</summary>
      <div className="rule-body">
        <div className="button-row">
          <button type="button" disabled={disabled} onClick={() => onPick(who)}>
            Pick on the field<span className="unseen"> for {him}</span>
          </button>
          <button
            type="button"
            disabled={disabled}
            onClick={() =>
              edit(`told ${him} nothing in ${pressure.name}`, null, (now) =>
                untell(now, { pressure: pressure.id, who }),
              )
            }
          >
            Tell him nothing<span className="unseen">: {him}</span>
          </button>
        </div>
        <OneOf
          label="Who"
          value={who}
          items={[who, ...untold]}
          say={(each) => whoLabel(each, roles, words)}
          same={sameWho}
          disabled={disabled}
          onChoose={(to) =>
            edit(`told ${words.who(to)} instead of ${him} in ${pressure.name}`, null, (now) =>
              retell(now, { pressure: pressure.id, who, to }),
            )
          }
        />
        {cases.length === 1 && cases[0] !== undefined ? (
          <>
            {form(cases[0], 0)}
            <div>
              <button
                type="button"
                disabled={disabled}
                onClick={() => put([{ ...(cases[0] ?? FIRST_CASE), when: [DETACHED] }, ...cases], null)}
              >
                Another job in some looks<span className="unseen"> for {him}</span>
              </button>
            </div>
          </>
        ) : (
          <OrderedList
            one="rule"
            of={`of ${him}`}
            items={cases}
            min={1}
            max={MAX_ENTRIES.cases}
            ordered
            disabled={disabled}
            fresh={() => ({ ...(cases.at(-1) ?? FIRST_CASE), when: [] })}
            onChange={(next) => put(next, null)}
          >
            {(told, at) => (
              <details className="rule">
                <summary>{words.tellCase(told)}</summary>
                <div className="rule-body is-plain">{form(told, at)}</div>
              </details>
            )}
          </OrderedList>
        )}
        {cases.length > 1 && <p className="hint">The first rule that holds is his job.</p>}
      </div>
    </details>
  );
}

interface NewProps extends Omit<ManProps, 'tell'> {
  readonly onClose: () => void;
}

/** A man who is told nothing yet: nothing is changed until the form is kept. */
function NewTell({ pressure, roles, words, untold, edit, onClose }: NewProps): ReactElement {
  const [who, setWho] = useState<Who | null>(null);
  const [told, setTold] = useState<TellCase>(FIRST_CASE);
  return (
    <fieldset className="rule-body">
      <legend>Tell a man</legend>
      <OneOf<Who | null>
        label="Who"
        value={who}
        items={[null, ...untold]}
        say={(each) => (each === null ? 'Choose a man' : whoLabel(each, roles, words))}
        same={(a, b) => (a === null || b === null ? a === b : sameWho(a, b))}
        onChoose={setWho}
      />
      <CaseForm
        told={told}
        of="of the new man"
        roles={roles}
        mate={mateOf(who, roles)}
        words={words}
        disabled={false}
        onChange={setTold}
      />
      <p className="rule-said" aria-live="polite">
        {who === null ? 'Choose a man first.' : words.tell({ who, cases: [told] })}
      </p>
      <div className="button-row">
        <button
          type="button"
          className="is-main"
          disabled={who === null}
          onClick={() => {
            if (who === null) return;
            const done = edit(`told ${words.who(who)} a job in ${pressure.name}`, null, (now) =>
              tellMan(now, { pressure: pressure.id, who, told }),
            );
            if (done) onClose();
          }}
        >
          Tell him
        </button>
        <button type="button" onClick={onClose}>
          Cancel
        </button>
      </div>
    </fieldset>
  );
}

/** What the first condition of a man asks, until another is chosen. */
const DETACHED: LookTest = { kind: 'bodies', side: 'mine', compare: 'at-most', count: 2 };

/** Somebody else, to begin with. */
function mateOf(who: Who | null, roles: readonly Role[]): Who | null {
  return everyWho(roles).find((each) => who === null || !sameWho(each, who)) ?? null;
}

function whoLabel(who: Who, roles: readonly Role[], words: RuleWords): string {
  const role = who.kind === 'role' ? roles.find(({ id }) => id === who.role) : undefined;
  return role === undefined ? words.who(who) : `${role.letter} (${role.name})`;
}
