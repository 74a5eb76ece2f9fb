import { describe, expect, it } from 'vitest';
import { asPlayerId, asRoleId, type Job, type Passing } from '../../src/engine/index.ts';
import { curvePiece, movesOf, positionAt } from '../../src/engine/move/index.ts';
import { buildScene, pathData, tipOf, WHOLE_PICTURE, type PathShape, type Scene } from '../../src/scene/index.ts';
import { board, drop, ELEVEN, gap, rush, type Man } from './board.ts';

const NONE = { fits: [], firm: false, support: null } as const;

const scene = (...men: readonly Man[]): Scene => buildScene(board(men), WHOLE_PICTURE);
const pathsIn = ({ shapes }: Scene): readonly PathShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' && shape.key.startsWith('job/') ? [shape] : []));
const pathOf = (man: Man, ...others: readonly Man[]): PathShape => {
  const found = pathsIn(scene(man, ...others)).find((path) => path.key.startsWith('job/E-0'));
  if (found === undefined) throw new Error('no path');
  return found;
};
const end = (job: Job, at = { x: 3, y: 1 }): Man => ({ letter: 'E', room: 'line', ...at, job });

/** Gap centres of a standard line: 4 ft from centre to centre of the linemen (the notation's own choice). */
const A = 2 / 3;
const B = 2;
const C = 10 / 3;

describe('without colour', () => {
  const signature = (job: Job): string => {
    const { shapes } = scene(end(job, { x: 3, y: 2 }));
    const drawn = shapes.filter((shape) => shape.key.startsWith('job/'));
    return drawn
      .flatMap((shape) => {
        if (shape.kind === 'path') return [`${shape.stroke} ${shape.tip}`];
        return shape.kind === 'ellipse' ? [`${shape.stroke} ring`] : [];
      })
      .join(', ');
  };
  const jobs: Readonly<Record<string, Job>> = {
    rush: rush([gap('rA')]),
    contain: { ...rush([gap('rC')]), kind: 'contain' },
    'two-gap': rush([gap('rA'), gap('rB')], { manner: 'two-gap' }),
    fit: { kind: 'fit', gaps: [gap('rB')], manner: 'read', support: null },
    drop: drop('hook', 'right'),
    man: { kind: 'man', receiver: asPlayerId('Z'), run: NONE },
    spy: { kind: 'spy', run: NONE },
  };

  it('every kind of job differs from the others in line, tip or ring', () => {
    expect(Object.fromEntries(Object.entries(jobs).map(([name, job]) => [name, signature(job)]))).toEqual({
      rush: 'solid filled-head',
      contain: 'solid bar',
      'two-gap': 'solid filled-head, solid filled-head',
      fit: 'dotted tee',
      drop: 'solid ring, solid none',
      man: 'dashed open-head',
      spy: 'dotted ring, dotted none',
    });
  });

  it('a rush is drawn heavier than a drop', () => {
    expect(pathOf(end(rush([gap('rA')]))).width).toBeGreaterThan(pathOf(end(drop('hook', 'right'))).width);
  });
});

describe('a rush', () => {
  it.each([
    ['rA', A],
    ['rB', B],
    ['rC', C],
    ['lA', -A],
  ])('crosses the line in its gap: %s', (name, x) => {
    const { points } = pathOf(end(rush([gap(name)])));
    const crossing = points.find((point) => Math.abs(point.y) < 0.2);
    expect(crossing?.x).toBeCloseTo(x, 2);
    expect(points.at(-1)?.x).toBeCloseTo(x, 2);
    expect(points.at(-1)?.y).toBeLessThan(-2.4);
  });

  it('sets out at the rim of the letters, not in them', () => {
    for (const path of pathsIn(scene(...ELEVEN))) {
      const man = ELEVEN.find((one, index) => path.key.startsWith(`job/${one.letter}-${index}/`));
      const [start] = path.points;
      if (man === undefined || start === undefined) throw new Error(path.key);
      expect(Math.hypot(start.x - man.x, start.y - man.y)).toBeGreaterThan(0.45);
    }
  });

  it('a slant steps flat first; a penetrating rush goes straight', () => {
    const slant = pathOf(end(rush([gap('rA')], { manner: 'slant' })));
    const straight = pathOf(end(rush([gap('rA')])));
    const [from, step] = slant.points;
    if (from === undefined || step === undefined) throw new Error('no step');
    expect(Math.abs(step.y - from.y)).toBeLessThan(Math.abs(step.x - from.x) / 3);
    expect(straight.points.length).toBeLessThan(slant.points.length);
    expect(slant.curved).toBe(false);
  });

  it('a loop goes back off the ball before it goes forward', () => {
    const loop = pathOf(end(rush([gap('rA')], { manner: 'loop' })));
    expect(Math.max(...loop.points.map((point) => point.y))).toBeGreaterThan(1.2);
    expect(loop.curved).toBe(true);
  });

  const neighbour: Man = { letter: 'T', room: 'line', x: 2, y: 1 };
  it.each<[Passing, (bend: { x: number; y: number }) => boolean]>([
    ['under', (bend) => bend.y < 0.5 && Math.abs(bend.x - 2) < 0.01],
    ['over', (bend) => bend.y > 1.5 && Math.abs(bend.x - 2) < 0.5],
    ['inside-hip', (bend) => bend.x < 1.5],
    ['outside-hip', (bend) => bend.x > 2.5],
  ])('passes his neighbour %s', (how, holds) => {
    const track = { kind: 'past', how, neighbour: asRoleId('T-1') } as const;
    const path = pathOf(end(rush([gap('rA')], { track }), { x: 4.5, y: 1.5 }), neighbour);
    expect(path.points.some(holds)).toBe(true);
  });

  it('two men in one gap have a lane each', () => {
    const men: readonly Man[] = [end(rush([gap('rB')])), { ...end(rush([gap('rB')])), letter: 'M', x: 1, y: 4.5 }];
    const [first, second] = pathsIn(scene(...men)).map((path) => path.points.at(-1)?.x ?? 0);
    expect(Math.abs((first ?? 0) - (second ?? 0))).toBeGreaterThan(0.3);
  });

  it('ends short of a back instead of in him', () => {
    const look = 'line wr:X@-17 wr:Z@14,-1.5 wr:H@-8,-1.5 qb:Q@0,-5 rb:B@2,-2.9 rb:F@-2,-5';
    const { shapes } = buildScene(board([end(rush([gap('rB')]))], { look }), WHOLE_PICTURE);
    const path = shapes.find((shape) => shape.key === 'job/E-0/0');
    const tip = path?.kind === 'path' ? path.points.at(-1) : undefined;
    expect(Math.hypot((tip?.x ?? 2) - 2, (tip?.y ?? -2.9) + 2.9)).toBeGreaterThan(0.47);
  });
});

describe('the other jobs', () => {
  it('contain ends outside the passer at his depth', () => {
    const { points } = pathOf(end({ ...rush([gap('rC')]), kind: 'contain' }));
    expect(points.at(-1)?.y).toBeCloseTo(-5, 5);
    expect(points.at(-1)?.x).toBeGreaterThan(2);
  });

  it('a two-gap man reaches into both his gaps and no further', () => {
    const two = pathsIn(scene(end(rush([gap('lA'), gap('rA')], { manner: 'two-gap' }), { x: 0, y: 1 })));
    expect(two.map((path) => path.points.at(-1)?.x)).toEqual([expect.closeTo(-A, 2), expect.closeTo(A, 2)]);
    for (const path of two) expect(path.points.at(-1)?.y).toBeGreaterThan(-1);
  });

  it('man coverage ends at the receiver, with room for the head', () => {
    const { points } = pathOf(end({ kind: 'man', receiver: asPlayerId('Z'), run: NONE }, { x: 12, y: 7 }));
    const tip = points.at(-1);
    const away = Math.hypot((tip?.x ?? 0) - 14, (tip?.y ?? 0) + 1.5);
    expect(away).toBeGreaterThan(0.47);
    expect(away).toBeLessThan(1);
  });

  it('the spy has a named ring about the passer', () => {
    const { shapes } = scene(end({ kind: 'spy', run: NONE }, { x: 3, y: 4 }));
    const ring = shapes.find((shape) => shape.key === 'job/E-0/0/ring');
    expect(ring?.kind === 'ellipse' && ring.at).toEqual({ x: 0, y: -5 });
    expect(shapes.some((shape) => shape.kind === 'label' && shape.text === 'spy E')).toBe(true);
  });

  it('a cover man near the line also shows the gap he fits; a deep one does not', () => {
    const cover = (y: number): Man => ({
      letter: 'E',
      room: 'secondary',
      x: 5,
      y,
      job: drop('flat', 'right'),
      gaps: [gap('rC')],
    });
    expect(pathsIn(scene(cover(4))).map((path) => path.tip)).toEqual(['none', 'tee']);
    expect(pathsIn(scene(cover(11))).map((path) => path.tip)).toEqual(['none']);
  });

  it('a lineman nobody tells rushes the gap his base front gives him', () => {
    const base = board([{ letter: 'E', room: 'line', x: 3, y: 1, job: rush([gap('rC')]) }]);
    const untold = {
      ...base,
      assignments: base.assignments.map((one) => ({ ...one, combined: { ...one.combined, job: null, from: null } })),
    };
    const paths = pathsIn(buildScene(untold, WHOLE_PICTURE));
    expect(paths.map((path) => [path.stroke, path.tip])).toEqual([['solid', 'filled-head']]);
    expect(paths[0]?.points.at(-1)?.x).toBeCloseTo(C, 2);
  });
});

describe('what is drawn is what is timed', () => {
  const eleven = board(ELEVEN);
  const { facts, assignments, setup } = eleven;
  const moves = movesOf({ facts, assignments, level: setup.level, spot: setup.spot });

  it('every rush is drawn across the line where the man who runs it crosses', () => {
    const crossing = moves.flatMap((move) =>
      move.gapAt === null ? [] : [[move.role, positionAt(move, move.gapAt).x]],
    );
    const drawn = pathsIn(buildScene(eleven, WHOLE_PICTURE)).flatMap(({ key, points }) =>
      points.filter(({ y }) => y === -0.05).map(({ x }) => [key.split('/')[1], x] as const),
    );
    expect(crossing.length).toBeGreaterThan(4);
    for (const [role, x] of crossing) {
      const shown = drawn.filter(([id]) => id === role).map(([, at]) => at);
      expect(shown.some((at) => Math.abs(at - Number(x)) < 0.01)).toBe(true);
    }
  });

  it('a curve is drawn by the pieces it is timed by', () => {
    const curved = pathsIn(buildScene(eleven, WHOLE_PICTURE)).filter(({ curved, tip }) => curved && tip === 'bar');
    expect(curved.length).toBeGreaterThan(0);
    for (const path of curved) {
      const pieces = path.points.slice(1).map((_, index) => curvePiece(path.points, index));
      const numbers = pieces.flatMap((piece) => (piece === null ? [] : [piece.c1, piece.c2, piece.to]));
      const written = [...pathData(path, (point) => point).matchAll(/-?[\d.]+/g)]
        .map(([text]) => Number(text))
        .slice(2);
      const rounded = (value: number): number => Math.round(value * 100) / 100 + 0;
      expect(written.map(rounded)).toEqual(numbers.flatMap(({ x, y }) => [rounded(x), rounded(y)]));
    }
  });
});

describe('tips and path data', () => {
  const straight = (tip: PathShape['tip']): PathShape => ({
    kind: 'path',
    key: 'k',
    layer: 'job',
    target: null,
    faint: false,
    points: [
      { x: 0, y: 5 },
      { x: 0, y: 0 },
    ],
    curved: false,
    stroke: 'solid',
    width: 0.1,
    ink: 'rush',
    tip,
  });
  const asIs = (point: { x: number; y: number }) => point;

  it.each([
    ['filled-head', true],
    ['open-head', false],
  ] as const)('a %s has its point at the end of the path, and is symmetric', (tip, filled) => {
    const head = tipOf(straight(tip));
    expect(head?.filled).toBe(filled);
    const [left, point, right] = head?.points ?? [];
    expect(point).toEqual({ x: 0, y: 0 });
    expect((left?.x ?? 0) + (right?.x ?? 0)).toBeCloseTo(0, 9);
    expect(left?.y).toBeGreaterThan(0);
  });

  it.each(['bar', 'tee'] as const)('a %s lies across the end', (tip) => {
    const [left, right] = tipOf(straight(tip))?.points ?? [];
    expect(left?.y).toBeCloseTo(0, 9);
    expect(Math.abs((left?.x ?? 0) - (right?.x ?? 0))).toBeGreaterThan(0.4);
  });

  it('has no tip without one, or without a direction', () => {
    expect(tipOf(straight('none'))).toBeNull();
    expect(tipOf({ ...straight('bar'), points: [{ x: 1, y: 1 }] })).toBeNull();
    expect(
      tipOf({
        ...straight('bar'),
        points: [
          { x: 1, y: 1 },
          { x: 1, y: 1 },
        ],
      }),
    ).toBeNull();
    expect(tipOf({ ...straight('bar'), points: [] })).toBeNull();
  });

  it('writes lines, curves and nothing', () => {
    const bent = [
      { x: 0, y: 2 },
      { x: 1, y: 1 },
      { x: 0, y: 0 },
    ];
    expect(pathData(straight('none'), asIs)).toBe('M0 5L0 0');
    expect(pathData({ ...straight('none'), points: bent }, asIs)).toBe('M0 2L1 1L0 0');
    expect(pathData({ ...straight('none'), points: bent, curved: true }, asIs)).toMatch(/^M0 2C.* 1 1C.* 0 0$/);
    expect(pathData({ ...straight('none'), points: [] }, asIs)).toBe('');
  });

  it('stops the line inside a filled head, so that its point stays sharp', () => {
    expect(pathData(straight('filled-head'), asIs)).toMatch(/L0 0\.[1-9]\d*$/);
  });
});
