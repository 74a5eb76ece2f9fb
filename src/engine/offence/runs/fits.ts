import { compareBy } from '../../../base/index.ts';
import { matchSeekers, type Seeker } from '../../complete/matchGaps.ts';
import type { Assignment, FloatingFit, FloatingGap, RoleId } from '../../types/index.ts';
import type { Stand } from '../stand.ts';

/** A man this deep or this far outside the last body does not fit a gap that opens at the snap (from memory: the alley). */
const FIT_DEPTH = 12;
const FIT_WIDTH = 9;

/** A man near enough to the box to fit a gap that opens at the snap, if he has nothing else to do. */
export interface Fitter extends Seeker {
  readonly role: RoleId;
  /** His place among the men of the stand. */
  readonly place: number;
}

/** All who could fit one of these gaps, the nearest first. */
export function fittersOf({ facts, men }: Stand, floating: readonly FloatingGap[]): readonly Fitter[] {
  const reach = Math.max(...facts.gaps.map((gap) => Math.abs(gap.x))) + FIT_WIDTH;
  return men
    .map((man, place) => ({ man, place }))
    .filter(({ man }) => man.y <= FIT_DEPTH && Math.abs(man.x) <= reach)
    .sort(
      compareBy(
        ({ man }) => man.y,
        ({ man }) => Math.abs(man.x),
        ({ man }) => man.role,
      ),
    )
    .map(({ man, place }) => {
      const ways = floating.map((each) => Math.round(Math.hypot(each.x - man.x, man.y) * 1000));
      return { role: man.role, place, name: man.role, costs: new Map(ways.entries()) };
    });
}

/** Whether a man has no gap of his own and does not rush. */
export function isFree({ run, pass }: Pick<Assignment, 'run' | 'pass'>): boolean {
  return run.gaps.length === 0 && pass.kind !== 'rush' && pass.kind !== 'contain';
}

/** Floating gaps go to men who are free, the nearest first. */
export function fitFloating(floating: readonly FloatingGap[], free: readonly Fitter[]): readonly FloatingFit[] {
  if (floating.length === 0) return [];
  const { taken } = matchSeekers(floating.length, free);
  return floating.map((each, item) => ({ floating: each, by: free[taken.indexOf(item)]?.role ?? null }));
}
