import type {
  GapRef,
  LookTest,
  Order,
  PreSnap,
  RuleJob,
  RunSupport,
  SideRef,
  Tell,
  TellCase,
  Track,
  Who,
} from '../types/index.ts';

/**
 * A rule told from the other side of the ball: the call side and the side away from it change places, everything else
 * stays. Two pressures turned apart mean the same man and the same gap by opposite words.
 */
function side(ref: SideRef): SideRef {
  if (ref === 'call') return 'away';
  return ref === 'away' ? 'call' : ref;
}

function gap(ref: GapRef): GapRef {
  return { ...ref, side: side(ref.side) };
}

function man(who: Who): Who {
  return who.kind === 'role' ? who : { ...who, side: who.side === 'call' ? 'away' : 'call' };
}

function track(way: Track<Who>): Track<Who> {
  return way.kind === 'straight' ? way : { ...way, neighbour: man(way.neighbour) };
}

function order(turn: Order<Who> | null): Order<Who> | null {
  return turn === null ? null : { ...turn, neighbour: man(turn.neighbour) };
}

function support(run: RunSupport<GapRef>): RunSupport<GapRef> {
  return { ...run, fits: run.fits.map(gap) };
}

function test(each: LookTest): LookTest {
  return each.kind === 'backs' ? each : { ...each, side: side(each.side) };
}

function preSnap(each: PreSnap | null): PreSnap | null {
  return each?.kind === 'heels' ? { ...each, of: man(each.of) } : each;
}

/** A job told from the other side of the ball. */
export function turnedJob(job: RuleJob): RuleJob {
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return { ...job, gaps: job.gaps.map(gap), track: track(job.track), order: order(job.order) };
    case 'fit':
      return { ...job, gaps: job.gaps.map(gap) };
    case 'drop':
      return { ...job, side: job.side === 'middle' ? job.side : side(job.side), run: support(job.run) };
    case 'man': {
      const receiver = job.receiver.kind === 'back' ? job.receiver : { ...job.receiver, side: side(job.receiver.side) };
      return { ...job, receiver, run: support(job.run) };
    }
    case 'spy':
      return { ...job, run: support(job.run) };
  }
}

/** A case told from the other side of the ball. */
export function turnedCase(each: TellCase): TellCase {
  return { ...each, when: each.when.map(test), job: turnedJob(each.job), preSnap: preSnap(each.preSnap) };
}

/** What one man is told, told from the other side of the ball: by the other name, to the other side. */
export function turnedTell(tell: Tell): Tell {
  return { who: man(tell.who), cases: tell.cases.map(turnedCase) };
}
