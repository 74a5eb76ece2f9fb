import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fieldAt, PLACES, ZONES, type Place, type Zone } from '../../src/engine/index.ts';
import { buildScene, WHOLE_PICTURE, type EllipseShape, type Scene } from '../../src/scene/index.ts';
import { board, drop, type Man } from './board.ts';

const zonesOf = ({ shapes }: Scene): readonly EllipseShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'ellipse' && shape.layer === 'zone' ? [shape] : []));
const overlap = (a: EllipseShape, b: EllipseShape): boolean =>
  Math.abs(a.at.x - b.at.x) < a.rx + b.rx && Math.abs(a.at.y - b.at.y) < a.ry + b.ry;

const dropper = (zone: Zone, side: Place, x: number, y: number): Man => ({
  letter: 'D',
  room: 'secondary',
  x,
  y,
  job: drop(zone, side),
});

/** Three deep and three under, told both ways round, as shells commonly are (common practice, no source). */
const THREE_DEEP: readonly Man[] = [
  dropper('third', 'left', -15, 7),
  dropper('middle', 'middle', 3, 12),
  dropper('third', 'right', 15, 7),
  dropper('seam', 'left', -6, 4),
  dropper('hook', 'middle', 0, 4.5),
  dropper('seam', 'right', 7, 10),
];
const FOUR_DEEP: readonly Man[] = [
  dropper('quarter', 'left', -15, 7),
  dropper('quarter', 'left', -5, 11),
  dropper('quarter', 'right', 5, 11),
  dropper('quarter', 'right', 15, 7),
  dropper('hook', 'left', -2, 1),
  dropper('hole', 'middle', 1, 4.5),
  dropper('hook', 'right', 2, 1),
];

describe('zones', () => {
  it.each(ZONES)('a %s zone has a ring with its name', (zone) => {
    const { shapes } = buildScene(board([dropper(zone, 'left', -6, 5)]), WHOLE_PICTURE);
    const names = shapes.flatMap((shape) =>
      shape.kind === 'label' && shape.key.includes('/zone/') ? [shape.text] : [],
    );
    expect(names).toHaveLength(1);
    expect(names[0]).toMatch(/^(deep )?(seam|hook|hole|curl-flat|flat|hot|middle|third|half|quarter)$/);
  });

  it.each(['seam', 'hook', 'curl-flat', 'flat', 'hot', 'third', 'half', 'quarter'] as const)(
    'left is left, right is right: %s',
    (zone) => {
      const [left] = zonesOf(buildScene(board([dropper(zone, 'left', -6, 5)]), WHOLE_PICTURE));
      const [right] = zonesOf(buildScene(board([dropper(zone, 'right', 6, 5)]), WHOLE_PICTURE));
      expect(left?.at.x).toBeLessThan(0);
      expect(right?.at.x).toBeCloseTo(-(left?.at.x ?? 0), 6);
    },
  );

  it('the outer man of two in quarters has the outer quarter', () => {
    const rings = zonesOf(buildScene(board(FOUR_DEEP.slice(0, 2)), WHOLE_PICTURE));
    const corner = rings.find((ring) => ring.key.startsWith('job/D-0'));
    const safety = rings.find((ring) => ring.key.startsWith('job/D-1'));
    expect(corner?.at.x).toBeLessThan(safety?.at.x ?? -99);
  });

  it('deep zones divide the width of the field, wherever the ball lies', () => {
    for (const spot of PLACES) {
      const field = fieldAt('high-school', spot);
      const rings = zonesOf(buildScene(board(THREE_DEEP, { spot }), WHOLE_PICTURE));
      const deep = rings
        .filter((ring) => ring.at.y > 13)
        .map((ring) => ring.at.x)
        .toSorted((a, b) => a - b);
      const width = field.rightSideline - field.leftSideline;
      expect(deep).toHaveLength(3);
      deep.forEach((x, index) => {
        expect(x).toBeCloseTo(field.leftSideline + ((index + 0.5) * width) / 3, 6);
      });
    }
  });

  it.each([
    ['three deep', THREE_DEEP],
    ['four deep', FOUR_DEEP],
  ])('no two rings of %s cover each other, and none leaves the field', (_name, men) => {
    for (const spot of PLACES) {
      const field = fieldAt('high-school', spot);
      const rings = zonesOf(buildScene(board(men, { spot }), WHOLE_PICTURE));
      expect(rings).toHaveLength(men.length);
      for (const ring of rings) {
        expect(ring.at.x - ring.rx).toBeGreaterThan(field.leftSideline);
        expect(ring.at.x + ring.rx).toBeLessThan(field.rightSideline);
        expect(rings.filter((other) => overlap(ring, other))).toEqual([ring]);
      }
    }
  });

  it('holds for any eight drops from anywhere: rings apart, inside the field, over nobody', () => {
    const man = fc
      .tuple(
        fc.constantFrom(...ZONES),
        fc.constantFrom(...PLACES),
        fc.integer({ min: -15, max: 15 }),
        fc.integer({ min: 1, max: 14 }),
      )
      .map(([zone, side, x, y]) => dropper(zone, side, x, y));
    fc.assert(
      fc.property(fc.array(man, { maxLength: 8 }), fc.constantFrom(...PLACES), (men, spot) => {
        const rings = zonesOf(buildScene(board(men, { spot }), WHOLE_PICTURE));
        const field = fieldAt('high-school', spot);
        for (const ring of rings) {
          expect(rings.filter((other) => overlap(ring, other))).toEqual([ring]);
          expect(ring.at.x - ring.rx).toBeGreaterThan(field.leftSideline);
          expect(ring.at.x + ring.rx).toBeLessThan(field.rightSideline);
          for (const one of men) {
            expect(Math.hypot((one.x - ring.at.x) / ring.rx, (one.y - ring.at.y) / ring.ry)).toBeGreaterThan(1);
          }
        }
      }),
      { numRuns: 60, seed: 20261125 },
    );
  });
});
