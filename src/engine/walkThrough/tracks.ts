import { distance, toward } from '../move/geometry/points.ts';
import { positionAt } from '../move/positionAt.ts';
import type { Pace } from '../move/speed.ts';
import type { Move, Stamp } from '../move/types.ts';
import { rounded, staying, walk } from '../move/walk.ts';
import type { Point, Yards } from '../types/index.ts';

/** How often a second it is asked whether a blocker can have met his rusher. */
const LOOKS = 20;

/** Two men who have met stand this far apart, middle to middle: two bodies of 2 ft, and arms (an estimate). */
export const AT_ARMS_LENGTH: Yards = 0.8;

/** A blocker sets and waits until the rusher is across the line (common practice, no source). */
const WAITS_UNTIL: Yards = -0.05;

/** Through some points without a stop. The offence knows the count, so `starts` is when he goes, without a reaction. */
export function through(points: readonly Point[], pace: Pace, starts = 0): readonly Stamp[] {
  const [start] = points;
  if (start === undefined) throw new Error('A track without points leads nowhere');
  if (points.length === 1) return staying(start).path;
  const way = { points, curved: false, gap: null, crossing: null, waitsAt: null };
  return walk(way, { starts, pace, stretch: 1 }).path;
}

/** When a man is at the end of his path. */
export function endOf(path: readonly Stamp[]): number {
  return path.at(-1)?.t ?? 0;
}

/** The path as far as he is at some time; he stays there. */
export function cutAt(path: readonly Stamp[], t: number): readonly Stamp[] {
  if (endOf(path) <= t) return path;
  const { x, y } = positionAt({ path }, t);
  return [...path.filter((stamp) => stamp.t < t), { x: rounded(x), y: rounded(y), t }];
}

/** The path as far as arm's length from somebody, whom nobody runs into. */
export function shortOf(path: readonly Stamp[], whom: Point): readonly Stamp[] {
  const near = path.find((stamp) => distance(stamp, whom) < AT_ARMS_LENGTH);
  const end = path.at(-1);
  if (near === undefined || end === undefined) return path;
  const before = path.filter(({ t }) => t < near.t);
  const from = before.at(-1);
  if (from === undefined) return path;
  const { x, y } = toward(whom, from, AT_ARMS_LENGTH);
  return [...before, { x: rounded(x), y: rounded(y), t: near.t }];
}

/** A blocker and his rusher where they meet. */
export interface Meeting {
  readonly t: number;
  readonly rusher: Point;
  readonly blocker: Point;
}

/**
 * Where a blocker first can meet a rusher who comes at him: past the line, and no sooner than he can be there. Null:
 * he never gets to him.
 */
export function meetingOf(move: Move, from: Point, reach: (t: number) => Yards): Meeting | null {
  const last = Math.ceil(endOf(move.path) * LOOKS);
  for (let look = Math.ceil(move.starts * LOOKS); look <= last; look += 1) {
    const t = rounded(look / LOOKS);
    const at = positionAt(move, t);
    const far = distance(at, from);
    if (at.y > WAITS_UNTIL || far - AT_ARMS_LENGTH > reach(t)) continue;
    const rusher = { x: rounded(at.x), y: rounded(at.y) };
    return { t, rusher, blocker: far <= AT_ARMS_LENGTH ? from : toward(rusher, from, AT_ARMS_LENGTH) };
  }
  return null;
}
