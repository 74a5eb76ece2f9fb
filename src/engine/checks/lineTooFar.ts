import { gather, remembered } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import { gapKey } from '../gaps.ts';
import { ownGapsOf } from '../combine/compareJobs.ts';
import type { Aligned, Gap, GapFact, LookFacts, PlayedMan } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { inConflict } from './outcomes.ts';

/** Gaps a lineman may be moved: one is his trade, two is hard, three cannot be done (see the source). */
const HARD = 2;
const TOO_FAR = 3;

/** A lineman must move two gaps (the coach decides), or three (cannot be done), from where he stands. */
export const lineTooFar = checkOfPlay({
  id: 'line.too-far',
  title: 'A lineman has too far to go',
  severity: 'check',
  matters:
    'He is cut off by the guard or washed by the tackle before he gets there; align him closer or move him earlier.',
  source: '"Align to Win Part 3", Blitzology, 28 Apr 2019 (two gaps from a 5 is hard); three as the limit: from memory',
  needsSide: true,
  report: ({ assignments, facts }) =>
    gather(
      assignments.filter(({ aligned }) => aligned.role.room === 'line'),
      (man) => tooFar(man, facts),
    ),
});

const tooFar = remembered((man: PlayedMan, facts: LookFacts): readonly Report[] => {
  const { job } = man.combined;
  if (inConflict(man) || (job?.kind !== 'rush' && job?.kind !== 'contain')) return [];
  const [far] = ownGapsOf(job)
    .map((gap) => ({ gap, ...moved(man.aligned, gap, facts) }))
    .sort((a, b) => b.count - a.count);
  if (far === undefined || far.from === null || far.count < HARD) return [];
  return [
    {
      severity: far.count >= TOO_FAR ? 'stop' : 'check',
      because: because(
        '{who} must move {n} gaps, from the {from} to the {to}',
        {
          who: datum.role(man.aligned.role.id),
          n: datum.number(far.count),
          from: datum.gap(far.from),
          to: datum.gap(far.gap),
        },
        man.aligned.because,
        man.combined.because,
      ),
      who: [man.aligned.role.id],
      gaps: [far.gap],
    },
  ];
});

/** How many gaps he must move, and from which one. Of two as near that on the side he goes to, so that a flipped look says the same. */
function moved(man: Aligned, to: Gap, facts: LookFacts): { readonly count: number; readonly from: Gap | null } {
  const target = facts.gaps.findIndex((each) => gapKey(each.gap) === gapKey(to));
  const [nearest] = startGaps(man, facts.gaps)
    .map((start) => ({ count: Math.abs(start - target), from: facts.gaps[start]?.gap ?? null }))
    .sort((a, b) => a.count - b.count || Number(b.from?.side === to.side) - Number(a.from?.side === to.side));
  return nearest ?? { count: 0, from: null };
}

/** The gap under his feet, or several as near as each other. A man head up on a body counts for both gaps beside it. */
function startGaps(man: Aligned, gaps: readonly GapFact[]): readonly number[] {
  const distances = gaps.map((each) => Math.round(Math.abs(each.x - man.x) * 1000));
  const [nearest = 0, next = nearest] = distances.toSorted((a, b) => a - b);
  const reach = man.technique?.leverage === 'head' ? next : nearest;
  return gather(distances, (distance, index) => (distance <= reach ? [index] : []));
}
