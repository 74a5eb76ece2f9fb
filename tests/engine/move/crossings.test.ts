import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asRoleId } from '../../../src/engine/index.ts';
import {
  crossings,
  MEET_WITHIN,
  MEET_WITHIN_SECONDS,
  positionAt,
  SPEED_MODELS,
  type Errand,
  type Move,
  type Stamp,
} from '../../../src/engine/move/index.ts';
import { moveOf, movesIn, type Sent } from './men.ts';

/** A move written by hand: its stamps, the first of them his first step. */
function move(role: string, errand: Errand, ...stamps: readonly (readonly [x: number, y: number, t: number])[]): Move {
  const path: readonly Stamp[] = stamps.map(([x, y, t]) => ({ x, y, t }));
  return {
    role: asRoleId(role),
    errand,
    path,
    length: 5,
    starts: path[0]?.t ?? 0,
    gapAt: null,
    toGap: null,
    edge: false,
    pace: SPEED_MODELS.college.rooms.line,
    estimate: true,
  };
}

/** From left to right through (0, 2), there after one second. */
const LEFT_TO_RIGHT = move('A', 'rush', [-4, 2, 0], [4, 2, 2]);
/** Down through (0, 2), there so many seconds later. */
const down = (later: number, errand: Errand = 'rush'): Move => move('B', errand, [0, 6, later], [0, -1, 1.75 + later]);

describe('two paths', () => {
  it('meet where both are at one time', () => {
    const [met, ...more] = crossings([LEFT_TO_RIGHT, down(0)]);
    expect(more).toEqual([]);
    expect(met).toMatchObject({ a: 'A', b: 'B' });
    expect(met?.t).toBeCloseTo(1, 0);
    expect(Math.hypot(met?.at.x ?? 9, (met?.at.y ?? 9) - 2)).toBeLessThan(1);
  });

  it.each([
    ['the same pair the other way round', [down(0), LEFT_TO_RIGHT]],
    ['with somebody else about', [down(0), LEFT_TO_RIGHT, move('C', 'rush', [9, 9, 0], [9, 0, 2])]],
  ])('once: %s', (_name, moves) => {
    expect(crossings(moves)).toEqual(crossings([LEFT_TO_RIGHT, down(0)]));
  });

  it.each([0.6, 1, -1])('do not when one is there %s s later', (later) => {
    expect(crossings([LEFT_TO_RIGHT, down(later)])).toEqual([]);
  });

  it('do not when one of them stands there', () => {
    expect(crossings([LEFT_TO_RIGHT, move('B', 'stand', [0, 2, 0])])).toEqual([]);
    // He stands on the way until two seconds are over.
    expect(crossings([LEFT_TO_RIGHT, move('B', 'rush', [0, 2, 2.5], [0, 0, 3])])).toEqual([]);
  });

  it('do not when both cover; one who drops may meet one who rushes', () => {
    const dropping = { ...LEFT_TO_RIGHT, errand: 'drop' } as const;
    expect(crossings([dropping, down(0, 'drop')])).toEqual([]);
    expect(crossings([dropping, down(0, 'man')])).toEqual([]);
    expect(crossings([dropping, down(0, 'rush')])).toHaveLength(1);
    expect(crossings([dropping, down(0, 'fit')])).toHaveLength(1);
  });

  it('do not beyond the line, where all close on the passer', () => {
    const men = [move('A', 'rush', [-4, 0, 0], [0, -6, 1]), move('B', 'rush', [4, 0, 0], [0, -6, 1])];
    expect(crossings(men)).toEqual([]);
  });

  it('whatever is found is near in place and in time, both moving', () => {
    const any = (role: string) =>
      fc
        .tuple(
          fc.array(fc.tuple(fc.integer({ min: -6, max: 6 }), fc.integer({ min: -3, max: 8 })), {
            minLength: 2,
            maxLength: 5,
          }),
          fc.integer({ min: 0, max: 10 }),
        )
        .map(([places, starts]) =>
          move(role, 'rush', ...places.map(([x, y], index) => [x, y, starts / 10 + index * 0.5] as const)),
        );
    fc.assert(
      fc.property(any('A'), any('B'), (a, b) => {
        for (const { at, t } of crossings([a, b])) {
          for (const one of [a, b]) {
            const times = Array.from(
              { length: 101 },
              (_, step) => t + (step / 50 - 1) * (MEET_WITHIN_SECONDS / 2 + 0.01),
            );
            const nearest = Math.min(
              ...times
                .filter((time) => time >= one.starts - 0.01)
                .map((time) => Math.hypot(positionAt(one, time).x - at.x, positionAt(one, time).y - at.y)),
            );
            expect(nearest).toBeLessThan(MEET_WITHIN / 2 + 0.15);
          }
        }
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});

/** The end loops out while the backer comes in: with nobody told who goes first they run into each other. */
const END: Sent = { role: 'RE', at: [3, 1], job: 'rush C-right loop' };
const BACKER: Sent = { role: 'S', at: [4.8, 1.6], job: 'rush B-right slant' };

describe('an order', () => {
  const told = (end: Partial<Sent>, backer: Partial<Sent>): readonly Move[] =>
    movesIn({
      men: [
        { ...END, ...end },
        { ...BACKER, ...backer },
      ],
    });
  const first = (neighbour: string) => ({ order: { turn: 'first', neighbour: asRoleId(neighbour) } }) as const;
  const second = (neighbour: string) => ({ order: { turn: 'second', neighbour: asRoleId(neighbour) } }) as const;

  it('without one they meet, and nobody waits', () => {
    const moves = told({}, {});
    expect(crossings(moves).map(({ a, b }) => [a, b])).toEqual([['RE', 'S']]);
    expect(moveOf('S', moves).starts).toBe(0.3);
  });

  it.each([
    ['the backer second', {}, second('RE'), 'S'],
    ['the end first', first('S'), {}, 'S'],
    ['both told', first('S'), second('RE'), 'S'],
    ['the end second', second('S'), {}, 'RE'],
  ])('%s: the second waits, and they no longer meet', (_name, end, backer, waits) => {
    const moves = told(end, backer);
    expect(crossings(moves)).toEqual([]);
    for (const role of ['RE', 'S']) {
      const { starts } = moveOf(role, moves);
      if (role === waits) expect(starts).toBeGreaterThan(0.59);
      else expect(starts).toBe(0.3);
    }
  });

  it('a wait moves the whole path in time and nothing in place', () => {
    const [now, later] = [told({}, {}), told({}, second('RE'))].map((moves) => moveOf('S', moves));
    const wait = (later?.starts ?? 0) - (now?.starts ?? 0);
    expect(later?.path.map(({ x, y }) => [x, y])).toEqual(now?.path.map(({ x, y }) => [x, y]));
    expect((later?.gapAt ?? 0) - (now?.gapAt ?? 0)).toBeCloseTo(wait, 9);
    expect(later?.path[0]).toEqual(now?.path[0]);
  });

  it('two told to go second both wait, and meet', () => {
    expect(crossings(told(second('S'), second('RE')))).toHaveLength(1);
  });

  it('after somebody who is not on the field nobody waits', () => {
    expect(moveOf('S', told({}, second('nobody'))).starts).toBe(0.3);
  });

  it.each([
    ['under the end he is before him', 'rush B-right under:@RE', 'RE'],
    ['over the end he is behind him', 'rush B-right over:@RE', 'S'],
    ['off the end’s hip he is behind him', 'rush B-right inside-hip:@RE', 'S'],
  ])('a track is one where it has to be: %s', (_name, job, waits) => {
    const moves = told({}, { job });
    expect(crossings(moves)).toEqual([]);
    const other = waits === 'S' ? 'RE' : 'S';
    expect(moveOf(waits, moves).starts).toBeGreaterThanOrEqual(0.3);
    expect(moveOf(other, moves).starts).toBe(0.3);
  });
});
