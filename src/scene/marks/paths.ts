import { assertNever } from '../../base/index.ts';
import { gapKey, type Gap, type Job, type Point, type Yards } from '../../engine/index.ts';
import { distance, toward } from '../geometry.ts';
import { manRadius, OFFENCE_RADIUS, type Picture } from '../picture.ts';
import type { Ink, PathShape, Shape, Stroke, Tip } from '../shapes.ts';
import { bendsOf, type RushLike } from './bends.ts';
import type { DrawnJob } from './jobs.ts';
import { ellipse, label, part, path, type Tag } from './shape.ts';

/** How far behind the slots a rush ends; the first that no back stands in the way of. */
const PAST_SLOTS = [0.95, 0.75, 1.3, 1.6, 1.9, 2.2] as const;

/** Where a path crosses the line: the defence's edge of the neutral zone. */
const AT_THE_LINE: Yards = -0.05;

/** Sideways step between two paths through one gap. */
const LANE: Yards = 0.34;

/** How a kind of job is drawn: the pattern, the weight and the tip. */
interface Pen {
  readonly ink: Ink;
  readonly width: Yards;
  readonly stroke: Stroke;
  readonly tip: Tip;
}

export const PENS = {
  rush: { ink: 'rush', width: 0.15, stroke: 'solid', tip: 'filled-head' },
  contain: { ink: 'rush', width: 0.15, stroke: 'solid', tip: 'bar' },
  fit: { ink: 'fit', width: 0.13, stroke: 'dotted', tip: 'tee' },
  man: { ink: 'man', width: 0.1, stroke: 'dashed', tip: 'open-head' },
  spy: { ink: 'man', width: 0.12, stroke: 'dotted', tip: 'none' },
} as const satisfies Record<string, Pen>;

/** What paths must know of each other: where each passes the line, and how deep the slots reach. */
export interface Lanes {
  /** Sideways offset of this job's path in that gap. */
  readonly offset: (drawn: DrawnJob, gap: Gap) => Yards;
  /** The far edge of the slots. */
  readonly slotBottom: Yards;
}

/** Gives every path through a gap a lane of its own, in the order of where the men stand. */
export function lanesOf(drawn: readonly DrawnJob[], slotBottom: Yards): Lanes {
  const through = new Map<string, DrawnJob[]>();
  for (const one of drawn) {
    for (const gap of laneGaps(one.job)) through.set(gapKey(gap), [...(through.get(gapKey(gap)) ?? []), one]);
  }
  for (const [key, users] of through)
    through.set(
      key,
      users.toSorted((a, b) => a.aligned.x - b.aligned.x),
    );
  return {
    slotBottom,
    offset: (one, gap) => {
      const users = through.get(gapKey(gap)) ?? [];
      return (users.indexOf(one) - (users.length - 1) / 2) * LANE;
    },
  };
}

/** The gaps a job's path goes through; a two-gap man only reaches into his. */
function laneGaps(job: Job): readonly Gap[] {
  if (job.kind !== 'rush' && job.kind !== 'contain' && job.kind !== 'fit') return [];
  return job.manner === 'two-gap' ? [] : job.gaps;
}

/**
 * A job as a path, with the number of the pressure that tells it where a man is told two. Drops are drawn with their zones
 * (zones.ts), which must know of each other.
 */
export function jobShapes(picture: Picture, drawn: DrawnJob, lanes: Lanes, tag: Tag): readonly Shape[] {
  const shapes = jobPath(picture, drawn, lanes, tag);
  const longest = shapes.findLast((shape) => shape.kind === 'path');
  if (drawn.as === 'only' || longest === undefined) return shapes;
  const at = numberPlace(drawn, longest, lanes);
  const look = { size: 0.56, ink: 'muted', bold: true, halo: true } as const;
  return [...shapes, label({ ...part(tag, 'which'), layer: 'sign' }, at, drawn.as === 'first' ? '1' : '2', look)];
}

/**
 * Beyond the tip; but beside a contain path, or one that shares its gap, just behind the slots on the free side, because tips
 * crowd there.
 */
function numberPlace(drawn: DrawnJob, shape: PathShape, lanes: Lanes): Point {
  const { job, aligned } = drawn;
  const [end = aligned, before = end] = [shape.points.at(-1), shape.points.at(-2)];
  const beyond = toward(end, before, -0.45);
  const crossing = shape.points.find((point) => point.y === AT_THE_LINE);
  if ((job.kind !== 'rush' && job.kind !== 'contain') || crossing === undefined) return beyond;
  const [gap] = job.gaps;
  const lane = gap === undefined ? 0 : Math.sign(lanes.offset(drawn, gap));
  if (job.kind === 'rush' && lane === 0) return beyond;
  return { x: crossing.x + 0.42 * (lane === 0 ? Math.sign(crossing.x) : lane), y: lanes.slotBottom - 0.35 };
}

function jobPath(picture: Picture, drawn: DrawnJob, lanes: Lanes, tag: Tag): readonly Shape[] {
  const { job } = drawn;
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return job.manner === 'two-gap'
        ? stubs(picture, drawn, PENS.rush, tag)
        : rushPath(picture, drawn, job, lanes, tag);
    case 'fit':
      return job.manner === 'two-gap'
        ? stubs(picture, drawn, { ...PENS.fit, tip: 'tee' }, tag)
        : job.gaps.flatMap((gap) => fitPath(picture, drawn, gap, lanes, part(tag, gapKey(gap))));
    case 'drop':
      return [];
    case 'man':
      return manPath(picture, drawn, job.receiver, tag);
    case 'spy':
      return spyShapes(picture, drawn, tag);
    default:
      return assertNever(job);
  }
}

function drawnPath(tag: Tag, drawn: DrawnJob, pen: Pen, points: readonly Point[], curved: boolean): PathShape {
  const stroke = drawn.as === 'second' && pen.stroke === 'solid' ? 'double' : pen.stroke;
  return path(tag, { points, curved, ...pen, stroke });
}

/** Starts a path at the rim of the man's letters instead of in them. A way of two points keeps its end, however near. */
export function fromRim(points: readonly Point[], radius: Yards): readonly Point[] {
  const [start, next] = points;
  if (start === undefined || next === undefined) return points;
  // A first bend just outside the rim would leave a hook there: the path then starts at the bend.
  const bend = points.length > 2 ? 0.3 : 0;
  return distance(start, next) <= radius + bend ? points.slice(1) : [toward(start, next, radius), ...points.slice(1)];
}

/**
 * From the man to his gap by his manner or track and across the line: to behind the slots, or on to the outside of the
 * passer for contain. A man sent to no gap in particular goes straight ahead; one sent to a gap that this look does not have
 * gets no path.
 */
function rushPath(picture: Picture, drawn: DrawnJob, job: RushLike, lanes: Lanes, tag: Tag): readonly Shape[] {
  const { aligned } = drawn;
  const [gap] = job.gaps;
  const center = gap === undefined ? aligned.x : picture.gapX(gap);
  if (center === null) return [];
  const x = center + (gap === undefined ? 0 : lanes.offset(drawn, gap));
  const start = { x: aligned.x, y: aligned.y };
  const after =
    job.kind === 'rush'
      ? [{ x, y: rushEnd(picture, x, lanes.slotBottom) }]
      : [{ x, y: lanes.slotBottom }, containEnd(picture, x, lanes.slotBottom)];
  const neighbour = job.track.kind === 'past' ? picture.manAt(job.track.neighbour) : null;
  const bends = bendsOf(job, start, x, neighbour);
  const points = setOut(start, x, bends, [{ x, y: AT_THE_LINE }, ...after], manRadius(aligned.role.letter));
  const curved = job.manner === 'loop' || job.track.kind === 'past' || job.kind === 'contain';
  return [drawnPath(tag, drawn, PENS[job.kind], points, curved)];
}

/** From the rim of his letters on: straight up when the way lies right before him. */
function setOut(
  start: Point,
  x: Yards,
  bends: readonly Point[],
  after: readonly Point[],
  radius: Yards,
): readonly Point[] {
  const aside = Math.abs(x - start.x);
  if (bends.length > 0 || aside >= radius * 0.8) return fromRim([start, ...bends, ...after], radius);
  return [{ x, y: start.y - Math.min(0.55, Math.sqrt(radius ** 2 - aside ** 2)) }, ...after];
}

/** The end of a rush that stays clear of the backs, so that its head can be seen. */
function rushEnd(picture: Picture, x: Yards, slotBottom: Yards): Yards {
  const backs = [...picture.analysis.facts.players.values()];
  const clear = (y: Yards) => backs.every((back) => distance(back, { x, y: y + 0.3 }) > OFFENCE_RADIUS + 0.4);
  const ends = PAST_SLOTS.map((past) => slotBottom - past);
  return ends.find(clear) ?? slotBottom - PAST_SLOTS[0];
}

/** Outside the passer at his depth, as far out as it takes to stay clear of a back beside him. */
function containEnd(picture: Picture, x: Yards, slotBottom: Yards): Point {
  const passer = picture.passer ?? { x: 0, y: -5 };
  const side = x < passer.x ? -1 : 1;
  const y = Math.min(slotBottom - 1.2, Math.max(-5.5, Math.min(-4, passer.y)));
  const outside = passer.x + side * Math.max(2.4, Math.abs(x - passer.x) * 0.8 + 0.5);
  const backs = [...picture.analysis.facts.players.values()];
  const clear = (at: Point) => backs.every((back) => distance(back, at) > OFFENCE_RADIUS + 0.55);
  const ends = [0.4, 0.8, 1.2].map((wider) => ({ x: outside + side * wider, y }));
  const nearest = { x: outside, y };
  return [nearest, ...ends].find(clear) ?? nearest;
}

/** Short heads from a two-gap man into both his gaps. */
function stubs(picture: Picture, drawn: DrawnJob, pen: Pen, tag: Tag): readonly Shape[] {
  const { aligned, job } = drawn;
  if (job.kind !== 'rush' && job.kind !== 'contain' && job.kind !== 'fit') return [];
  return job.gaps.flatMap((gap) => {
    const x = picture.gapX(gap);
    if (x === null) return [];
    const points = fromRim(
      [
        { x: aligned.x, y: aligned.y },
        { x, y: -0.45 },
      ],
      manRadius(aligned.role.letter),
    );
    return [drawnPath(part(tag, gapKey(gap)), drawn, pen, points, false)];
  });
}

function fitPath(picture: Picture, drawn: DrawnJob, gap: Gap, lanes: Lanes, tag: Tag): readonly Shape[] {
  const { aligned } = drawn;
  const x = picture.gapX(gap);
  if (x === null) return [];
  const end = { x: x + lanes.offset(drawn, gap), y: -0.3 };
  return [drawnPath(tag, drawn, PENS.fit, fromRim([aligned, end], manRadius(aligned.role.letter)), false)];
}

function manPath(picture: Picture, drawn: DrawnJob, receiver: string, tag: Tag): readonly Shape[] {
  const player = [...picture.analysis.facts.players.values()].find((one) => one.id === receiver);
  if (player === undefined) return [];
  const { aligned } = drawn;
  const end = toward(player, aligned, OFFENCE_RADIUS + 0.2);
  return [drawnPath(tag, drawn, PENS.man, fromRim([aligned, end], manRadius(aligned.role.letter)), false)];
}

/** A dotted ring round the passer, named, and a dotted way to it. */
function spyShapes(picture: Picture, drawn: DrawnJob, tag: Tag): readonly Shape[] {
  const { passer } = picture;
  if (passer === null) return [];
  const { aligned } = drawn;
  const ring = 0.95;
  const at = { x: passer.x, y: passer.y };
  return [
    ellipse(part(tag, 'ring'), { at, rx: ring, ry: ring, fill: null, line: 'man', stroke: 'dotted', width: 0.12 }),
    drawnPath(
      tag,
      drawn,
      PENS.spy,
      fromRim([aligned, toward(at, aligned, ring)], manRadius(aligned.role.letter)),
      false,
    ),
    label(part(tag, 'name'), { x: at.x, y: at.y - ring - 0.5 }, `spy ${aligned.role.letter}`, {
      size: 0.62,
      ink: 'muted',
      halo: true,
    }),
  ];
}
