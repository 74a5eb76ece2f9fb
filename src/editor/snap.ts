import type { Point, Yards } from '../engine/index.ts';

/** Where a man comes to stand, and what drew him there. */
export interface Snapped {
  readonly at: Point;
  /** The line across the field's width that drew him, and the one along it; null: none. */
  readonly lineX: Yards | null;
  readonly lineY: Yards | null;
  /** What a coach calls that spot; empty when nothing drew him. */
  readonly name: string;
}

/** A man who stands wherever he is put. */
export function unsnapped(at: Point): Snapped {
  return { at, lineX: null, lineY: null, name: '' };
}

/** A line that draws a man to itself when he comes near. */
export interface SnapLine {
  /** `x`: a line along the field, at that x; `y`: across it, at that y. */
  readonly axis: 'x' | 'y';
  readonly at: Yards;
}

/** The nearest of the lines of that axis within reach; of two as near, the one listed first. */
export function nearestLine<Line extends SnapLine>(
  lines: readonly Line[],
  axis: SnapLine['axis'],
  value: Yards,
  reach: Yards,
): Line | null {
  let best: Line | null = null;
  let away = reach;
  for (const line of lines) {
    if (line.axis !== axis) continue;
    const far = Math.abs(line.at - value);
    // A hair's breadth decides nothing: sums of yards are not exact.
    if (best === null ? far <= away : far < away - 1e-9) {
      best = line;
      away = far;
    }
  }
  return best;
}
