import { remembered } from '../../base/index.ts';
import type { Point, RoleId, Yards } from '../types/index.ts';
import { between } from './geometry/points.ts';
import type { Errand, Move } from './types.ts';
import { rounded } from './walk.ts';

/** Two men are at one place when less than this is between their middles: with 2 ft bodies their shoulders touch. */
export const MEET_WITHIN: Yards = 0.6;

/** And at one time within this many seconds: a stride. An estimate. */
export const MEET_WITHIN_SECONDS = 0.25;

/** Further past the line than this all rushers close on the passer; that their paths come together there is what they should. */
const PAST_THE_LINE: Yards = -1.5;

/** Looks a second at where two men are, and how many of them make one time. */
const LOOKS = 20;
const LOOKS_AT_ONCE = MEET_WITHIN_SECONDS * LOOKS;

/** Two paths that meet: where, and when, in seconds after the snap. */
export interface Crossing {
  readonly a: RoleId;
  readonly b: RoleId;
  readonly at: Point;
  readonly t: number;
}

/** Everybody who covers or waits; two of them give each other room. */
const IN_COVER: readonly Errand[] = ['drop', 'man', 'spy', 'stand'];

/**
 * Every two men whose paths are at one place at one time while both are moving, at most one of them in cover. By role, each
 * pair once, at its first meeting. An estimate, as the moves are.
 */
export function crossings(moves: readonly Move[]): readonly Crossing[] {
  const traces = moves.map((move) => traceOf(move)).sort(byRole);
  const found: Crossing[] = [];
  traces.forEach((first, index) => {
    for (let other = index + 1; other < traces.length; other += 1) {
      const second = traces[other];
      const met = second === undefined ? null : firstMeeting(first, second);
      if (met !== null && second !== undefined) found.push({ a: first.move.role, b: second.move.role, ...met });
    }
  });
  return found;
}

function byRole(a: Trace, b: Trace): number {
  return a.move.role < b.move.role ? -1 : 1;
}

/** Where a man is at every look from his first step on, as long as he is not far past the line; and the box about it. */
export interface Trace {
  readonly move: Move;
  /** The number of the first look. */
  readonly from: number;
  /** Across and deep by turns: thousands of traces are kept, and pairs of numbers would take a lot of room. */
  readonly places: Float64Array;
  readonly low: Point;
  readonly high: Point;
}

/** Traces a move, so that it can be held against many others without being traced again. */
export const traceOf = remembered(traceOnce);

function traceOnce(move: Move): Trace {
  const from = Math.ceil(move.starts * LOOKS - 1e-9);
  const places = Float64Array.from(placesFrom(move, from));
  const low = { x: Infinity, y: Infinity };
  const high = { x: -Infinity, y: -Infinity };
  for (let at = 0; at < places.length; at += 2) {
    const [x = 0, y = 0] = [places[at], places[at + 1]];
    low.x = Math.min(low.x, x);
    low.y = Math.min(low.y, y);
    high.x = Math.max(high.x, x);
    high.y = Math.max(high.y, y);
  }
  return { move, from, places, low, high };
}

/** Across and deep by turns at every look from that one on. */
function placesFrom({ path }: Move, from: number): readonly number[] {
  const places: number[] = [];
  let look = from;
  let before = path[0];
  for (const stamp of path) {
    for (; before !== undefined && look <= stamp.t * LOOKS; look += 1) {
      const at =
        stamp.t === before.t ? stamp : between(before, stamp, (look / LOOKS - before.t) / (stamp.t - before.t));
      if (at.y < PAST_THE_LINE) return places;
      places.push(at.x, at.y);
    }
    before = stamp;
  }
  return places;
}

/** Where and when two men first meet; null when they do not. */
export function firstMeeting(a: Trace, b: Trace): Omit<Crossing, 'a' | 'b'> | null {
  if (IN_COVER.includes(a.move.errand) && IN_COVER.includes(b.move.errand)) return null;
  return mayMeet(a, b) ? meetingOf(a, b) : null;
}

type Meeting = Omit<Crossing, 'a' | 'b'> | null;

/** Whom a trace has been held against: the same two come near each other in many calls. */
const meetingsOf = remembered((_trace: Trace): Map<Trace, Meeting> => new Map());

function meetingOf(a: Trace, b: Trace): Meeting {
  const meetings = meetingsOf(a);
  let met = meetings.get(b);
  if (met === undefined) meetings.set(b, (met = meetOnce(a, b)));
  return met;
}

function meetOnce(a: Trace, b: Trace): Meeting {
  for (let index = 0; index < a.places.length / 2; index += 1) {
    const [x = 0, y = 0] = [a.places[2 * index], a.places[2 * index + 1]];
    const look = a.from + index;
    const last = Math.min(b.places.length / 2 - 1, look + LOOKS_AT_ONCE - b.from);
    for (let near = Math.max(0, look - LOOKS_AT_ONCE - b.from); near <= last; near += 1) {
      const [otherX = 0, otherY = 0] = [b.places[2 * near], b.places[2 * near + 1]];
      // By squares: this is asked thousands of times for one picture, and a root is dear.
      const [across, deep] = [otherX - x, otherY - y];
      if (across * across + deep * deep >= MEET_WITHIN * MEET_WITHIN) continue;
      const at = between({ x, y }, { x: otherX, y: otherY }, 0.5);
      return { at: { x: rounded(at.x), y: rounded(at.y) }, t: rounded((look + b.from + near) / 2 / LOOKS) };
    }
  }
  return null;
}

/** Whether the boxes about two traces come near each other: most do not. */
function mayMeet(a: Trace, b: Trace): boolean {
  return (
    a.low.x - b.high.x < MEET_WITHIN &&
    b.low.x - a.high.x < MEET_WITHIN &&
    a.low.y - b.high.y < MEET_WITHIN &&
    b.low.y - a.high.y < MEET_WITHIN
  );
}
