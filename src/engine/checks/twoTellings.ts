import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { gapsEqual } from '../gaps.ts';
import { compareJobs, ownGapsOf } from '../combine/compareJobs.ts';
import type { CombinedStatus, Gap, ResolvedPressure, ToldCall } from '../types/index.ts';
import type { Report } from './defineCheck.ts';

/** Every man, on the line or off it, whose two tellings ended in that status: who, both jobs, all gaps involved. */
export function twoTellings(draft: ToldCall, status: CombinedStatus, onTheLine: boolean): readonly Report[] {
  return gather(
    draft.assignments.filter(
      ({ aligned, combined }) => combined.status === status && (aligned.role.room === 'line') === onTheLine,
    ),
    ({ aligned, combined }): readonly Report[] => {
      const { first, second } = combined;
      if (first?.kind !== 'told' || second?.kind !== 'told') return [];
      return [
        {
          because: because(
            '{who} is told two things: {one} says {a}, {two} says {b}',
            {
              who: datum.role(aligned.role.id),
              one: datum.pressure('first'),
              a: datum.job(first.job),
              two: datum.pressure('second'),
              b: datum.job(second.job),
            },
            combined.because,
          ),
          who: [aligned.role.id],
          gaps: distinct([...ownGapsOf(first.job), ...ownGapsOf(second.job)]),
        },
      ];
    },
  );
}

/** Every man, on the line or off it, whom one pressure by itself tells two different things. */
export function toldTwiceByOne(draft: ToldCall, onTheLine: boolean): readonly Report[] {
  const by = (which: 'first' | 'second', pressure: ResolvedPressure | null): readonly Report[] =>
    gather(pressure?.again ?? [], ({ role, kept, heard }): readonly Report[] => {
      const man = draft.assignments.find(({ aligned }) => aligned.role.id === role);
      if (man === undefined || (man.aligned.role.room === 'line') !== onTheLine) return [];
      if (compareJobs(kept, heard) !== 'different') return [];
      return [
        {
          because: because(
            '{which} alone tells {who} two things: {a}, and {b}',
            { which: datum.pressure(which), who: datum.role(role), a: datum.job(kept), b: datum.job(heard) },
            fact('two of its rules speak to him in this look; only the one told first is heard'),
          ),
          who: [role],
          gaps: distinct([...ownGapsOf(kept), ...ownGapsOf(heard)]),
        },
      ];
    });
  return [...by('first', draft.first), ...by('second', draft.second)];
}

function distinct(gaps: readonly Gap[]): readonly Gap[] {
  return gaps.filter((gap, index) => gaps.findIndex((other) => gapsEqual(gap, other)) === index);
}
