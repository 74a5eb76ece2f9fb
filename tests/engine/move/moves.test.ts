import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  analyse,
  gapsEqual,
  mirrorSetup,
  PLACES,
  RULE_LEVELS,
  type Analysis,
  type Setup,
} from '../../../src/engine/index.ts';
import { movesOf, movesOfDraft, positionAt, SPEED_MODELS, type Move } from '../../../src/engine/move/index.ts';
import { frozen, LOOKS } from '../book.ts';
import { call, inputOf, moveOf, movesIn, type Scene, type Sent } from './men.ts';

const JOBS = [
  'rush A-right',
  'rush A-left slant',
  'rush B-right loop',
  'rush C-right',
  'rush C-left slant',
  'contain C-right',
  'contain C-left loop',
  'rush B-left under:@N',
  'rush B-right over:@RE',
  'rush A-right inside-hip:@RE',
  'fit B-right',
  'drop seam-right',
  'drop hook-middle',
  'drop curl-flat-left',
  'drop flat-right',
  'drop middle',
  'drop third-left',
  'drop half-right',
  'drop quarter-left',
  'spy',
  'man back',
  'man #1-right',
] as const;
const ROLES = ['N', 'LE', 'RE', 'S', 'J', 'M', 'W', 'SS', 'FS', 'LC', 'RC'] as const;
const NAMES = Object.keys(LOOKS).filter((name): name is keyof typeof LOOKS => name in LOOKS);

const sent: fc.Arbitrary<Sent> = fc.record({
  role: fc.constantFrom(...ROLES),
  at: fc.tuple(fc.integer({ min: -15, max: 15 }), fc.integer({ min: 1, max: 13 })),
  job: fc.constantFrom(...JOBS),
});
const anyScene: fc.Arbitrary<Scene> = fc.record({
  men: fc.uniqueArray(sent, { maxLength: 8, selector: ({ role }) => role }),
  look: fc.constantFrom(...NAMES),
  level: fc.constantFrom(...RULE_LEVELS),
  spot: fc.constantFrom(...PLACES),
});
const RUNS = { numRuns: 80, seed: 20261125 } as const;

const movesFor = (setup: Setup): { readonly analysis: Analysis; readonly moves: readonly Move[] } => {
  const analysis = analyse(setup);
  return { analysis, moves: movesOf(inputOf(analysis)) };
};

describe('any call', () => {
  it('every man has one move, in the order of the assignments, from where he stands', () => {
    fc.assert(
      fc.property(anyScene, (scene) => {
        const { analysis, moves } = movesFor(frozen(call(scene)));
        expect(moves.map(({ role }) => role)).toEqual(analysis.assignments.map(({ aligned }) => aligned.role.id));
        moves.forEach(({ path: [start], estimate }, index) => {
          const aligned = analysis.assignments[index]?.aligned;
          expect(start).toEqual({ x: aligned?.x, y: aligned?.y, t: 0 });
          expect(estimate).toBe(true);
        });
      }),
      RUNS,
    );
  });

  it('time strictly grows, nobody is faster than his top speed, and nobody moves before he reacts', () => {
    fc.assert(
      fc.property(anyScene, (scene) => {
        const wrong = movesFor(call(scene)).moves.flatMap(({ path, pace, starts }) =>
          path.slice(1).filter((stamp, index) => {
            const before = path[index] ?? stamp;
            const run = Math.hypot(stamp.x - before.x, stamp.y - before.y);
            // Places and times are kept to a thousandth.
            const possible = run <= pace.top * (stamp.t - before.t) + 0.02;
            return !(stamp.t > before.t && possible && (stamp.t > starts || run === 0));
          }),
        );
        expect(wrong).toEqual([]);
      }),
      RUNS,
    );
  });

  it('ends inside the sidelines', () => {
    fc.assert(
      fc.property(anyScene, (scene) => {
        const { analysis, moves } = movesFor(call(scene));
        const { left, right } = analysis.facts.sidelines;
        moves.forEach(({ path }, index) => {
          const [start, end] = [analysis.assignments[index]?.aligned.x ?? 0, path.at(-1)?.x ?? NaN];
          expect(end).toBeGreaterThan(Math.min(left, start - 0.001));
          expect(end).toBeLessThan(Math.max(right, start + 0.001));
        });
      }),
      RUNS,
    );
  });

  it('flipped left to right it has the flipped moves', () => {
    const digest = (moves: readonly Move[], sign: 1 | -1) =>
      moves
        .map(({ role, errand, path, length, gapAt, starts, edge }) => {
          const places = path.map(({ x, y, t }) => `${(x * sign + 0).toFixed(2)} ${y.toFixed(2)} ${t.toFixed(2)}`);
          return [role, errand, length.toFixed(2), gapAt?.toFixed(2), starts, edge, ...places].join(';');
        })
        .sort();
    const asText = (text: string): string => text.replace(/-0\.00/g, '0.00');
    fc.assert(
      fc.property(anyScene, (scene) => {
        const setup = call(scene);
        const usual = digest(movesFor(setup).moves, 1).map(asText);
        expect(digest(movesFor(mirrorSetup(setup)).moves, -1).map(asText)).toEqual(usual);
      }),
      RUNS,
    );
  });

  it('the same input gives the same bytes, by draft as well', () => {
    fc.assert(
      fc.property(anyScene, (scene) => {
        const { analysis, moves } = movesFor(call(scene));
        expect(JSON.stringify(movesFor(call(scene)).moves)).toBe(JSON.stringify(moves));
        expect(movesOfDraft(analysis)).toEqual(moves);
        expect(movesOfDraft(analysis)).toBe(movesOfDraft(analysis));
      }),
      { ...RUNS, numRuns: 40 },
    );
  });

  it('a rusher crosses the line in his gap when he says he does', () => {
    fc.assert(
      fc.property(anyScene, (scene) => {
        const { analysis, moves } = movesFor(call(scene));
        moves.forEach((move, index) => {
          const job = analysis.assignments[index]?.combined.job;
          if (move.gapAt === null || (job?.kind !== 'rush' && job?.kind !== 'contain')) return;
          const [gap] = job.gaps;
          if (gap === undefined) return;
          const x = analysis.facts.gaps.find((each) => gapsEqual(each.gap, gap))?.x ?? NaN;
          const at = positionAt(move, move.gapAt);
          expect(at.y).toBeCloseTo(-0.05, 2);
          // Up to eight men may share it.
          expect(Math.abs(at.x - x)).toBeLessThan(1.3);
          expect(move.toGap).toBeLessThan(move.length + 0.001);
        });
      }),
      RUNS,
    );
  });
});

describe('what each job does', () => {
  const only = (job: string, at?: Sent['at'], role = 'M'): Move =>
    moveOf(role, movesIn({ men: [at === undefined ? { role, job } : { role, job, at }] }));
  const end = ({ path }: Move) => path.at(-1);

  it('a rush goes through its gap to where the passer throws from: 6.5 yd from the shotgun', () => {
    expect(end(only('rush B-right'))).toMatchObject({ x: 0, y: -6.5 });
    expect(only('rush B-right').gapAt).toBeGreaterThan(0.5);
  });

  it('under a snapper the passer drops five steps, 7 yd', () => {
    const moves = movesIn({ look: '21 pro I', men: [{ role: 'M', job: 'rush B-right' }] });
    expect(end(moveOf('M', moves))).toMatchObject({ x: 0, y: -7 });
  });

  it('contain ends outside the passer, on his side', () => {
    expect(end(only('contain C-right', [5, 1]))?.x).toBeGreaterThan(2);
    expect(end(only('contain C-left', [-5, 1]))?.x).toBeLessThan(-2);
  });

  it('only the outermost gap is round the edge', () => {
    expect(only('rush C-right', [5, 1]).edge).toBe(true);
    expect(only('rush B-right', [5, 1]).edge).toBe(false);
  });

  it('a slant steps flat first: he is beside where he stood before he is through', () => {
    const slant = only('rush A-right slant', [3, 1], 'RE');
    const straight = only('rush A-right', [3, 1], 'RE');
    const later = slant.starts + 0.5;
    expect(positionAt(slant, later).y).toBeGreaterThan(positionAt(straight, later).y);
    expect(slant.length).toBeGreaterThan(straight.length);
  });

  it('a loop goes back before it goes forward', () => {
    expect(Math.max(...only('rush A-right loop', [3, 1], 'RE').path.map(({ y }) => y))).toBeGreaterThan(1.2);
  });

  it('a man who fits a gap reads before he goes, and stops at the block', () => {
    const fit = only('fit B-right');
    expect(fit.errand).toBe('fit');
    expect(fit.starts).toBeGreaterThan(only('rush B-right').starts);
    expect(end(fit)?.y).toBeCloseTo(-0.3, 2);
    expect(fit.gapAt).toBeNull();
  });

  it('a drop to a place takes longer than a run of the same length', () => {
    const drop = only('drop hook-right');
    const run = only('rush B-right');
    expect(drop.pace.top).toBeLessThan(run.pace.top);
    expect(end(drop)).toMatchObject({ x: 4.2, y: 10 });
  });

  it('a man in cover comes up to the line at most, and waits for a back where he stands', () => {
    expect(end(only('man #1-right', [17, 7], 'RC'))?.y).toBeGreaterThanOrEqual(0.99);
    expect(only('man back').path).toHaveLength(1);
  });

  it('a spy waits at a linebacker’s depth before the passer', () => {
    expect(end(only('spy', [6, 11], 'SS'))?.y).toBeCloseTo(4, 2);
    expect(only('spy', [1, 3]).path).toHaveLength(1);
  });

  it('a two-gap nose goes straight ahead, into neither of his gaps', () => {
    const nose = moveOf('N', movesIn({ men: [] }));
    expect(nose.errand).toBe('rush');
    expect(end(nose)?.x).toBeCloseTo(0, 6);
    expect(nose.gapAt).toBeNull();
  });

  it('a job that points at a gap this look has not leaves him standing', () => {
    const analysis = analyse(call({ men: [{ role: 'M', job: 'rush A-right' }] }));
    const assignments = analysis.assignments.map((one) => {
      const { job } = one.combined;
      if (one.aligned.role.letter !== 'M' || job?.kind !== 'rush') return one;
      return {
        ...one,
        combined: { ...one.combined, job: { ...job, gaps: [{ side: 'right', letter: 'G' }] as const } },
      };
    });
    const move = moveOf('M', movesOf({ ...inputOf(analysis), assignments }));
    expect(move).toMatchObject({ errand: 'stand', length: 0, gapAt: null, toGap: null });
  });

  it('takes the get-off model it is given', () => {
    const analysis = analyse(call({ men: [{ role: 'M', job: 'rush A-right' }] }));
    const [own, other] = [undefined, SPEED_MODELS.professional].map((speeds) =>
      moveOf('M', movesOf({ ...inputOf(analysis), ...(speeds === undefined ? {} : { speeds }) })),
    );
    expect(own?.starts).toBe(0.3);
    expect(other?.starts).toBe(0.2);
    expect(other?.gapAt).toBeLessThan(own?.gapAt ?? 0);
  });
});

describe('positionAt', () => {
  const move = moveOf('M', movesIn({ men: [{ role: 'M', at: [2, 4.5], job: 'rush B-right' }] }));

  it('is where he stands until his first step, and where he ends for ever after', () => {
    expect(positionAt(move, -1)).toEqual({ x: 2, y: 4.5 });
    expect(positionAt(move, 0)).toEqual({ x: 2, y: 4.5 });
    expect(positionAt(move, move.starts)).toEqual({ x: 2, y: 4.5 });
    expect(positionAt(move, 99)).toEqual({ x: 0, y: -6.5 });
  });

  it('is every stamp at its time, and half of the way between two of them at half the time', () => {
    for (const { x, y, t } of move.path) expect(positionAt(move, t)).toEqual({ x, y });
    const [a, b] = move.path.slice(3, 5);
    if (a === undefined || b === undefined) throw new Error('too short');
    expect(positionAt(move, (a.t + b.t) / 2).y).toBeCloseTo((a.y + b.y) / 2, 9);
  });
});
