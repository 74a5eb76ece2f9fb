import { assertNever } from '../../../base/index.ts';
import type { Job, Point, Yards } from '../../types/index.ts';
import type { Passing } from '../../vocabulary.ts';
import { clamp } from './points.ts';

/** A job that goes through a gap toward the passer. */
export type RushLike = Extract<Job, { kind: 'rush' | 'contain' }>;

/**
 * The bends of a rush between where a man stands and where he crosses the line (`x`): by his track past a neighbour, or else
 * by his manner. None for a straight rush. The shapes follow what the words mean (slant: a flat step, then up; loop: round
 * the man beside him; penetrate: straight); their few tenths of a yard are a drawing's choice.
 */
export function bendsOf(job: RushLike, start: Point, x: Yards, neighbour: Point | null): readonly Point[] {
  if (job.track.kind === 'past' && neighbour !== null) return [pastNeighbour(neighbour, start, x, job.track.how)];
  const side = Math.sign(x - start.x);
  const far = Math.abs(x - start.x);
  switch (job.manner) {
    case 'slant':
      return far < 0.5 ? [] : [slantStep(start, x, side)];
    case 'loop':
      return loopBends(start, x, side, far);
    case 'penetrate':
    case 'two-gap':
    case 'read':
      // From far outside he first comes in along the line; a curve straight to the gap would swing past it.
      return far > 3 ? [{ x: x - side * 1.4, y: 0.7 }] : [];
    default:
      return assertNever(job.manner);
  }
}

/** A flat first step, then up the gap; from depth he comes down to the line first. */
function slantStep(start: Point, x: Yards, side: number): Point {
  return { x: x - side * 0.3, y: start.y > 2 ? 1.2 : Math.max(0.45, start.y - 0.3) };
}

/** Off the ball and round whoever stands between; a short loop just steps out and up. */
function loopBends(start: Point, x: Yards, side: number, far: Yards): readonly Point[] {
  if (far < 1.1) return [{ x: x + side * 0.25, y: start.y + 0.1 }];
  const last = { x: x - side * 0.1, y: start.y + 0.35 };
  return far < 1.8 ? [last] : [{ x: start.x + side * far * 0.5, y: start.y + 0.75 }, last];
}

/** Where he passes his neighbour: between him and the ball, behind him, or off one of his hips. */
function pastNeighbour(neighbour: Point, start: Point, x: Yards, how: Passing): Point {
  const outward = neighbour.x === 0 ? Math.sign(start.x - x) || Math.sign(x) : Math.sign(neighbour.x);
  // When the neighbour has left his place for the far side of the gap, the bend need not go all the way to it.
  const beside = clamp(Math.min(start.x, x), neighbour.x, Math.max(start.x, x));
  switch (how) {
    case 'under':
      // Before a neighbour who comes from depth he need not go up to him.
      return { x: beside, y: Math.min(neighbour.y - 0.78, start.y + 0.8) };
    case 'over':
      return { x: beside === neighbour.x ? beside + Math.sign(x - start.x) * 0.35 : beside, y: neighbour.y + 0.95 };
    case 'inside-hip':
      return { x: neighbour.x - outward * 0.85, y: neighbour.y + 0.3 };
    case 'outside-hip':
      return { x: neighbour.x + outward * 0.85, y: neighbour.y + 0.3 };
    default:
      return assertNever(how);
  }
}
