import type { Point } from '../../engine/index.ts';

/** Spots are kept to a twentieth of a yard: finer than anybody can stand, and short in a file. */
const STEPS_A_YARD = 20;

/** A point as it is kept, in yards. */
export function keptPoint(point: Point): Point {
  return { x: keptYards(point.x), y: keptYards(point.y) };
}

function keptYards(value: number): number {
  // Adding zero turns -0 into 0: the two are written alike.
  return Math.round(value * STEPS_A_YARD) / STEPS_A_YARD + 0;
}
