import { ok, refused, type Result } from '../base/index.ts';
import { asSheetId, FORMAT, VERSION, type Playbook, type Sheet } from '../document/index.ts';
import type { RoleId, RuleLevel } from '../engine/index.ts';
import { frontOf, startCalls, startCoverages, startLooks, startPressures } from './menu.ts';
import { startRoles, type StartFront, type StartSides } from './roles.ts';

/** What a coach says about his own playbook before there is one. */
export interface StartAnswers {
  readonly team: string;
  readonly level: RuleLevel;
  readonly front: StartFront;
  readonly sides: StartSides;
  /** Letters he has written over the usual ones. */
  readonly letters: ReadonlyMap<RoleId, string>;
}

/** What an answer lacks. */
export type StartProblem =
  | { readonly kind: 'team-empty' }
  /** The letter of the role of that name is not one or two characters. */
  | { readonly kind: 'letter-length'; readonly whose: string };

/** A sound base to work on: eleven roles, the front, shells, standard looks, plain pressures and a combined call. */
export function startPlaybook(answers: StartAnswers): Result<Playbook, StartProblem> {
  const name = answers.team.trim();
  if (name === '') return refused({ kind: 'team-empty' });
  const { front, sides, level } = answers;
  const roles = startRoles(front, sides).map((role) => ({
    ...role,
    letter: (answers.letters.get(role.id) ?? role.letter).trim(),
  }));
  const unlettered = roles.find(({ letter }) => ![1, 2].includes(Array.from(letter).length));
  if (unlettered !== undefined) return refused({ kind: 'letter-length', whose: unlettered.name });
  return ok({
    format: FORMAT,
    version: VERSION,
    team: { name, level, season: '' },
    roles,
    fronts: [frontOf[front]],
    coverages: startCoverages(front),
    looks: startLooks,
    pressures: startPressures(front),
    calls: startCalls(front),
    opponents: [],
    sheets: SHEETS,
    checkOuts: [],
    dictionary: [],
    words: { techniques: [] },
  });
}

const sheet = (id: string, name: string, room: Sheet['room']): Sheet => ({
  id: asSheetId(id),
  name,
  room,
  paper: 'letter',
});

const SHEETS: readonly Sheet[] = [
  sheet('staff', 'Staff: everybody', 'all'),
  sheet('line', 'Line room', 'line'),
  sheet('linebackers', 'Linebacker room', 'linebackers'),
  sheet('secondary', 'Secondary room', 'secondary'),
];
