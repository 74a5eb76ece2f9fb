import type { Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';
import { tellings } from './tellings.ts';

/** A man who two-gaps is told two gaps, anybody else one. */
export function gapCounts(playbook: Playbook): readonly Problem[] {
  return tellings(playbook)
    .flatMap(({ cases }) => cases)
    .flatMap(({ path, job }): readonly Problem[] => {
      if (job.kind !== 'rush' && job.kind !== 'contain' && job.kind !== 'fit') return [];
      const wanted = job.manner === 'two-gap' ? 2 : 1;
      if (job.gaps.length === wanted) return [];
      const found = job.gaps.length === 1 ? 'one gap' : `${job.gaps.length} gaps`;
      const expected =
        wanted === 2 ? 'two gaps, for the manner is "two-gap"' : `one gap, for the manner is "${job.manner}"`;
      return [{ path: [...path, 'job', 'gaps'], found, expected }];
    });
}
