import type { Point, Yards } from '../../engine/index.ts';

/** The sum of two points, both in yards. */
export function plus(a: Point, b: Point): Point {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The way from the second point to the first. */
export function minus(a: Point, b: Point): Point {
  return { x: a.x - b.x, y: a.y - b.y };
}

/** How far two points are apart. */
export function distance(a: Point, b: Point): Yards {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
