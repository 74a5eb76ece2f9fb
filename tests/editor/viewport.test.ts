import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asRoleId } from '../../src/engine/index.ts';
import { HIT_RADIUS, manAt } from '../../src/editor/hit.ts';
import { fitViewport, toPixels, toYards, type Area, type Viewport } from '../../src/editor/viewport.ts';
import type { Man, Standing } from '../../src/store/index.ts';

const SEED = 20260904;
const box: Area = { left: -9, right: 9, top: -8, bottom: 8 };
const size = { width: 800, height: 512 };
const yards = fc.double({ min: -60, max: 60, noNaN: true });

describe('the viewport', () => {
  it('shows the whole area, as large as it fits', () => {
    const viewport = fitViewport(box, size, false, 0);
    expect(viewport.scale).toBeCloseTo(512 / 16);
    expect(toPixels(viewport, { x: 0, y: -8 })).toStrictEqual({ px: 400, py: 0 });
    expect(toPixels(viewport, { x: 0, y: 8 })).toStrictEqual({ px: 400, py: 512 });
  });

  it("puts the defence's right on the right of the picture, and on the left when the board is turned", () => {
    const straight = toPixels(fitViewport(box, size, false), { x: 3, y: 4 });
    const turned = toPixels(fitViewport(box, size, true), { x: 3, y: 4 });
    expect(straight.px).toBeGreaterThan(400);
    expect(straight.py).toBeGreaterThan(256);
    expect(turned.px).toBeLessThan(400);
    expect(turned.py).toBeLessThan(256);
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(yards, yards, fc.boolean(), (x, y, turned) => {
        const viewport = fitViewport(box, size, turned);
        const back = toYards(viewport, toPixels(viewport, { x, y }));
        expect(back.x).toBeCloseTo(x, 9);
        expect(back.y).toBeCloseTo(y, 9);
        expect(Object.is(back.x, -0) || Object.is(back.y, -0)).toBe(false);
      }),
      { seed: SEED },
    );
  });

  it('survives a drawing of no size', () => {
    expect(fitViewport(box, { width: 0, height: 0 }, false).scale).toBeGreaterThan(0);
  });
});

describe('who is under the pointer', () => {
  const man = (id: string): Man => ({ kind: 'defender', role: asRoleId(id) });
  const men: readonly Standing[] = [
    { man: man('N'), at: { x: 0, y: 0 } },
    { man: man('E'), at: { x: 1, y: 0 } },
  ];
  const viewport: Viewport = { scale: 10, ball: { px: 100, py: 100 }, turned: false };

  it.each([
    ['the nearest of two', 104, 100, HIT_RADIUS.fine, 'N'],
    ['the other one beyond the middle', 106, 100, HIT_RADIUS.fine, 'E'],
    ['up to 12 pixels away with a mouse', 88, 100, HIT_RADIUS.fine, 'N'],
    ['nobody beyond', 87, 100, HIT_RADIUS.fine, null],
    ['up to 22 pixels away with a finger', 78, 100, HIT_RADIUS.coarse, 'N'],
    ['nobody beyond that', 77, 100, HIT_RADIUS.coarse, null],
  ])('%s', (_words, px, py, radius, id) => {
    expect(manAt(men, { px, py }, viewport, radius)).toStrictEqual(id === null ? null : man(id));
  });

  it('is the whole mark when the picture is large', () => {
    const close = { ...viewport, scale: 60 };
    expect(manAt(men, { px: 100, py: 133 }, close, HIT_RADIUS.fine)).toStrictEqual(man('N'));
  });
});
