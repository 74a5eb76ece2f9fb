import { assertNever, remembered } from '../../base/index.ts';
import type { PlayedMan, Job, LookNames, PassColumn, RunColumn, RunSupport } from '../types/index.ts';
import type { MoveOrder } from './types.ts';

const NO_SUPPORT: RunSupport<LookNames['gap']> = { fits: [], firm: false, support: null };

/** A man's pass column as a job; null when he has none. */
export function passJob({ run, pass }: PlayedMan): Job | null {
  return jobOf(pass, run);
}

function jobOf(pass: PassColumn, run: RunColumn): Job | null {
  switch (pass.kind) {
    case 'rush':
    case 'contain': {
      const told = { peel: false, order: null };
      const manner = run.twoGaps ? 'two-gap' : 'read';
      return { ...told, kind: pass.kind, gaps: run.gaps, manner, track: { kind: 'straight' }, edge: run.edge };
    }
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

/** A man's run column as a fit; null when no gap is his. */
export function fitJob({ run }: PlayedMan): Job | null {
  if (run.gaps.length === 0) return null;
  return { kind: 'fit', gaps: run.gaps, manner: run.twoGaps ? 'two-gap' : 'read', support: null };
}

/**
 * What a man does once the ball is snapped, when it is a pass: the job that stands for him, else his pass column, else the gap
 * he fits. A man who is told a fit and rushes at base rushes. Null: he has nothing to do.
 */
export const errandOf = remembered((man: PlayedMan): Job | null => {
  const { job } = man.combined;
  if (job !== null && job.kind !== 'fit') return job;
  return passJob(man) ?? job ?? fitJob(man);
});

/** A job as far as its order goes. */
interface Ordered {
  readonly kind: Job['kind'];
  readonly order?: MoveOrder | null;
}

/** Whom a job tells him to go before or after; null: nobody. */
export function orderOf(job: Ordered): MoveOrder | null {
  return job.order ?? null;
}
