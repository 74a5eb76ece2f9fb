import { useState, type ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import { RULE_LEVELS, type RoleId, type RuleLevel } from '../../engine/index.ts';
import { startPlaybook, startRoles, type StartFront, type StartProblem, type StartSides } from '../../starter/index.ts';
import { MakeDialog } from '../dialogs/MakeDialog.tsx';
import { PlainText } from '../desk/parts/PlainText.tsx';
import { Radios, type Option } from '../parts/Choice.tsx';
import { useNotice, useSession } from '../session/session.ts';

interface Props {
  readonly onSave: () => void;
  /** True when it is open. */
  readonly onStart: (playbook: Playbook) => boolean;
  readonly onClose: () => void;
}

/** Asks for what a playbook of one's own needs to begin with, and makes a sound base of it. */
export function StartDialog({ onSave, onStart, onClose }: Props): ReactElement {
  const { store, notices, inFile } = useSession();
  // Saving says so, and then it is in a file.
  useNotice();
  const unsaved = !inFile.is(store.get().playbook);
  const [team, setTeam] = useState('');
  const [level, setLevel] = useState<RuleLevel>('high-school');
  const [front, setFront] = useState<StartFront>('odd');
  const [sides, setSides] = useState<StartSides>('strength');
  const [letters, setLetters] = useState<ReadonlyMap<RoleId, string>>(new Map());
  const make = (): boolean => {
    const made = startPlaybook({ team, level, front, sides, letters });
    if (made.ok) return onStart(made.value);
    notices.say(problemOf(made.problem));
    return false;
  };
  return (
    <MakeDialog title="Start my own playbook" action="Start it" onMake={make} onClose={onClose} wide>
      <p>
        You get eleven men and a front, four coverages, a dozen looks, three plain pressures and one call of two of
        them. All of it can be changed. Undo brings back what is open now.
      </p>
      {unsaved && (
        <p>
          What is open now has changes that are in no file.{' '}
          <button type="button" className="link-button" onClick={onSave}>
            Save it to a file first
          </button>
        </p>
      )}
      <PlainText label="Team" value={team} onChange={setTeam} />
      <Radios
        legend="Rules"
        value={level}
        options={RULE_LEVELS.map((value) => ({ value, label: LEVEL_WORDS[value] }))}
        onChoose={setLevel}
      />
      <Radios legend="Base front" value={front} options={FRONTS} hint={FRONT_HINTS[front]} onChoose={setFront} />
      <Radios
        legend="Backers and safeties line up"
        value={sides}
        options={SIDES}
        hint={SIDE_HINTS[sides]}
        onChoose={setSides}
      />
      <fieldset className="letter-fields">
        <legend>
          Their letters <span className="hint">one or two, as drawn on the board</span>
        </legend>
        {startRoles(front, sides).map((role) => (
          <PlainText
            key={role.id}
            label={role.name}
            value={letters.get(role.id) ?? role.letter}
            onChange={(letter) => setLetters(new Map(letters).set(role.id, letter))}
          />
        ))}
      </fieldset>
    </MakeDialog>
  );
}

const LEVEL_WORDS: Readonly<Record<RuleLevel, string>> = {
  'high-school': 'High school',
  college: 'College',
  professional: 'Professional',
};

const FRONTS: readonly Option<StartFront>[] = [
  { value: 'odd', label: 'Odd: three on the line' },
  { value: 'even', label: 'Even: four' },
  { value: 'bear', label: 'Bear: five' },
];

const FRONT_HINTS: Readonly<Record<StartFront, string>> = {
  odd: 'A nose over the snapper, an end outside each tackle, two outside and two inside backers.',
  even: 'Two ends and two tackles, one outside and two inside backers.',
  bear: 'The snapper and both guards are covered, both outside backers are up on the line.',
};

const SIDES: readonly Option<StartSides>[] = [
  { value: 'strength', label: 'strong and weak' },
  { value: 'field', label: 'field and boundary' },
  { value: 'left-right', label: 'left and right' },
];

const SIDE_HINTS: Readonly<Record<StartSides, string>> = {
  strength: 'To the tight end; without one to more receivers, then to the wide side of the field.',
  field: 'To the wide side of the field; from the middle to the tight end, then to more receivers.',
  'left-right': 'Always on their own side, whatever the offence shows.',
};

function problemOf(problem: StartProblem): string {
  switch (problem.kind) {
    case 'team-empty':
      return 'A name for the team is needed';
    case 'letter-length':
      return `${problem.whose}: one or two letters, please`;
  }
}
