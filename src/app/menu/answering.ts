import { createWorkOrder, type Grid, type MenuCase, type WorkOrder } from '../../menu/index.ts';

/** How long a worker works before it looks whether something newer was asked, in milliseconds. */
export const SLICE_MS = 8;

/** A slice aims at so much of that: now and then a case is dearer than those before it, or the memory is tidied up. */
const AIM = 0.7;

/** How long answers are gathered before they are told, in milliseconds: each telling draws the grid again. */
export const TELL_MS = 200;

/** What answering a grid takes; the clock and the waiting come from outside, so that a test can hold them. */
export interface Answering {
  readonly grid: Grid;
  /** Whether the case is to be answered here; the others belong to somebody else and are passed over. */
  readonly isMine: (menuCase: MenuCase) => boolean;
  /** The number of the case's summary. */
  readonly judge: (menuCase: MenuCase) => number;
  /** Milliseconds from any fixed moment. */
  readonly now: () => number;
  /** Lets what was asked meanwhile be heard. */
  readonly letNewerIn: () => Promise<void>;
  /** Whether this grid is still the one that is asked for. */
  readonly isWanted: () => boolean;
  readonly tell: (at: Int32Array, answers: Int32Array) => void;
}

/** A grid being answered: what comes first can still be changed. */
export interface Answers {
  readonly prefer: WorkOrder['prefer'];
  /** True when every own case is answered, false when it was dropped. */
  readonly done: Promise<boolean>;
}

/** Answers the own cases of a grid in short slices until all is told or it is no longer wanted. */
export function answerInSlices(answering: Answering): Answers {
  const order = createWorkOrder(answering.grid);
  return { prefer: order.prefer, done: answerAll(answering, order) };
}

async function answerAll(answering: Answering, order: WorkOrder): Promise<boolean> {
  const { now, letNewerIn, isWanted, tell } = answering;
  let [at, answers]: [number[], number[]] = [[], []];
  let tellAt = now() + TELL_MS;
  for (let more = true; more;) {
    more = workOneSlice(answering, order, at, answers);
    if (!more || now() >= tellAt) {
      tell(Int32Array.from(at), Int32Array.from(answers));
      [at, answers] = [[], []];
      tellAt = now() + TELL_MS;
    }
    await letNewerIn();
    if (!isWanted()) return false;
  }
  return true;
}

/** One slice: it ends when another case as dear as the dearest of it would not fit. False: nothing is left. */
function workOneSlice(
  { grid, isMine, judge, now }: Answering,
  order: WorkOrder,
  at: number[],
  answers: number[],
): boolean {
  const begun = now();
  let [last, dearest] = [begun, 0];
  while (last + dearest - begun < SLICE_MS * AIM) {
    const next = order.next();
    if (next === null) return false;
    const menuCase = grid.caseAt(next);
    if (menuCase === null || !isMine(menuCase)) continue;
    at.push(next);
    answers.push(judge(menuCase));
    const time = now();
    dearest = Math.max(dearest, time - last);
    last = time;
  }
  return true;
}
