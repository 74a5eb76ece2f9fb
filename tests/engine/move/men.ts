import { analyse, asRoleId, type Analysis, type Job, type RuleLevel, type Setup } from '../../../src/engine/index.ts';
import { movesOf, type Move, type MoveInput, type MoveOrder } from '../../../src/engine/move/index.ts';
import { LOOKS, ODD, pressure, setup, tell } from '../book.ts';

/** A man of the small book put somewhere by hand and sent somewhere. */
export interface Sent {
  readonly role: string;
  readonly at?: readonly [x: number, y: number];
  readonly job: string;
  /** The order he is told, which the notation need not know. */
  readonly order?: MoveOrder;
}

export interface Scene {
  readonly men: readonly Sent[];
  readonly look?: keyof typeof LOOKS;
  readonly level?: RuleLevel;
  readonly spot?: Setup['spot'];
}

/** The call that sends them: one pressure, the usual shell behind it. */
export function call({ men, look = '10 doubles', level = 'high-school', spot = 'middle' }: Scene): Setup {
  const usual = setup({
    look: LOOKS[look],
    level,
    spot,
    first: pressure(
      'sent',
      men.map(({ role, job }) => tell(`@${role}`, 'path', job)),
    ),
  });
  const byHand = men.flatMap(({ role, at }) =>
    at === undefined ? [] : [{ look: usual.look.id, role: asRoleId(role), x: at[0], y: at[1] }],
  );
  return { ...usual, front: { ...ODD, byHand } };
}

function ordered(job: Job | null, order: MoveOrder | undefined): Job | null {
  if (order === undefined || (job?.kind !== 'rush' && job?.kind !== 'contain')) return job;
  const told = { order };
  return { ...job, ...told };
}

/** The call worked through, with the orders told. */
export function worked(scene: Scene): Analysis {
  const analysis = analyse(call(scene));
  return {
    ...analysis,
    assignments: analysis.assignments.map((one) => {
      const sent = scene.men.find(({ role }) => asRoleId(role) === one.aligned.role.id);
      return { ...one, combined: { ...one.combined, job: ordered(one.combined.job, sent?.order) } };
    }),
  };
}

/** What stage 8 asks of an analysis. */
export function inputOf({ facts, assignments, setup: { level, spot } }: Analysis): MoveInput {
  return { facts, assignments, level, spot };
}

/** All moves of those men and the other eight or ten. */
export const movesIn = (scene: Scene): readonly Move[] => movesOf(inputOf(worked(scene)));

/** One man's move. */
export function moveOf(role: string, moves: readonly Move[]): Move {
  const found = moves.find((move) => move.role === asRoleId(role));
  if (found === undefined) throw new Error(`${role} does not move`);
  return found;
}
