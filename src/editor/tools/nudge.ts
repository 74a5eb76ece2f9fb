import type { Point, Yards } from '../../engine/index.ts';

/** Steps of the arrow keys. */
export const NUDGE: Yards = 0.25;
export const BIG_NUDGE: Yards = 1;

/**
 * Where an arrow key puts a man. Arrows go by the picture: on a turned board "left" is the defence's right.
 * Null for any other key.
 */
export function nudge(from: Point, key: string, big: boolean, turned: boolean): Point | null {
  const step = (big ? BIG_NUDGE : NUDGE) * (turned ? -1 : 1);
  switch (key) {
    case 'ArrowLeft':
      return { x: from.x - step, y: from.y };
    case 'ArrowRight':
      return { x: from.x + step, y: from.y };
    case 'ArrowUp':
      return { x: from.x, y: from.y - step };
    case 'ArrowDown':
      return { x: from.x, y: from.y + step };
    default:
      return null;
  }
}
