/** Whatever the number of workers, the menu that comes out is the one a single judge makes; really judged, over the demo. */
import { describe, expect, it, vi } from 'vitest';
import { createAnswerer } from '../../src/app/menu/answerer.ts';
import { createMenuBook, type MenuBook, type MenuState } from '../../src/app/menu/menuBook.ts';
import type { GridWorker, ShareAsked, Told } from '../../src/app/menu/messages.ts';
import { shareOut } from '../../src/app/menu/shareOut.ts';
import type { Playbook } from '../../src/document/index.ts';
import { createMenuJudge, gridOf, sizeOfGrid, type GridKind, type Summary } from '../../src/menu/index.ts';
import { demo, firstOf } from '../store/demo.ts';

/** The program of a worker, to which everything comes as a copy and a little later, as to a worker. Its clock counts. */
function workerLike(cases: (asked: ShareAsked) => void): GridWorker<ShareAsked> {
  const listeners: ((event: { readonly data: Told }) => void)[] = [];
  let time = 0;
  const answer = createAnswerer(
    { now: () => (time += 3), letNewerIn: () => new Promise((resolve) => setImmediate(resolve)) },
    (told) => {
      const data = structuredClone(told);
      setImmediate(() => listeners.forEach((listener) => listener({ data })));
    },
  );
  return {
    addEventListener: (_type, listener) => listeners.push(listener),
    postMessage: (asked) => {
      cases(asked);
      const copy = structuredClone(asked);
      setImmediate(() => answer(copy));
    },
  };
}

/** A menu over so many workers, and which looks each of them was asked about last. */
function menuOf(count: number) {
  const looks: (readonly string[])[] = [];
  let started = 0;
  const menu = createMenuBook(() =>
    shareOut(count, () => {
      const mine = started;
      started += 1;
      return workerLike((asked) => {
        if (asked.kind === 'grid') looks[mine] = asked.looks;
      });
    }),
  );
  return { menu, looks, started: () => started };
}

/** Asks, and waits until all is checked. */
function checked(menu: MenuBook, playbook: Playbook, kind: GridKind): Promise<MenuState> {
  return new Promise((resolve, reject) => {
    const hear = (): void => {
      const state = menu.state();
      if (state === null || state.progress.kind === 'working') return;
      stop();
      if (state.progress.kind === 'done') resolve(state);
      else reject(new Error(JSON.stringify(state.progress)));
    };
    const stop = menu.subscribe(hear);
    menu.ask(playbook, kind);
  });
}

/** What stands in each case of a state. */
function summariesOf({ answers: { summaries, numbers } }: MenuState): readonly (Summary | null)[] {
  return [...numbers].map((number) => summaries[number] ?? null);
}

/** The same by one judge, without workers and slices. */
function judged(playbook: Playbook, kind: GridKind): readonly (Summary | null)[] {
  const judge = createMenuJudge();
  const grid = gridOf(judge.open(playbook), kind);
  return Array.from({ length: sizeOfGrid(grid) }, (_, index) => {
    const menuCase = grid.caseAt(index);
    return menuCase === null ? null : (judge.summaries[judge.judge(menuCase)] ?? null);
  });
}

/** Five looks, which no number of workers here divides, and five pressures: few enough for all pairs. */
function small(): Playbook {
  const { looks, pressures, ...rest } = demo();
  return { ...rest, looks: looks.slice(0, 5), pressures: pressures.slice(0, 5), calls: [], checkOuts: [] };
}

const front = firstOf(small().fronts).id;
const first = firstOf(small().pressures).id;

const grids: readonly (readonly [name: string, playbook: Playbook, kind: GridKind])[] = [
  ['calls', { ...demo(), calls: demo().calls.filter((_, at) => at % 3 === 0), checkOuts: [] }, { kind: 'calls' }],
  ['pairs', small(), { kind: 'pairs', front, turn: 'opposite' }],
  ['partners', small(), { kind: 'partners', front, first }],
];

describe.each(grids)('the grid of %s', (_name, playbook, kind) => {
  const wanted = judged(playbook, kind);
  const cases = wanted.filter((each) => each !== null).length;

  it.each([1, 2, 3])('of %d workers is that of one judge', async (count) => {
    expect(cases).toBeGreaterThan(100);
    const { menu, looks, started } = menuOf(count);
    const state = await checked(menu, playbook, kind);
    expect(summariesOf(state)).toEqual(wanted);
    expect([state.done, state.total, state.progress]).toEqual([cases, cases, { kind: 'done', worked: cases }]);
    // Equal summaries have one number, and nobody has another's looks.
    const { summaries } = state.answers;
    expect(new Set(summaries.map((each) => JSON.stringify(each))).size).toBe(summaries.length);
    expect(summaries.length).toBeGreaterThan(3);
    expect(started()).toBe(count);
    expect(looks.flat().toSorted()).toEqual(playbook.looks.map(({ id }) => id).toSorted());
  });
});

describe('from version to version', () => {
  const calls: GridKind = { kind: 'calls' };
  const playbook: Playbook = { ...demo(), looks: demo().looks.slice(0, 5), checkOuts: [] };
  const rushed = firstOf(playbook.calls);

  it('what an edit leaves alone is not worked out again by any of three', async () => {
    const { menu } = menuOf(3);
    await checked(menu, playbook, calls);
    const turned: Playbook = { ...playbook, looks: playbook.looks.toReversed() };
    const sixRush: Playbook = {
      ...turned,
      calls: turned.calls.map((call) => (call === rushed ? { ...call, rushers: 6 } : call)),
    };
    const edits: readonly (readonly [after: Playbook, worked: number])[] = [
      [turned, 0],
      [sixRush, 5 * 3],
      [{ ...sixRush, looks: sixRush.looks.slice(1) }, 0],
    ];
    for (const [after, worked] of edits) {
      const state = await checked(menu, after, calls);
      expect(summariesOf(state)).toEqual(judged(after, calls));
      expect(state.progress).toEqual({ kind: 'done', worked });
    }
  });

  it('a menu is stopped and gone on with: in the end it is the whole', async () => {
    const { menu } = menuOf(2);
    menu.ask(playbook, calls);
    await vi.waitUntil(() => (menu.state()?.done ?? 0) > 0, { interval: 1, timeout: 20_000 });
    menu.stop();
    const stopped = menu.state();
    expect(stopped?.progress).toEqual({ kind: 'stopped' });
    await new Promise((resolve) => setTimeout(resolve, 50));
    // Nothing comes in any more.
    expect(menu.state()).toBe(stopped);
    expect(stopped?.done).toBeLessThan(stopped?.total ?? 0);
    menu.goOn();
    const state = await checked(menu, playbook, calls);
    expect(summariesOf(state)).toEqual(judged(playbook, calls));
    // What was answered before the stop is known.
    expect(state.progress).not.toEqual({ kind: 'done', worked: state.total });
  });
});
