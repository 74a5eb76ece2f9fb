import type { Point } from '../types/index.ts';
import { between } from './geometry/points.ts';
import type { Stamp } from './types.ts';

/** Where a man is `t` seconds after the snap: where he stands before it, where his path ends after it. */
export function positionAt({ path }: { readonly path: readonly Stamp[] }, t: number): Point {
  const next = path.findIndex((stamp) => stamp.t >= t);
  const to = path[next] ?? path.at(-1);
  const from = path[Math.max(0, next - 1)];
  if (to === undefined || from === undefined) throw new Error('A move without a path is nowhere');
  if (next <= 0 || to.t === t) return { x: to.x, y: to.y };
  return between(from, to, (t - from.t) / (to.t - from.t));
}
