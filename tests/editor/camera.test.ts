import { describe, expect, it } from 'vitest';
import { MOST_ZOOM, shoved, viewportOf, zoomed, type Camera, type Sight } from '../../src/editor/camera.ts';
import { nearestLine } from '../../src/editor/snap.ts';
import { fitViewport, toYards } from '../../src/editor/viewport.ts';

const size = { width: 800, height: 512 };
const straight: Sight = { area: { left: -25, right: 25, top: -9, bottom: 14 }, size, turned: false };
const turned: Sight = { ...straight, turned: true };
const middle = { px: 400, py: 256 };

describe.each([
  ['not turned', straight],
  ['turned', turned],
])('the camera, board %s', (_words, sight) => {
  it('fits the area when there is none', () => {
    expect(viewportOf(sight, null)).toStrictEqual(fitViewport(sight.area, size, sight.turned));
  });

  it('keeps what is under the pointer while it comes closer and goes back', () => {
    const pixel = { px: 300, py: 200 };
    const before = toYards(viewportOf(sight, null), pixel);
    const closer = zoomed(sight, null, pixel, 3);
    const under = toYards(viewportOf(sight, closer), pixel);
    expect(under.x).toBeCloseTo(before.x, 9);
    expect(under.y).toBeCloseTo(before.y, 9);
    expect(zoomed(sight, closer, pixel, 1 / 3)).toBeNull();
  });

  it('shoves the field with the hand', () => {
    const closer = zoomed(sight, null, middle, 4);
    const before = toYards(viewportOf(sight, closer), middle);
    const after = toYards(viewportOf(sight, shoved(sight, closer, { px: 40, py: -20 })), { px: 440, py: 236 });
    expect(after.x).toBeCloseTo(before.x, 9);
    expect(after.y).toBeCloseTo(before.y, 9);
  });
});

describe('the limits of the camera', () => {
  it('goes no closer than eight times', () => {
    expect(zoomed(straight, zoomed(straight, null, middle, 100), middle, 2)).toMatchObject({ zoom: MOST_ZOOM });
  });

  it('never loses the field', () => {
    const far = shoved(straight, zoomed(straight, null, middle, 2), { px: 1e6, py: -1e6 });
    expect(far).toMatchObject({ middle: { x: -25, y: 14 } });
  });

  it('does not shove a field that fits', () => {
    const camera: Camera = null;
    expect(shoved(straight, camera, { px: 10, py: 10 })).toBeNull();
  });
});

describe('the nearest line', () => {
  const lines = [
    { axis: 'x', at: 1 },
    { axis: 'x', at: 2 },
    { axis: 'y', at: 1.4 },
  ] as const;
  it.each<[string, 'x' | 'y', number, number, number | null]>([
    ['draws from within reach', 'x', 1.2, 0.3, 1],
    ['not from farther', 'x', 1.4, 0.3, null],
    ['the nearer of two', 'x', 1.6, 1, 2],
    ['the first of two as near', 'x', 1.5, 1, 1],
    ['only of its axis', 'y', 1, 0.5, 1.4],
  ])('%s', (_words, axis, value, reach, at) => {
    expect(nearestLine(lines, axis, value, reach)?.at ?? null).toBe(at);
  });
});
