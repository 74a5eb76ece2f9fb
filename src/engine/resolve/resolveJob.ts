import { ok, type Result } from '../../base/index.ts';
import type {
  Because,
  GapRef,
  Gap,
  Job,
  Order,
  RoleId,
  RuleJob,
  RunSupport,
  SideRef,
  Track,
  Who,
} from '../types/index.ts';
import type { Side } from '../vocabulary.ts';
import { findGaps, findReceiver, findSide, gapsThatExist, type Found, type NameContext } from './names.ts';

/** Names of one man's rule, and how to find the men it names. */
export interface JobContext extends NameContext {
  readonly findMan: (who: Who) => Found<RoleId>;
}

function resolveTrack(track: Track<Who>, context: JobContext): Found<Track<RoleId>> {
  if (track.kind === 'straight') return ok(track);
  const neighbour = context.findMan(track.neighbour);
  if (!neighbour.ok) return neighbour;
  return ok({ kind: 'past', how: track.how, neighbour: neighbour.value });
}

function resolveOrder(order: Order<Who> | null, context: JobContext): Found<Order<RoleId> | null> {
  if (order === null) return ok(null);
  const neighbour = context.findMan(order.neighbour);
  return neighbour.ok ? ok({ turn: order.turn, neighbour: neighbour.value }) : neighbour;
}

/** Own gaps must exist; gaps a man may fit need not (a list of them is told once for all looks). */
function resolveSupport(run: RunSupport<GapRef>, context: NameContext): Found<RunSupport<Gap>> {
  if (!run.firm) return ok({ ...run, fits: gapsThatExist(run.fits, context) });
  const fits = findGaps(run.fits, context);
  return fits.ok ? ok({ ...run, fits: fits.value }) : fits;
}

function resolveZoneSide(side: SideRef | 'middle', context: NameContext): Found<Side | 'middle'> {
  return side === 'middle' ? ok(side) : findSide(side, context);
}

/** Stage 4 for one job: every relative name becomes an absolute one, or the reason why it points at nobody. */
export function resolveJob(job: RuleJob, context: JobContext): Result<Job, Because> {
  switch (job.kind) {
    case 'rush':
    case 'contain': {
      const gaps = findGaps(job.gaps, context);
      if (!gaps.ok) return gaps;
      const track = resolveTrack(job.track, context);
      if (!track.ok) return track;
      const order = resolveOrder(job.order, context);
      return order.ok ? ok({ ...job, gaps: gaps.value, track: track.value, order: order.value }) : order;
    }
    case 'fit': {
      const gaps = findGaps(job.gaps, context);
      return gaps.ok ? ok({ ...job, gaps: gaps.value }) : gaps;
    }
    case 'drop': {
      const side = resolveZoneSide(job.side, context);
      if (!side.ok) return side;
      const run = resolveSupport(job.run, context);
      return run.ok ? ok({ ...job, side: side.value, run: run.value }) : run;
    }
    case 'man': {
      const receiver = findReceiver(job.receiver, context);
      if (!receiver.ok) return receiver;
      const run = resolveSupport(job.run, context);
      return run.ok ? ok({ ...job, receiver: receiver.value, run: run.value }) : run;
    }
    case 'spy': {
      const run = resolveSupport(job.run, context);
      return run.ok ? ok({ ...job, run: run.value }) : run;
    }
  }
}
