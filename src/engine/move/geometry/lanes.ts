import { compareBy } from '../../../base/index.ts';
import { signOf } from '../../facts/surface.ts';
import { gapsEqual } from '../../gaps.ts';
import type { Gap, Job, Yards } from '../../types/index.ts';
import type { Runner } from './ground.ts';

/** Sideways step between two paths through one gap: a picture's choice, half a man of 2 ft. */
const LANE: Yards = 0.34;

/** Sideways offset of a man's path in a gap, from the middle of it; 0 for a man who does not go through it. */
export type Lanes<R extends Runner = Runner> = (runner: R, gap: Gap) => Yards;

/** Gives every path through a gap a lane of its own, in the order of where the men stand; of two in file the nearer goes inside. */
export function lanesOf<R extends Runner>(runners: readonly R[]): Lanes<R> {
  const users: { readonly gap: Gap; readonly of: R[] }[] = [];
  for (const one of runners) {
    for (const gap of laneGaps(one.job)) {
      const lane = users.find((each) => gapsEqual(each.gap, gap));
      if (lane === undefined) users.push({ gap, of: [one] });
      else lane.of.push(one);
    }
  }
  for (const { gap, of } of users) {
    if (of.length === 1) continue;
    const sign = signOf(gap.side);
    const names = of.map(({ aligned }) => aligned.role.id).sort();
    of.sort(
      compareBy(
        ({ aligned }) => aligned.x,
        ({ aligned }) => aligned.y * sign,
        // Two on one spot: in the order of their names from the ball outward, so that a flipped picture has it flipped.
        ({ aligned }) => names.indexOf(aligned.role.id) * sign,
      ),
    );
  }
  return (one, gap) => {
    const of = users.find((each) => gapsEqual(each.gap, gap))?.of ?? [];
    if (of.length <= 1) return 0;
    const index = of.indexOf(one);
    return index < 0 ? 0 : (index - (of.length - 1) / 2) * LANE;
  };
}

/** The gaps a job's path goes through; a two-gap man only reaches into his. */
function laneGaps(job: Job): readonly Gap[] {
  if (job.kind !== 'rush' && job.kind !== 'contain' && job.kind !== 'fit') return [];
  return job.manner === 'two-gap' ? [] : job.gaps;
}
