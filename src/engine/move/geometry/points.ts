import type { Point, Yards } from '../../types/index.ts';

/** Straight distance. */
export function distance(a: Point, b: Point): Yards {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** The point `by` yards from `from` on the straight way to `to`; `from` itself when both are one place. */
export function toward(from: Point, to: Point, by: Yards): Point {
  const length = distance(from, to);
  return length === 0
    ? { x: from.x, y: from.y }
    : { x: from.x + ((to.x - from.x) / length) * by, y: from.y + ((to.y - from.y) / length) * by };
}

/** The point at that share of the way between two others. */
export function between(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** The value, or the bound it is beyond. */
export function clamp(low: number, value: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
