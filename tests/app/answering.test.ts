/** A grid is answered in slices: none is long, a cancel is heard after one, and all is told. Time is counted, not measured. */
import { describe, expect, it } from 'vitest';
import { answerInSlices, SLICE_MS, TELL_MS } from '../../src/app/menu/answering.ts';
import { gridOf, sizeOfGrid, type MenuCase } from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

const grid = gridOf(demo(), { kind: 'calls' });
const size = sizeOfGrid(grid);

/** A clock that goes on only while cases are judged; what each case costs is given. */
function run(
  cost: (asked: number) => number,
  wanted: (slices: number) => boolean = () => true,
  mine: (menuCase: MenuCase) => boolean = () => true,
) {
  let [time, asked, begun, last] = [0, 0, 0, 0];
  const slices: { readonly ms: number; readonly cases: number }[] = [];
  const told: { readonly at: readonly number[]; readonly answers: readonly number[]; readonly time: number }[] = [];
  const answers = answerInSlices({
    grid,
    isMine: mine,
    judge: () => {
      time += cost(asked);
      asked += 1;
      return asked;
    },
    now: () => time,
    letNewerIn: () => {
      slices.push({ ms: time - begun, cases: asked - last });
      [begun, last] = [time, asked];
      return Promise.resolve();
    },
    isWanted: () => wanted(slices.length),
    tell: (at, numbers) => told.push({ at: [...at], answers: [...numbers], time }),
  });
  return { ...answers, slices, told, asked: () => asked, time: () => time };
}

describe('answering in slices', () => {
  it.each([
    ['cases of 0.2 ms', () => 0.2],
    ['cases of 3 ms', () => 3],
    ['cases of 5 ms', () => 5],
    ['now and then a dear one', (asked: number) => (asked % 50 === 49 ? 7 : 0.5)],
  ])('%s: no slice is longer than 8 ms, but for a dear case that nobody could foresee', async (_, cost) => {
    const { done, slices, asked } = run(cost);
    expect(await done).toBe(true);
    expect(asked()).toBe(size);
    const dear = cost(49) > cost(0) ? cost(49) : 0;
    // The last slice only finds that nothing is left.
    for (const { ms, cases } of slices.slice(0, -1)) {
      expect(ms).toBeLessThanOrEqual(SLICE_MS + dear + 1e-6);
      // However dear a case is, one is answered.
      expect(cases).toBeGreaterThanOrEqual(1);
    }
  });

  it('a case that alone is longer than a slice is a slice', async () => {
    const { done, slices } = run(() => 20);
    await done;
    expect(slices.every(({ cases }) => cases <= 1)).toBe(true);
  });

  it('what is no longer wanted is dropped after the slice that is begun: 100 ms are twelve of them', async () => {
    const { done, slices, told, asked } = run(
      () => 1,
      (count) => count < 3,
    );
    expect(await done).toBe(false);
    expect(slices).toHaveLength(3);
    expect(asked()).toBeLessThanOrEqual(3 * SLICE_MS);
    expect(SLICE_MS * 12).toBeLessThan(100);
    expect(told.flatMap(({ at }) => at).length).toBeLessThan(size);
  });

  it('every case is told once with its answer, about five times a second', async () => {
    const { done, told, time } = run(() => 1);
    await done;
    const pairs = told.flatMap(({ at, answers }) => at.map((place, index) => [place, answers[index]] as const));
    expect(pairs).toEqual(Array.from({ length: size }, (_, index) => [index, index + 1]));
    expect(told.length).toBeLessThanOrEqual(time() / TELL_MS + 1);
    expect(told.length).toBeGreaterThanOrEqual(time() / (TELL_MS + SLICE_MS) - 1);
  });

  it('cases of somebody else are passed over, also when they are in sight', async () => {
    const look = grid.columns[2]?.id;
    const mine = run(
      () => 1,
      () => true,
      (menuCase) => menuCase.look.id === look,
    );
    mine.prefer([0, 1], [0, 1]);
    expect(await mine.done).toBe(true);
    const at = mine.told.flatMap((each) => each.at);
    expect(at).toEqual(
      Array.from({ length: size }, (_, index) => index).filter((index) => grid.caseAt(index)?.look.id === look),
    );
    expect(mine.asked()).toBe(size / grid.columns.length);
  });

  it('what comes into sight is answered next', async () => {
    let asked = 0;
    const answers = answerInSlices({
      grid,
      isMine: () => true,
      judge: () => (asked += 1),
      now: () => asked,
      letNewerIn: () => {
        if (asked > 10) answers.prefer([7], [2]);
        return Promise.resolve();
      },
      isWanted: () => asked < 500,
      tell: (at) => seen.push(...at),
    });
    const seen: number[] = [];
    await answers.done;
    const columns = grid.columns.length;
    expect(seen.slice(0, 30)).toContain((7 * columns + 2) * grid.layers.length);
  });
});
