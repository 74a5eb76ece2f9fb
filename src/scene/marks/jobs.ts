import type { Aligned, Assignment, CombinedStatus, Job } from '../../engine/index.ts';
import { fitJob, passJob } from './ways.ts';

/** One job to draw as a path: whose, and whether it is the second of two that he was told. */
export interface DrawnJob {
  readonly aligned: Aligned;
  readonly job: Job;
  /** `second`: he is told two jobs, and this is the one of the second pressure. */
  readonly as: 'only' | 'first' | 'second';
}

/** Statuses in which a man hears two jobs, so that both are drawn. */
const TWO_JOBS: readonly CombinedStatus[] = ['conflict', 'two-manners'];

/** A man this near to the line also shows his run fit, beside the job he has against the pass. */
const FITS_FROM = 6.5;

/**
 * What to draw for a man: both jobs where he is told two; else the job that stands; else what his run and pass columns say. A
 * cover man near the line who owns a gap shows the fit as well.
 */
export function drawnJobs(assignment: Assignment): readonly DrawnJob[] {
  const { aligned, combined } = assignment;
  if (TWO_JOBS.includes(combined.status) && combined.first?.kind === 'told' && combined.second?.kind === 'told') {
    return [
      { aligned, job: combined.first.job, as: 'first' },
      { aligned, job: combined.second.job, as: 'second' },
    ];
  }
  const pass = passJob(assignment);
  const fit = fitOf(assignment);
  const told = combined.job;
  const jobs = told === null ? [pass, fit] : told.kind === 'fit' ? [told, pass] : isRush(told) ? [told] : [told, fit];
  return jobs.flatMap((job) => (job === null ? [] : [{ aligned, job, as: 'only' as const }]));
}

function isRush(job: Job): boolean {
  return job.kind === 'rush' || job.kind === 'contain';
}

/** The run column as a fit, for a man who does not rush and stands near enough. */
function fitOf(assignment: Assignment): Job | null {
  const { aligned, pass } = assignment;
  return pass.kind === 'rush' || pass.kind === 'contain' || aligned.y > FITS_FROM ? null : fitJob(assignment);
}
