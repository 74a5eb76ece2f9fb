import { because, datum } from '../because.ts';
import { distinctGaps } from '../gaps.ts';
import { ownGapsOf } from '../combine/compareJobs.ts';
import type { CombinedStatus } from '../types/index.ts';
import type { Draft, Report } from './defineCheck.ts';

/** Every man, on the line or off it, whose two tellings ended in that status: who, both jobs, all gaps involved. */
export function twoTellings(draft: Draft, status: CombinedStatus, onTheLine: boolean): readonly Report[] {
  return draft.assignments.flatMap(({ aligned: { role }, combined }): readonly Report[] => {
    if (combined.status !== status || (role.room === 'line') !== onTheLine) return [];
    const { first, second } = combined;
    if (first?.kind !== 'told' || second?.kind !== 'told') return [];
    return [
      {
        because: because(
          '{who} is told two things: the first says {a}, the second says {b}',
          { who: datum.role(role.id), a: datum.job(first.job), b: datum.job(second.job) },
          combined.because,
        ),
        who: [role.id],
        gaps: distinctGaps([...ownGapsOf(first.job), ...ownGapsOf(second.job)]),
      },
    ];
  });
}
