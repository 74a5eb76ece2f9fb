/** Several workers look like one, whatever they say and in whatever order they say it. The workers here say what the test wants. */
import { describe, expect, it } from 'vitest';
import type { GridWorker, ShareAsked, Told } from '../../src/app/menu/messages.ts';
import { shareOut, workersFor } from '../../src/app/menu/shareOut.ts';
import type { Playbook } from '../../src/document/index.ts';
import type { Summary } from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

const playbook: Playbook = { ...demo(), looks: demo().looks.slice(0, 3) };
const [one, two, three] = playbook.looks.map(({ id }) => id);

const clean: Summary = { verdict: 'clean', found: [], doubts: 0 };
const doubtful: Summary = { verdict: 'clean', found: [], doubts: 2 };
const stop: Summary = { verdict: 'stop', found: [{ rule: 'gap.open', severity: 'stop', count: 1 }], doubts: 0 };

/** A shared-out worker over so many: what each was asked, what is told of them as one. */
function shared(count: number) {
  const asked: ShareAsked[][] = [];
  const listeners: ((event: { readonly data: Told }) => void)[] = [];
  const told: Told[] = [];
  const whole: GridWorker = shareOut(count, () => {
    const mine: ShareAsked[] = [];
    asked.push(mine);
    return {
      postMessage: (message) => mine.push(message),
      addEventListener: (_type, listener) => listeners.push(listener),
    };
  });
  whole.addEventListener('message', ({ data }) => told.push(data));
  return {
    whole,
    asked,
    /** What has been told since this was last asked. */
    heard: (): readonly Told[] => told.splice(0),
    ask: (number: number, version: Playbook = playbook) =>
      whole.postMessage({ kind: 'grid', number, playbook: version, grid: { kind: 'calls' } }),
    say: (mine: number, data: Told) => listeners[mine]?.({ data }),
  };
}

/** Answers as pairs: the place of the case, the number of its summary. */
function answers(number: number, cases: readonly (readonly [number, number])[], summaries: readonly Summary[]): Told {
  const [at, numbers] = [cases.map(([place]) => place), cases.map(([, summary]) => summary)];
  return { kind: 'answers', number, at: Int32Array.from(at), answers: Int32Array.from(numbers), summaries };
}

const done = (number: number, worked: number): Told => ({ kind: 'done', number, worked });
const failed = (number: number, reason: string): Told => ({ kind: 'failed', number, reason });

describe('how many workers', () => {
  it.each([
    [1, 1],
    [2, 1],
    [3, 2],
    [4, 3],
    [5, 4],
    [8, 4],
    [128, 4],
    [Number.NaN, 1],
    [0, 1],
  ])('%d cores: %d', (cores, workers) => expect(workersFor(cores)).toBe(workers));
});

describe('a grid shared out', () => {
  it('each is asked the same, with looks of its own', () => {
    const { ask, asked } = shared(2);
    expect(asked).toEqual([]);
    ask(7);
    const question = { kind: 'grid', number: 7, playbook, grid: { kind: 'calls' } };
    expect(asked).toEqual([[{ ...question, looks: [one, three] }], [{ ...question, looks: [two] }]]);
  });

  it('summaries get one numbering: equal ones one number, whoever found them first', () => {
    const { ask, say, heard } = shared(2);
    ask(1);
    say(
      0,
      answers(
        1,
        [
          [0, 0],
          [2, 1],
        ],
        [clean, stop],
      ),
    );
    say(
      1,
      answers(
        1,
        [
          [1, 0],
          [4, 1],
          [5, 2],
        ],
        [stop, doubtful, clean],
      ),
    );
    expect(heard()).toEqual([
      answers(
        1,
        [
          [0, 0],
          [2, 1],
          [1, 1],
          [4, 2],
          [5, 0],
        ],
        [clean, stop, doubtful],
      ),
    ]);
    // What has been told is not told again.
    say(
      1,
      answers(
        1,
        [
          [7, 0],
          [8, 1],
        ],
        [],
      ),
    );
    say(0, answers(1, [[6, 2]], [doubtful]));
    expect(heard()).toEqual([
      answers(
        1,
        [
          [7, 1],
          [8, 2],
          [6, 2],
        ],
        [],
      ),
    ]);
  });

  it('is told when each at work has told some: as often as by one', () => {
    const { ask, say, heard } = shared(3);
    ask(1);
    say(0, answers(1, [[0, 0]], [clean]));
    say(0, answers(1, [[3, 0]], []));
    say(1, answers(1, [[1, 0]], [clean]));
    expect(heard()).toEqual([]);
    say(2, answers(1, [[2, 0]], [clean]));
    expect(heard()).toEqual([
      answers(
        1,
        [
          [0, 0],
          [3, 0],
          [1, 0],
          [2, 0],
        ],
        [clean],
      ),
    ]);
    // Who is done is not waited for.
    say(2, done(1, 1));
    say(1, answers(1, [[4, 0]], []));
    expect(heard()).toEqual([]);
    say(1, done(1, 2));
    say(0, answers(1, [[6, 0]], []));
    expect(heard()).toEqual([
      answers(
        1,
        [
          [4, 0],
          [6, 0],
        ],
        [],
      ),
    ]);
  });

  it('is done once all are, with the sum of what they worked out; what was held back is told before', () => {
    const { ask, say, heard } = shared(2);
    ask(1);
    say(0, answers(1, [[0, 0]], [clean]));
    say(0, done(1, 5));
    expect(heard()).toEqual([]);
    say(1, done(1, 3));
    expect(heard()).toEqual([answers(1, [[0, 0]], [clean]), done(1, 8)]);
  });

  it('fails once, with what is known by then, and nobody works on', () => {
    const { ask, say, heard, asked } = shared(3);
    ask(1);
    say(0, answers(1, [[0, 0]], [clean]));
    say(1, failed(1, 'broken'));
    expect(heard()).toEqual([answers(1, [[0, 0]], [clean]), failed(1, 'broken')]);
    for (const each of asked) expect(each.at(-1)).toEqual({ kind: 'cancel' });
    say(2, failed(1, 'broken too'));
    say(0, answers(1, [[3, 0]], []));
    say(0, done(1, 1));
    expect(heard()).toEqual([]);
    // The next question is another matter.
    ask(2);
    say(2, answers(2, [], []));
    say(1, answers(2, [], []));
    say(0, answers(2, [[3, 0]], []));
    expect(heard()).toEqual([answers(2, [[3, 0]], [])]);
  });

  it('late answers to an older question are dropped, but not the summaries they bring', () => {
    const { ask, say, heard } = shared(2);
    ask(1);
    say(0, answers(1, [[0, 0]], [clean]));
    ask(2);
    say(1, answers(1, [[1, 0]], [stop]));
    say(0, done(1, 1));
    say(1, failed(1, 'too late'));
    expect(heard()).toEqual([]);
    say(1, answers(2, [[1, 0]], []));
    expect(heard()).toEqual([]);
    say(0, answers(2, [[0, 0]], []));
    expect(heard()).toEqual([
      answers(
        2,
        [
          [1, 1],
          [0, 0],
        ],
        [clean, stop],
      ),
    ]);
  });

  it('cancel goes to all, and nothing is told any more', () => {
    const { ask, say, heard, whole, asked } = shared(2);
    ask(1);
    say(0, answers(1, [[0, 0]], [clean]));
    whole.postMessage({ kind: 'cancel' });
    for (const each of asked) expect(each.at(-1)).toEqual({ kind: 'cancel' });
    say(1, answers(1, [[1, 0]], [clean]));
    say(0, done(1, 1));
    say(1, done(1, 1));
    expect(heard()).toEqual([]);
  });

  it('what is in sight is told to all', () => {
    const { ask, whole, asked } = shared(2);
    ask(1);
    const sight = { kind: 'sight', number: 1, rows: [4, 5], columns: [0] } as const;
    whole.postMessage(sight);
    for (const each of asked) expect(each.at(-1)).toEqual(sight);
  });

  it('more workers than looks: only those who have one are started, and others are not waited for', () => {
    const { ask, say, heard, asked } = shared(4);
    const [look] = playbook.looks;
    ask(1, { ...playbook, looks: look === undefined ? [] : [look] });
    expect(asked).toHaveLength(1);
    ask(2);
    expect(asked).toHaveLength(3);
    ask(3, { ...playbook, looks: look === undefined ? [] : [look] });
    expect(asked.map((each) => each.at(-1)?.kind)).toEqual(['grid', 'cancel', 'cancel']);
    say(0, done(3, 2));
    expect(heard()).toEqual([done(3, 2)]);
  });

  it('a playbook without looks is done all the same', () => {
    const { ask, say, heard } = shared(2);
    ask(1, { ...playbook, looks: [] });
    say(0, done(1, 0));
    expect(heard()).toEqual([done(1, 0)]);
  });
});
