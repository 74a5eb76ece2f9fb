import { createNumbering } from '../../base/index.ts';
import { shareLooks, summaryText, type LookShares } from '../../menu/index.ts';
import type { Asked, GridWorker, ShareAsked, Told } from './messages.ts';

/** More workers than this are never started. */
const MOST_WORKERS = 4;

/**
 * How many workers answer the menu on a machine of so many cores. One core is left to the page, which must answer the hand
 * meanwhile. Four at most: what cases share by look is shared out with the looks, but every worker has the program, a copy of
 * the playbook and what does not depend on a look for itself, in memory and in time; and a laptop has other things to do.
 */
export function workersFor(cores: number): number {
  // A browser that does not say how many it has gets one.
  return cores > 2 ? Math.min(Math.floor(cores) - 1, MOST_WORKERS) : 1;
}

/** The question that is being answered, and what of it has come in but is not told yet. */
interface Question {
  readonly number: number;
  /** Whose part is not done. */
  readonly working: Set<number>;
  /** Who of them has told nothing since it was last told here. */
  silent: Set<number>;
  at: Int32Array[];
  answers: Int32Array[];
  worked: number;
}

/**
 * Several workers that look like one: each answers the cases of its own looks, and what they tell is told as one. Answers are
 * passed on when each of those still at work has told some, so the page draws as often as with one worker. A worker is started
 * when it gets its first look.
 */
export function shareOut(count: number, start: () => GridWorker<ShareAsked>): GridWorker {
  const listeners: ((event: { readonly data: Told }) => void)[] = [];
  const workers: (GridWorker<ShareAsked> | undefined)[] = [];
  /** One numbering for the summaries of all: equal summaries have equal numbers. */
  const numbering = createNumbering(summaryText);
  /** How many summaries have been told. */
  let toldSummaries = 0;
  let shares: LookShares = [];
  let question: Question | null = null;

  const tell = (data: Told): void => listeners.forEach((listener) => listener({ data }));

  const started = (mine: number): GridWorker<ShareAsked> => {
    const known = workers[mine];
    if (known !== undefined) return known;
    const worker = start();
    const numbers: number[] = [];
    worker.addEventListener('message', ({ data }) => {
      // Also of a question that was dropped: nobody tells these summaries again.
      if (data.kind === 'answers') numbers.push(...data.summaries.map(numbering.numberOf));
      if (question !== null && data.number === question.number) hear(question, mine, data, numbers);
    });
    workers[mine] = worker;
    return worker;
  };

  const hear = (open: Question, mine: number, told: Told, numbers: readonly number[]): void => {
    open.silent.delete(mine);
    switch (told.kind) {
      case 'answers':
        open.at.push(told.at);
        open.answers.push(told.answers.map((own) => numberIn(numbers, own)));
        if (open.silent.size === 0) passOn(open);
        break;
      case 'done':
        open.working.delete(mine);
        open.worked += told.worked;
        if (open.silent.size === 0) passOn(open);
        if (open.working.size > 0) return;
        question = null;
        tell({ kind: 'done', number: open.number, worked: open.worked });
        break;
      case 'failed':
        passOn(open);
        question = null;
        // What the others could still find would never make a whole grid.
        for (const worker of workers) worker?.postMessage({ kind: 'cancel' });
        tell(told);
        break;
    }
  };

  const passOn = (open: Question): void => {
    const { at, answers } = open;
    open.silent = new Set(open.working);
    [open.at, open.answers] = [[], []];
    if (at.some(({ length }) => length > 0)) {
      const summaries = numbering.things.slice(toldSummaries);
      toldSummaries = numbering.things.length;
      tell({ kind: 'answers', number: open.number, at: joined(at), answers: joined(answers), summaries });
    }
  };

  const ask = (asked: Extract<Asked, { kind: 'grid' }>): void => {
    shares = shareLooks(asked.playbook.looks, count, shares);
    // The first is asked even when there is no look at all: somebody must say that all is done.
    const busy = [...shares.keys()].filter((mine) => mine === 0 || shares[mine]?.length !== 0);
    const working = new Set(busy);
    question = { number: asked.number, working, silent: new Set(busy), at: [], answers: [], worked: 0 };
    for (const [mine, looks] of shares.entries()) {
      if (working.has(mine)) started(mine).postMessage({ ...asked, looks });
      else workers[mine]?.postMessage({ kind: 'cancel' });
    }
  };

  return {
    addEventListener: (_type, listener) => listeners.push(listener),
    postMessage: (asked) => {
      if (asked.kind === 'grid') {
        ask(asked);
        return;
      }
      if (asked.kind === 'cancel') question = null;
      for (const worker of workers) worker?.postMessage(asked);
    },
  };
}

function numberIn(numbers: readonly number[], own: number): number {
  const number = numbers[own];
  if (number === undefined) throw new Error(`A worker has told no summary ${String(own)}`);
  return number;
}

function joined(lists: readonly Int32Array[]): Int32Array {
  const all = new Int32Array(lists.reduce((sum, { length }) => sum + length, 0));
  let from = 0;
  for (const list of lists) {
    all.set(list, from);
    from += list.length;
  }
  return all;
}
