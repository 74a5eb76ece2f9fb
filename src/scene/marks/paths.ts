import { assertNever } from '../../base/index.ts';
import { distance, toward, gapKey, type Point, type Yards } from '../../engine/index.ts';
import { manRadius, OFFENCE_RADIUS, type Picture } from '../picture.ts';
import type { Ink, PathShape, Shape, Stroke, Tip } from '../shapes.ts';
import type { DrawnJob } from './jobs.ts';
import { ellipse, label, part, path, type Tag } from './shape.ts';
import { groundOf, lanesOf as gapLanes, waysOf, type Together, type Way } from './ways.ts';

/** How far behind the slots a rush ends; the first that no back stands in the way of. */
const PAST_SLOTS = [0.95, 0.75, 1.3, 1.6, 1.9, 2.2] as const;

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

/** What paths must know of each other: who else goes through a gap, and how deep the slots reach. */
export interface Lanes extends Together<DrawnJob> {
  /** The far edge of the slots. */
  readonly slotBottom: Yards;
}

/** Gives every path through a gap a lane of its own, in front of slots that reach so deep. */
export function lanesOf(drawn: readonly DrawnJob[], slotBottom: Yards): Lanes {
  return { runners: drawn, lanes: gapLanes(drawn), slotBottom };
}

/**
 * A job as a path, with the number of the pressure that tells it where a man is told two. Drops are drawn with their zones
 * (zones.ts), which must know of each other.
 */
export function jobShapes(picture: Picture, drawn: DrawnJob, lanes: Lanes, tag: Tag): readonly Shape[] {
  const ways = waysOf(groundOf(picture), lanes, drawn);
  const shapes = jobPath(picture, drawn, ways, lanes.slotBottom, tag);
  const longest = shapes.findLast((shape) => shape.kind === 'path');
  if (drawn.as === 'only' || longest === undefined) return shapes;
  const at = numberPlace(drawn, longest, ways, lanes);
  const look = { size: 0.56, ink: 'muted', bold: true, halo: true } as const;
  return [...shapes, label({ ...part(tag, 'which'), layer: 'sign' }, at, drawn.as === 'first' ? '1' : '2', look)];
}

/**
 * Beyond the tip; but beside a contain path, or one that shares its gap, just behind the slots on the free side, because tips
 * crowd there.
 */
function numberPlace(drawn: DrawnJob, shape: PathShape, ways: readonly Way[], { lanes, slotBottom }: Lanes): Point {
  const { job, aligned } = drawn;
  const [end = aligned, before = end] = [shape.points.at(-1), shape.points.at(-2)];
  const beyond = toward(end, before, -0.45);
  const crossing = ways.map(crossingOf).find((point) => point !== null);
  if ((job.kind !== 'rush' && job.kind !== 'contain') || crossing === undefined) return beyond;
  const [gap] = job.gaps;
  const lane = gap === undefined ? 0 : Math.sign(lanes(drawn, gap));
  if (job.kind === 'rush' && lane === 0) return beyond;
  return { x: crossing.x + 0.42 * (lane === 0 ? Math.sign(crossing.x) : lane), y: slotBottom - 0.35 };
}

/** Where a way crosses the line; null when it does not. */
function crossingOf({ points, crossing }: Way): Point | null {
  return crossing === null ? null : (points[crossing] ?? null);
}

function jobPath(
  picture: Picture,
  drawn: DrawnJob,
  ways: readonly Way[],
  slotBottom: Yards,
  tag: Tag,
): readonly Shape[] {
  const { job } = drawn;
  switch (job.kind) {
    case 'rush':
    case 'contain':
      return job.manner === 'two-gap'
        ? ways.map((way) => wayShape(drawn, PENS.rush, gapPart(tag, way), way))
        : ways.flatMap((way) => rushPath(picture, drawn, way, slotBottom, tag));
    case 'fit':
      return ways.map((way) => wayShape(drawn, PENS.fit, gapPart(tag, way), way));
    case 'drop':
      return [];
    case 'man':
      return ways.map((way) => wayShape(drawn, PENS.man, tag, way));
    case 'spy':
      return spyShapes(picture, drawn, tag);
    default:
      return assertNever(job);
  }
}

/** A tag of its own for each of several gaps. */
function gapPart(tag: Tag, { gap }: Way): Tag {
  return gap === null ? tag : part(tag, gapKey(gap));
}

/** A way just as it is, from the rim of his letters on. */
function wayShape(drawn: DrawnJob, pen: Pen, tag: Tag, { points }: Way): PathShape {
  return drawnPath(tag, drawn, pen, fromRim(points, manRadius(drawn.aligned.role.letter)), false);
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

/** His way as far as the line, then to behind the slots, or on to the outside of the passer for contain. */
function rushPath(picture: Picture, drawn: DrawnJob, way: Way, slotBottom: Yards, tag: Tag): readonly Shape[] {
  const [start] = way.points;
  const crossing = crossingOf(way);
  const end = way.points.at(-1);
  if (start === undefined || crossing === null || end === undefined) return [];
  const { kind } = drawn.job;
  const { x } = crossing;
  const after =
    kind === 'contain'
      ? [{ x, y: slotBottom }, containEnd(picture, end, slotBottom)]
      : [{ x, y: rushEnd(picture, x, slotBottom) }];
  const bends = way.points.slice(1, way.crossing ?? 1);
  const points = setOut(start, x, bends, [crossing, ...after], manRadius(drawn.aligned.role.letter));
  return [drawnPath(tag, drawn, kind === 'contain' ? PENS.contain : PENS.rush, points, way.curved)];
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

/** Where a contain path is shown to end: no deeper than it can be read, and out to where it is clear of a back. */
function containEnd(picture: Picture, end: Point, slotBottom: Yards): Point {
  const side = end.x < (picture.passer?.x ?? 0) ? -1 : 1;
  const y = Math.min(slotBottom - 1.2, Math.max(-5.5, Math.min(-4, end.y)));
  const backs = [...picture.analysis.facts.players.values()];
  const clear = (at: Point) => backs.every((back) => distance(back, at) > OFFENCE_RADIUS + 0.55);
  const ends = [0, 0.4, 0.8, 1.2].map((wider) => ({ x: end.x + side * wider, y }));
  return ends.find(clear) ?? { x: end.x, y };
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
