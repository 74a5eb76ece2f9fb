import { distance, type Point, type Yards } from '../../engine/index.ts';
import { distanceToPath } from '../geometry.ts';

/** What a small mark must keep clear of: lines, and round things with their radius. */
export interface Obstacles {
  readonly paths: readonly (readonly Point[])[];
  readonly discs: readonly { readonly at: Point; readonly radius: Yards }[];
}

/** More room than this about a mark is no better. */
const ENOUGH: Yards = 0.9;

/** Where along a mark the room is measured: the two ends, the middle, and between. */
const SHARES = [-1, -0.5, 0, 0.5, 1] as const;

/**
 * Of some places for a mark `halfWidth` to each side, the one with the most room, in steps of a third of a yard so that equally
 * good ones stay in order; null when there are none.
 */
export function freestPlace(places: readonly Point[], halfWidth: Yards, { paths, discs }: Obstacles): Point | null {
  const rooms = places.map((place) => {
    const across = SHARES.map((share) => ({ x: place.x + share * halfWidth, y: place.y }));
    const free = Math.min(
      Infinity,
      ...across.flatMap((point) => [
        ...discs.map(({ at, radius }) => distance(at, point) - radius),
        ...paths.map((points) => distanceToPath(point, points)),
      ]),
    );
    return Math.round(Math.min(ENOUGH, free) * 3);
  });
  return places[rooms.indexOf(Math.max(...rooms))] ?? null;
}
