import { because, datum, fact } from '../because.ts';
import { compareJobs, ownGapsOf } from '../combine/compareJobs.ts';
import { distinctGaps } from '../gaps.ts';
import type { ResolvedPressure } from '../types/index.ts';
import type { Draft, Report } from './defineCheck.ts';

/** Every man, on the line or off it, whom one pressure by itself tells two different things. */
export function toldTwiceByOne(draft: Draft, onTheLine: boolean): readonly Report[] {
  const by = (which: 'first' | 'second', pressure: ResolvedPressure | null): readonly Report[] =>
    (pressure?.again ?? []).flatMap(({ role, kept, heard }): readonly Report[] => {
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
          gaps: distinctGaps([...ownGapsOf(kept), ...ownGapsOf(heard)]),
        },
      ];
    });
  return [...by('first', draft.first), ...by('second', draft.second)];
}
