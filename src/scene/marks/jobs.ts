import { assertNever } from '../../base/index.ts';
import type {
  Aligned,
  Assignment,
  CombinedStatus,
  Job,
  LookNames,
  PassColumn,
  RunSupport,
} from '../../engine/index.ts';

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
  const pass = fromPass(assignment);
  const fit = fitOf(assignment);
  const told = combined.job;
  const jobs = told === null ? [pass, fit] : told.kind === 'fit' ? [told, pass] : isRush(told) ? [told] : [told, fit];
  return jobs.flatMap((job) => (job === null ? [] : [{ aligned, job, as: 'only' as const }]));
}

function isRush(job: Job): boolean {
  return job.kind === 'rush' || job.kind === 'contain';
}

const NO_SUPPORT: RunSupport<LookNames['gap']> = { fits: [], firm: false, support: null };

/** The pass column as a job; null when he has none. */
function fromPass({ run, pass }: Assignment): Job | null {
  return jobOfPass(pass, {
    gaps: run.gaps,
    manner: run.twoGaps ? 'two-gap' : 'read',
    track: { kind: 'straight' },
    edge: run.edge,
  });
}

function jobOfPass(pass: PassColumn, rush: Omit<Extract<Job, { kind: 'rush' }>, 'kind'>): Job | null {
  switch (pass.kind) {
    case 'rush':
    case 'contain':
      return { kind: pass.kind, ...rush };
    case 'zone':
      return { kind: 'drop', zone: pass.zone, side: pass.side, run: NO_SUPPORT };
    case 'man':
      return { kind: 'man', receiver: pass.receiver, run: NO_SUPPORT };
    case 'spy':
      return { kind: 'spy', run: NO_SUPPORT };
    case 'none':
      return null;
    default:
      return assertNever(pass);
  }
}

/** The run column as a fit, for a man who does not rush and stands near enough. */
function fitOf({ aligned, run, pass }: Assignment): Job | null {
  if (run.gaps.length === 0 || pass.kind === 'rush' || pass.kind === 'contain' || aligned.y > FITS_FROM) return null;
  return { kind: 'fit', gaps: run.gaps, manner: run.twoGaps ? 'two-gap' : 'read', support: null };
}
