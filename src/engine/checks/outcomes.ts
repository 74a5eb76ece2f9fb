import { gather, remembered, rememberedLast } from '../../base/index.ts';
import { ownGapsOf } from '../combine/compareJobs.ts';
import { passColumn, supportOf } from '../complete/columns.ts';
import type { Front, PassColumn, Played, PlayedMan, RoleId, RunColumn } from '../types/index.ts';

/** With more men than this told two things only the two whole pressures are compared, not every mixture. */
const MIXTURES = 4;

/** One way a man may go into the play. */
export interface Outcome extends Pick<RunColumn, 'gaps' | 'edge' | 'support'> {
  readonly pass: PassColumn;
}

/** Whether he is told two things, so that nobody can say which of them he will do. */
export function inConflict(man: PlayedMan): boolean {
  return man.combined.torn.length > 0;
}

/** The ways a man may go into the play: one, or two while he is in conflict. */
export function outcomesOf(man: PlayedMan, { setup }: Pick<Played, 'setup'>): readonly Outcome[] {
  return waysOf(man, setup.front);
}

const waysOf = remembered((man: PlayedMan, front: Front): readonly Outcome[] => {
  const asHeStands = [{ gaps: man.run.gaps, edge: man.run.edge, support: man.run.support, pass: man.pass }];
  if (!inConflict(man)) return asHeStands;
  const base = front.roles.find((entry) => entry.role === man.aligned.role.id)?.base;
  if (base === undefined) return asHeStands;
  return man.combined.torn.map((job) => ({
    gaps: ownGapsOf(job),
    edge: job.kind === 'rush' || job.kind === 'contain' ? job.edge : null,
    support: supportOf(job),
    pass: passColumn(job, base, man.aligned.place),
  }));
});

/** Men of whom something is true whatever they end up doing, and men of whom it is true one way and not the other. */
export interface Known {
  readonly sure: readonly RoleId[];
  readonly maybe: readonly RoleId[];
}

/** Who does it for sure, and of whom nobody can say while he is told two things. */
export function whoDoes(draft: InFront, does: (outcome: Outcome, man: PlayedMan) => boolean): Known {
  const sure: RoleId[] = [];
  const maybe: RoleId[] = [];
  for (const { man, ways } of allWays(draft)) {
    let done = 0;
    for (const way of ways) if (does(way, man)) done += 1;
    if (done === ways.length) sure.push(man.aligned.role.id);
    else if (done > 0) maybe.push(man.aligned.role.id);
  }
  return { sure, maybe };
}

/** The ways of all men; many checks of one play ask it. */
const allWays = rememberedLast(({ assignments, setup }: InFront) =>
  assignments.map((man) => ({ man, ways: waysOf(man, setup.front) })),
);

/** The eleven, and the front they play in. */
type InFront = Pick<Played, 'setup' | 'assignments'>;

/** Whether a man comes, as a rusher or to contain. */
export function rushes({ pass }: Pick<Outcome, 'pass'>): boolean {
  return pass.kind === 'rush' || pass.kind === 'contain';
}

/** The eleven for every mixture of jobs the men in doubt may play; the first one is the eleven as they stand. */
export function decisions(draft: Played, inDoubt: readonly RoleId[]): readonly (readonly PlayedMan[])[] {
  const mayPlay = (man: PlayedMan): readonly PlayedMan[] =>
    inDoubt.includes(man.aligned.role.id)
      ? outcomesOf(man, draft).map(({ pass, ...run }) => ({ ...man, run: { ...man.run, ...run }, pass }))
      : [man];
  if (inDoubt.length > MIXTURES) {
    return [0, 1].map((which) => draft.assignments.map((man) => mayPlay(man)[which] ?? man));
  }
  return draft.assignments.reduce<readonly (readonly PlayedMan[])[]>(
    (all, man) => gather(all, (men) => mayPlay(man).map((way) => [...men, way])),
    [[]],
  );
}
