import { gapKey } from '../gaps.ts';
import type { Gap, Job } from '../types/index.ts';

/** How two jobs of one man go together. */
export type Difference = 'same' | 'manner' | 'different';

function sameGaps(a: readonly Gap[], b: readonly Gap[]): boolean {
  return a.map(gapKey).sort().join() === b.map(gapKey).sort().join();
}

/** What a job makes of the man against the pass; two jobs that differ here cannot both be done. */
function passKind(job: Job): string {
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return 'rush';
    case 'fit':
    case 'spy':
      return job.kind;
    case 'drop':
      return `drop ${job.zone} ${job.side}`;
    case 'man':
      return `man ${job.receiver}`;
  }
}

/** The gaps a job makes a man's own: what he is sent to, and a firm fit of a coverage player. */
export function ownGapsOf(job: Job): readonly Gap[] {
  switch (job.kind) {
    case 'rush':
    case 'contain':
    case 'fit':
      return job.gaps;
    case 'drop':
    case 'man':
    case 'spy':
      return job.run.firm ? job.run.fits : [];
  }
}

/** How the gap is played, as one comparable text: manner, path, edge, and whether he also contains. */
function manner(job: Job): string {
  switch (job.kind) {
    case 'rush':
    case 'contain': {
      const track = job.track.kind === 'straight' ? 'straight' : `${job.track.how} ${job.track.neighbour}`;
      const order = job.order === null ? '' : `${job.order.turn} ${job.order.neighbour}`;
      return [job.kind, job.manner, track, order, job.edge ?? '', job.peel ? 'peel' : ''].join();
    }
    case 'fit':
      return [job.kind, job.manner, job.support ?? ''].join();
    case 'drop':
    case 'man':
    case 'spy':
      return [job.kind, job.run.support ?? '', job.run.firm ? '' : job.run.fits.map(gapKey).join()].join();
  }
}

/**
 * Compares what two pressures tell one man. Another gap, or rush against drop, is a different job; the same gap by
 * another manner, path or contain duty is the same job taught two ways.
 */
export function compareJobs(a: Job, b: Job): Difference {
  if (!sameGaps(ownGapsOf(a), ownGapsOf(b)) || passKind(a) !== passKind(b)) return 'different';
  return manner(a) === manner(b) ? 'same' : 'manner';
}
