import { assertNever, gather } from '../../../base/index.ts';
import { signOf } from '../../facts/surface.ts';
import type { Gap, Point, Yards } from '../../types/index.ts';
import { bendsOf, type RushLike } from './bends.ts';
import type { Ground, Runner, Way } from './ground.ts';
import type { Lanes } from './lanes.ts';
import { clamp, distance, toward } from './points.ts';
import { landmarkOf, quarterRank } from './zones.ts';

/** Where a path crosses the line, and where a man who fits a gap or plays two meets the block: just past the ball. */
const AT_THE_LINE: Yards = -0.05;
const FIT_DEPTH: Yards = -0.3;
const TWO_GAP_DEPTH: Yards = -0.45;

/** A man who comes round somebody, or contains, runs this far past the line before he turns to the passer. */
const UPFIELD: Yards = -1.6;

/** How far outside the passer he aims, and how much of his own width he keeps. Common practice, no source for the yards. */
const OUTSIDE: Yards = 2.4;
const KEPT_WIDTH = 0.8;
const WIDER: Yards = 0.5;

/** Two men of 2 ft bodies shoulder to shoulder; nobody runs into the man he covers. */
const TOUCHING: Yards = 0.67;

/**
 * In cover he waits a yard off the ball for a receiver who comes out, and where he stands for a man as deep as a back; a spy
 * waits at a linebacker's depth, 4 to 5 yd. Common practice, no source.
 */
const COVER_WAITS: Yards = 1;
const BACK_DEPTH: Yards = -2.5;
const SPY_WAITS: Yards = 4;

/** Where a rush ends when nobody in this look passes: a shotgun passer's place. */
const NO_PASSER: Point = { x: 0, y: -5 };

/** How the ways of one picture know of each other. */
export interface Together<R extends Runner> {
  readonly runners: readonly R[];
  readonly lanes: Lanes<R>;
}

/**
 * Where a job takes a man: one way, or one for each gap of a man who fits two or plays two gaps. None for a job that points at
 * a gap, a receiver or a passer who is not in this look.
 */
export function waysOf<R extends Runner>(ground: Ground, { runners, lanes }: Together<R>, runner: R): readonly Way[] {
  const { aligned, job } = runner;
  const start: Point = { x: aligned.x, y: aligned.y };
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return job.manner === 'two-gap'
        ? intoGaps(ground, start, job.gaps, TWO_GAP_DEPTH, () => 0)
        : rushWay(ground, start, job, (gap) => lanes(runner, gap));
    case 'fit':
      return job.manner === 'two-gap'
        ? intoGaps(ground, start, job.gaps, TWO_GAP_DEPTH, () => 0)
        : intoGaps(ground, start, job.gaps, FIT_DEPTH, (gap) => lanes(runner, gap));
    case 'drop':
      return [straight(start, landmarkOf(ground.field, start, job, quarterRank(runners, runner)), null)];
    case 'man': {
      const whom = ground.playerAt(job.receiver);
      return upTo(ground, start, whom, whom !== null && whom.y <= BACK_DEPTH ? start.y : COVER_WAITS);
    }
    case 'spy':
      return upTo(ground, start, ground.passer, SPY_WAITS);
    default:
      return assertNever(job);
  }
}

function straight(start: Point, end: Point, waitsAt: Yards | null): Way {
  return { points: [start, end], curved: false, gap: null, crossing: null, waitsAt };
}

/** To somebody, short of running into him, and not off the field. */
function upTo({ field }: Ground, start: Point, whom: Point | null, waitsAt: Yards): readonly Way[] {
  if (whom === null) return [];
  const { x, y } = toward(whom, start, Math.min(TOUCHING, distance(start, whom)));
  return [straight(start, { x: clamp(field.leftSideline, x, field.rightSideline), y }, waitsAt)];
}

/** Straight into each of some gaps, and no further than the block. */
function intoGaps(
  ground: Ground,
  start: Point,
  gaps: readonly Gap[],
  depth: Yards,
  lane: (gap: Gap) => Yards,
): readonly Way[] {
  return gather(gaps, (gap): readonly Way[] => {
    const x = ground.gapX(gap);
    if (x === null) return [];
    return [{ points: [start, { x: x + lane(gap), y: depth }], curved: false, gap, crossing: null, waitsAt: null }];
  });
}

/**
 * Through his gap by his manner or track, then to the passer, or to the outside of him for contain. A man sent to no gap in
 * particular goes straight ahead.
 */
function rushWay(ground: Ground, start: Point, job: RushLike, lane: (gap: Gap) => Yards): readonly Way[] {
  const [gap] = job.gaps;
  const middle = gap === undefined ? start.x : ground.gapX(gap);
  if (middle === null) return [];
  const x = middle + (gap === undefined ? 0 : lane(gap));
  const neighbour = job.track.kind === 'past' ? ground.manAt(job.track.neighbour) : null;
  const lead = [start, ...bendsOf(job, start, x, neighbour)];
  const passer = ground.passer ?? NO_PASSER;
  const curved = job.manner === 'loop' || job.track.kind === 'past' || job.kind === 'contain';
  const end = job.kind === 'rush' ? passer : outsideOf(passer, x, gap);
  return [
    {
      points: [...lead, { x, y: AT_THE_LINE }, ...(curved ? [{ x, y: UPFIELD }] : []), end],
      curved,
      gap: gap ?? null,
      crossing: lead.length,
      waitsAt: null,
    },
  ];
}

/** Outside the passer on the side of his gap, at the passer's depth. */
function outsideOf(passer: Point, x: Yards, gap: Gap | undefined): Point {
  const side = gap === undefined ? (x < passer.x ? -1 : 1) : signOf(gap.side);
  return { x: passer.x + side * Math.max(OUTSIDE, Math.abs(x - passer.x) * KEPT_WIDTH + WIDER), y: passer.y };
}
