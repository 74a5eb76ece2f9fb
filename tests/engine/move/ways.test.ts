import { describe, expect, it } from 'vitest';
import {
  analyse,
  asPlayerId,
  asRoleId,
  fieldAt,
  gapsEqual,
  PLACES,
  RULE_LEVELS,
  type Aligned,
  type FieldMarks,
  type Job,
  type Place,
  type Point,
  type Zone,
} from '../../../src/engine/index.ts';
import { curvePiece, lanesOf, waysOf, type Ground, type Runner, type Way } from '../../../src/engine/move/index.ts';
import { bitsOfPiece } from '../../../src/engine/move/geometry/curve.ts';
import { call } from './men.ts';

/** The eleven of the small book against two receivers a side, two of them given other places and jobs. */
const { facts, assignments } = analyse(call({ men: [] }));
const NONE = { fits: [], firm: false, support: null } as const;

function alignedAs(role: string, { x, y }: Point): Aligned {
  const found = assignments.find(({ aligned }) => aligned.role.id === asRoleId(role));
  if (found === undefined) throw new Error(role);
  return { ...found.aligned, x, y };
}

const runner = (job: Job, at: Point, role = 'M'): Runner => ({ aligned: alignedAs(role, at), job });

function ground(men: readonly Runner[] = [], more: Partial<Ground> = {}): Ground {
  return {
    field: fieldAt('high-school', 'middle'),
    gapX: (gap) => facts.gaps.find((each) => gapsEqual(each.gap, gap))?.x ?? null,
    manAt: (role) => men.find(({ aligned }) => aligned.role.id === role)?.aligned ?? null,
    playerAt: (player) => facts.players.get(player) ?? null,
    passer: { x: 0, y: -6.5 },
    ...more,
  };
}

const ways = (one: Runner, others: readonly Runner[] = [], more: Partial<Ground> = {}): readonly Way[] => {
  const runners = [one, ...others];
  return waysOf(ground(runners, more), { runners, lanes: lanesOf(runners) }, one);
};

const end = ([way]: readonly Way[]): Point => {
  const last = way?.points.at(-1);
  if (last === undefined) throw new Error('no way');
  return last;
};

const gap = (side: 'left' | 'right', letter: 'A' | 'B' | 'C') => ({ side, letter });
const rush = (more: Partial<Extract<Job, { kind: 'rush' }>> = {}): Extract<Job, { kind: 'rush' }> => {
  const told = { peel: false, order: null };
  return {
    ...told,
    kind: 'rush',
    gaps: [gap('right', 'B')],
    manner: 'penetrate',
    track: { kind: 'straight' },
    edge: null,
    ...more,
  };
};
const drop = (zone: Zone, side: Place): Job => ({ kind: 'drop', zone, side, run: NONE });

describe('zones', () => {
  const at = (zone: Zone, side: Place, field: FieldMarks, man: Point = { x: 5, y: 6 }): Point =>
    end(ways(runner(drop(zone, side), man), [], { field }));

  it.each(RULE_LEVELS.flatMap((level) => PLACES.map((spot) => [level, spot] as const)))(
    'thirds, halves and quarters divide the field: %s, ball on the %s',
    (level, spot) => {
      const field = fieldAt(level, spot);
      const share = (point: Point): number => (point.x - field.leftSideline) / (160 / 3);
      expect(share(at('third', 'left', field))).toBeCloseTo(1 / 6, 9);
      expect(share(at('middle', 'middle', field))).toBeCloseTo(1 / 2, 9);
      expect(share(at('third', 'right', field))).toBeCloseTo(5 / 6, 9);
      expect(share(at('half', 'left', field))).toBeCloseTo(1 / 4, 9);
      expect(share(at('half', 'right', field))).toBeCloseTo(3 / 4, 9);
      expect(share(at('quarter', 'right', field))).toBeCloseTo(7 / 8, 9);
    },
  );

  it.each(RULE_LEVELS.flatMap((level) => PLACES.map((spot) => [level, spot] as const)))(
    'every zone lies inside the sidelines: %s, ball on the %s',
    (level, spot) => {
      const field = fieldAt(level, spot);
      for (const zone of ['seam', 'hook', 'hole', 'curl-flat', 'flat', 'hot', 'middle', 'third', 'half'] as const) {
        for (const side of PLACES) {
          const { x } = at(zone, side, field);
          expect(x).toBeGreaterThanOrEqual(field.leftSideline + 1);
          expect(x).toBeLessThanOrEqual(field.rightSideline - 1);
        }
      }
    },
  );

  // "10-yd depth rule": "3 Receiver Hook Drop", Blitzology, 2010. Hook 8 to 12 yd deep between hash and tackle: common practice.
  it('a hook is 10 yd deep between hash and tackle', () => {
    const field = fieldAt('high-school', 'middle');
    const { x, y } = at('hook', 'right', field);
    expect(y).toBe(10);
    expect(x).toBeGreaterThan(8 / 3);
    expect(x).toBeLessThan(field.rightHash);
  });

  // Seam: from inside the hash out to the numbers. "Fire Zone Techniques"; "BRONCO/SCIF Player", Brophy Football, 2010.
  it.each(PLACES)('a seam is between the hash and the numbers, the ball on the %s', (spot) => {
    const field = fieldAt('college', spot);
    const { x } = at('seam', 'right', field);
    expect(x).toBeGreaterThan(Math.min(field.rightHash - 2, 6.4));
    expect(x).toBeLessThan(field.rightNumbers);
  });

  it('a flat is shallower and wider than a hook, a deep zone deeper than all others', () => {
    const field = fieldAt('high-school', 'middle');
    expect(at('flat', 'right', field).y).toBeLessThan(at('hook', 'right', field).y);
    expect(at('flat', 'right', field).x).toBeGreaterThan(at('hook', 'right', field).x);
    expect(at('third', 'right', field).y).toBeGreaterThan(at('hook', 'right', field).y);
  });

  it('the outer of two quarters is the outer man’s', () => {
    const [corner, safety] = [
      runner(drop('quarter', 'left'), { x: -15, y: 7 }, 'LC'),
      runner(drop('quarter', 'left'), { x: -5, y: 11 }, 'FS'),
    ];
    expect(end(ways(corner, [safety])).x).toBeLessThan(end(ways(safety, [corner])).x);
  });

  it('in the middle a short zone is about the ball, a little to his own side', () => {
    const field = fieldAt('high-school', 'left');
    expect(at('hole', 'middle', field, { x: 3, y: 4 })).toEqual({ x: 0.8999999999999999, y: 8 });
    expect(at('half', 'middle', field, { x: 3, y: 4 }).x).toBeCloseTo((field.leftSideline + field.rightSideline) / 2);
  });
});

describe('a rush', () => {
  it('goes through the middle of its gap to the passer', () => {
    const [way] = ways(runner(rush(), { x: 3, y: 1 }));
    expect(way?.points).toEqual([
      { x: 3, y: 1 },
      { x: 2, y: -0.05 },
      { x: 0, y: -6.5 },
    ]);
    expect(way).toMatchObject({ crossing: 1, curved: false, gap: gap('right', 'B'), waitsAt: null });
  });

  it('without a gap of its own goes straight ahead; without a passer to where he would stand', () => {
    const [way] = ways(runner(rush({ gaps: [] }), { x: 3, y: 1 }), [], { passer: null });
    expect(way?.points.slice(1)).toEqual([
      { x: 3, y: -0.05 },
      { x: 0, y: -5 },
    ]);
    expect(way?.gap).toBeNull();
  });

  it('has no way to a gap that is not there', () => {
    expect(ways(runner(rush({ gaps: [{ side: 'right', letter: 'F' }] }), { x: 3, y: 1 }))).toEqual([]);
  });

  it('from far outside comes in along the line', () => {
    const [way] = ways(runner(rush(), { x: 9, y: 4 }));
    expect(way?.points[1]).toEqual({ x: 3.4, y: 0.7 });
  });

  it('two men in one gap have a lane each; of two in file the nearer goes inside, on either side', () => {
    for (const [side, sign] of [
      ['right', 1],
      ['left', -1],
    ] as const) {
      const both = rush({ gaps: [gap(side, 'B')] });
      const near = runner(both, { x: 3 * sign, y: 1 }, 'N');
      const deep = runner(both, { x: 3 * sign, y: 4 }, 'M');
      const crossing = (one: Runner, other: Runner): number => ways(one, [other])[0]?.points[1]?.x ?? NaN;
      expect(Math.abs(crossing(near, deep))).toBeCloseTo(2 - 0.17, 9);
      expect(Math.abs(crossing(deep, near))).toBeCloseTo(2 + 0.17, 9);
    }
  });

  it('past a neighbour over the ball bends to its own side of him', () => {
    const nose = runner(rush(), { x: 0, y: 1 }, 'N');
    const track = { kind: 'past', how: 'outside-hip', neighbour: nose.aligned.role.id } as const;
    const bend = (side: 'left' | 'right', x: number): number =>
      ways(runner(rush({ track, gaps: [gap(side, 'A')] }), { x, y: 4 }), [nose])[0]?.points[1]?.x ?? NaN;
    expect(bend('right', 2 / 3)).toBeCloseTo(0.85, 9);
    expect(bend('left', -2 / 3)).toBeCloseTo(-0.85, 9);
  });

  it('contain keeps its width, and never less than 2.4 yd', () => {
    const contain = (letter: 'A' | 'C'): Job => ({ ...rush({ gaps: [gap('right', letter)] }), kind: 'contain' });
    expect(end(ways(runner(contain('A'), { x: 1, y: 1 })))).toEqual({ x: 2.4, y: -6.5 });
    expect(end(ways(runner(contain('C'), { x: 4, y: 1 }))).x).toBeCloseTo((11 / 3) * 0.8 + 0.5, 9);
  });
});

describe('the other jobs', () => {
  it('a man who plays two gaps, or fits two, has a way into each', () => {
    const gaps = [gap('left', 'A'), gap('right', 'A')];
    const both = ways(runner(rush({ gaps, manner: 'two-gap' }), { x: 0, y: 1 }, 'N'));
    expect(both.map(({ points }) => points.at(-1)?.x)).toEqual([expect.closeTo(-2 / 3, 9), expect.closeTo(2 / 3, 9)]);
    const fit: Job = { kind: 'fit', gaps, manner: 'read', support: null };
    expect(ways(runner(fit, { x: 0, y: 4 }))).toHaveLength(2);
  });

  it('man coverage stops short of the receiver, inside the sidelines; nobody there, no way', () => {
    const man = (receiver: string): Job => ({ kind: 'man', receiver: asPlayerId(receiver), run: NONE });
    const { x, y } = end(ways(runner(man('Z'), { x: 17, y: 7 })));
    const receiver = facts.players.get(asPlayerId('Z'));
    expect(Math.hypot(x - (receiver?.x ?? 0), y - (receiver?.y ?? 0))).toBeCloseTo(0.67, 9);
    const field = fieldAt('high-school', 'right');
    const outside = end(ways(runner(man('Z'), { x: 25, y: 0.4 }), [], { field }));
    expect(outside.x).toBeLessThanOrEqual(field.rightSideline);
    expect(ways(runner(man('nobody'), { x: 17, y: 7 }))).toEqual([]);
  });

  it('a spy goes toward the passer; without one there is no way', () => {
    const spy: Job = { kind: 'spy', run: NONE };
    const { x, y } = end(ways(runner(spy, { x: 0, y: 8 })));
    expect(x).toBe(0);
    expect(y).toBeCloseTo(-5.83, 9);
    expect(ways(runner(spy, { x: 0, y: 8 }), [], { passer: null })).toEqual([]);
  });
});

describe('curves', () => {
  const points = [
    { x: 0, y: 2 },
    { x: 1, y: 1 },
    { x: 0, y: 0 },
  ];

  it('pass through every point, in bits', () => {
    const bits = [0, 1].flatMap((index) => bitsOfPiece(points, index, true));
    expect(bits).toHaveLength(12);
    expect(bits[5]).toEqual(points[1]);
    expect(bits.at(-1)).toEqual(points[2]);
  });

  it('straight ways, and those of two points, are their own bits', () => {
    expect(bitsOfPiece(points, 0, false)).toEqual([points[1]]);
    expect(bitsOfPiece(points.slice(0, 2), 0, true)).toEqual([points[1]]);
  });

  it('there is no piece past the last point', () => {
    expect(curvePiece(points, 2)).toBeNull();
    expect(bitsOfPiece(points, 2, true)).toEqual([]);
  });
});
