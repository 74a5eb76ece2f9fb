import { bitsOfPiece } from './geometry/curve.ts';
import type { Way } from './geometry/ground.ts';
import { between, distance } from './geometry/points.ts';
import type { Point, Yards } from '../types/index.ts';
import { runIn, timeToRun, type Pace } from './speed.ts';
import type { Move, Stamp } from './types.ts';

/** Seconds between two stamps of a path. */
const STEP = 0.1;

/** A place on a way: how far along it lies, and whether it is one of its corners. */
interface Mark {
  readonly at: Point;
  readonly along: Yards;
  readonly corner: number | null;
}

/** When a man sets out and how he runs. `stretch` is how much longer the way he really runs is than the one drawn. */
export interface Run {
  readonly starts: number;
  readonly pace: Pace;
  readonly stretch: number;
}

/** What a way becomes once it is timed. */
export type Walked = Pick<Move, 'path' | 'length' | 'gapAt' | 'toGap'>;

/** A man who stays where he is. */
export function staying(at: Point): Walked {
  return { path: [{ x: at.x, y: at.y, t: 0 }], length: 0, gapAt: null, toGap: null };
}

/** A way with its times. */
export function walk(way: Way, run: Run): Walked {
  const marks = marksOf(way);
  const [start] = marks;
  const last = marks.at(-1);
  if (start === undefined || last === undefined) throw new Error('A way without points leads nowhere');
  if (last.along === 0) return staying(start.at);
  const crossing = marks.find(({ corner }) => corner !== null && corner === way.crossing);
  return {
    path: stampsOf(way, marks, run),
    length: rounded(last.along),
    gapAt: crossing === undefined ? null : timeAt(run, crossing.along),
    toGap: crossing === undefined ? null : rounded(crossing.along),
  };
}

/** When he is so far along. */
function timeAt({ starts, pace, stretch }: Run, along: Yards): number {
  return rounded(starts + timeToRun(pace, along * stretch));
}

/** Where he is at the snap, at his first step, at every corner, at his end, and ten times a second between them. */
function stampsOf(way: Way, marks: readonly Mark[], run: Run): readonly Stamp[] {
  const { starts, pace, stretch } = run;
  const stamps: Stamp[] = [];
  const stamp = (t: number, { x, y }: Point): void => {
    if (t > (stamps.at(-1)?.t ?? -1)) stamps.push({ x, y, t });
    else stamps.splice(-1, 1, { x, y, t });
  };
  const [from, ...rest] = marks;
  if (from === undefined) return [];
  stamp(0, from.at);
  stamp(rounded(starts), from.at);
  let before = from;
  let next = starts + STEP;
  for (const mark of rest) {
    // The corners of a curve are not places where he turns; where he crosses the line is asked for.
    const turns = mark.corner !== null && (!way.curved || mark.corner === way.crossing);
    const last = mark === rest.at(-1);
    const until = turns || last ? timeAt(run, mark.along) : null;
    for (; until === null || rounded(next) < until; next += STEP) {
      const along = runIn(pace, next - starts) / stretch;
      if (along > mark.along) break;
      const share = mark.along === before.along ? 1 : (along - before.along) / (mark.along - before.along);
      stamp(rounded(next), roundedPoint(between(before.at, mark.at, share)));
    }
    if (until !== null) stamp(until, roundedPoint(mark.at));
    before = mark;
  }
  return stamps;
}

/** Length of a way, up to where he waits. */
export function lengthOf(way: Way): Yards {
  return marksOf(way).at(-1)?.along ?? 0;
}

/** The way in straight bits, cut where he waits. */
function marksOf({ points, curved, waitsAt }: Way): readonly Mark[] {
  const [start] = points;
  if (start === undefined) return [];
  const marks: Mark[] = [{ at: start, along: 0, corner: 0 }];
  let before = start;
  let along = 0;
  for (let index = 0; index + 1 < points.length; index += 1) {
    const bits = bitsOfPiece(points, index, curved);
    for (const [bit, to] of bits.entries()) {
      const stops = waitsAt !== null && to.y < waitsAt;
      const at = stops ? cut(before, to, waitsAt) : to;
      along += distance(before, at);
      marks.push({ at, along, corner: stops || bit === bits.length - 1 ? index + 1 : null });
      if (stops) return marks;
      before = to;
    }
  }
  return marks;
}

/** Where a bit reaches that depth; its start if that is beyond it already. */
function cut(from: Point, to: Point, depth: Yards): Point {
  return from.y <= depth ? from : between(from, to, (from.y - depth) / (from.y - to.y));
}

/** To a thousandth, the same to both sides of zero: machines may differ in the last digits of a power of e. */
export function rounded(value: number): number {
  const size = Math.round(Math.abs(value) * 1000) / 1000;
  return value < 0 && size > 0 ? -size : size;
}

function roundedPoint({ x, y }: Point): Point {
  return { x: rounded(x), y: rounded(y) };
}
