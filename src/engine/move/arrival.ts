import type { Point, Yards } from '../types/index.ts';
import { distance } from './geometry/points.ts';
import { EDGE_ARC } from './moves.ts';
import { positionAt } from './positionAt.ts';
import { timeToRun } from './speed.ts';
import type { Move } from './types.ts';
import { rounded } from './walk.ts';

/**
 * Seconds after the snap when a rusher whom nobody blocks is at the passer, who throws from `passerAt` (yards from the ball):
 * through his gap, then straight; round the edge never by the shortest way. Null for a man who does not rush. An estimate: a
 * blocked rusher takes about 0.7 to 1.5 s more (from memory).
 */
export function arrival(move: Move, passerAt: Point): number | null {
  if (move.errand !== 'rush' && move.errand !== 'contain') return null;
  const [start] = move.path;
  const turns = move.gapAt === null ? move.path.at(-1) : positionAt(move, move.gapAt);
  if (start === undefined || turns === undefined) throw new Error('A move without a path is nowhere');
  const through = (move.toGap ?? move.length) + distance(turns, passerAt);
  const yards = move.edge ? Math.max(through, EDGE_ARC * distance(start, passerAt)) : through;
  return runTime(move, yards);
}

/** Seconds after the snap when a man who runs so far, from his first step on, is there. */
export function runTime({ starts, pace }: Move, yards: Yards): number {
  return rounded(starts + timeToRun(pace, yards));
}
