import type { Job, Place, Point, Yards, Zone } from '../../engine/index.ts';
import { distanceToPath } from '../geometry.ts';
import { manRadius, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import type { DrawnJob } from './jobs.ts';
import { fromRim } from './paths.ts';
import { ellipse, label, part, path, type Tag } from './shape.ts';
import { groundOf, lanesOf, waysOf, type Way } from './ways.ts';

/** A zone as drawn: an ellipse with its name in it. */
interface DrawnZone {
  readonly at: Point;
  readonly rx: Yards;
  readonly ry: Yards;
  readonly name: string;
}

/** Words in the rings; the staff's own words stand in the tables. */
export const ZONE_NAMES: Readonly<Record<Zone, string>> = {
  seam: 'seam',
  hook: 'hook',
  hole: 'hole',
  'curl-flat': 'curl-flat',
  flat: 'flat',
  hot: 'hot',
  middle: 'deep middle',
  third: 'deep third',
  half: 'deep half',
  quarter: 'quarter',
};

const NAME_SIZE: Yards = 0.78;

/** Least room between two rings. */
const APART: Yards = 0.15;

/** How far a ring reaches from its middle: as wide as its name, not as wide as the zone. */
export const ZONE_REACH: Readonly<Record<Zone, readonly [rx: Yards, ry: Yards]>> = {
  seam: [2.3, 1.1],
  hook: [2.1, 1.1],
  hole: [2.1, 1.1],
  'curl-flat': [2.5, 1.1],
  flat: [2.1, 1],
  hot: [2, 1.1],
  middle: [3.4, 1.3],
  third: [3.4, 1.3],
  half: [3.4, 1.3],
  quarter: [3.4, 1.3],
};

/** A drop with the place found for its zone. */
interface PlacedDrop {
  readonly drop: Drop;
  readonly zone: DrawnZone;
  readonly way: readonly Point[];
}

/** A drop to draw. */
export interface Drop {
  readonly drawn: DrawnJob;
  readonly job: Extract<Job, { kind: 'drop' }>;
  readonly tag: Tag;
}

/** The zones of all drops and the ways to them. */
export function dropShapes(picture: Picture, drops: readonly Drop[]): readonly Shape[] {
  const placed: PlacedDrop[] = [];
  const runners = drops.map(({ drawn }) => drawn);
  const together = { runners, lanes: lanesOf(runners) };
  // The deep ones first: they belong to the field, and the short ones find a place among the ways to them.
  const found = drops.flatMap((drop) =>
    waysOf(groundOf(picture), together, drop.drawn).map((way) => ({ drop, zone: ringOf(drop, way) })),
  );
  const deepFirst = found
    .map((one) => ({ ...one, zone: besideItsLike(one, found) }))
    .toSorted((a, b) => b.zone.at.y - a.zone.at.y);
  for (const { drop, zone } of deepFirst) placed.push(placeDrop(picture, zone, drop, placed));
  return placed.flatMap(shapesOf);
}

function shapesOf({ drop: { drawn, tag }, zone, way }: PlacedDrop): readonly Shape[] {
  const stroke = drawn.as === 'second' ? 'double' : 'solid';
  const ring = { ...part(tag, 'zone'), layer: 'zone' as const };
  return [
    ellipse(ring, { at: zone.at, rx: zone.rx, ry: zone.ry, fill: null, line: 'drop', stroke, width: 0.08 }),
    ...(way.length < 2 ? [] : [path(tag, { points: way, ink: 'drop', width: 0.08, stroke })]),
    label(
      { ...part(ring, 'name'), layer: 'gap' },
      zone.at,
      drawn.as === 'only' ? zone.name : `${zone.name} ${drawn.as === 'first' ? '1' : '2'}`,
      { size: NAME_SIZE, ink: 'defence-text', halo: true },
    ),
  ];
}

/** From a man's rim to the outline of his zone; nothing when he stands in it. */
function wayTo(zone: DrawnZone, { aligned }: DrawnJob): readonly Point[] {
  if (isInside(zone, aligned, 0)) return [];
  return fromRim([{ x: aligned.x, y: aligned.y }, rimToward(zone, aligned)], manRadius(aligned.role.letter));
}

/** The point of the zone's outline toward a man. */
function rimToward(zone: DrawnZone, man: Point): Point {
  const dx = man.x - zone.at.x;
  const dy = man.y - zone.at.y;
  const scale = Math.hypot(dx / zone.rx, dy / zone.ry);
  return scale === 0 ? zone.at : { x: zone.at.x + dx / scale, y: zone.at.y + dy / scale };
}

function isInside(zone: DrawnZone, man: Point, margin: Yards): boolean {
  return Math.hypot((man.x - zone.at.x) / (zone.rx + margin), (man.y - zone.at.y) / (zone.ry + margin)) < 1;
}

/** The ring of a zone before anything is in its way: where the way to it ends. */
function ringOf({ drawn, job }: Drop, { points }: Way): DrawnZone {
  const [rx, ry] = ZONE_REACH[job.zone];
  return { at: points.at(-1) ?? drawn.aligned, rx, ry, name: ZONE_NAMES[job.zone] };
}

/** A drop with the ring of its zone, before it is placed. */
interface Ringed {
  readonly drop: Drop;
  readonly zone: DrawnZone;
}

/** Men in one and the same zone share its ground: their rings stand side by side about its middle, in the men's order. */
function besideItsLike({ drop, zone }: Ringed, all: readonly Ringed[]): DrawnZone {
  // A little more than the room they need, so that rounding does not push them apart again.
  const pitch = 2 * zone.rx + APART + 0.05;
  const like = all
    .filter(
      (other) =>
        other.drop.job.zone === drop.job.zone &&
        other.drop.job.side === drop.job.side &&
        Math.abs(other.zone.at.x - zone.at.x) < pitch,
    )
    .toSorted((a, b) => a.drop.drawn.aligned.x - b.drop.drawn.aligned.x);
  const middle = like.reduce((sum, other) => sum + other.zone.at.x, 0) / like.length;
  const place = like.findIndex((other) => other.drop === drop) - (like.length - 1) / 2;
  return { ...zone, at: { x: middle + place * pitch, y: zone.at.y } };
}

function between(low: Yards, value: Yards, high: Yards): Yards {
  return Math.min(high, Math.max(low, value));
}

function sideSign(side: Place): -1 | 0 | 1 {
  return side === 'left' ? -1 : side === 'right' ? 1 : 0;
}

/**
 * The place nearest to a zone's landmark, inside the sidelines, where it covers no other zone and no man, where no way runs
 * through a name, and where his own way runs past the others. If there is none, the ways are let go; the rest is not.
 */
function placeDrop(picture: Picture, zone: DrawnZone, drop: Drop, placed: readonly PlacedDrop[]): PlacedDrop {
  const { leftSideline, rightSideline } = picture.field;
  const outward = sideSign(drop.job.side) || 1;
  let nearest: PlacedDrop | null = null;
  for (const { x, y } of SLIDES) {
    const inside = between(leftSideline + zone.rx + 0.3, zone.at.x + outward * x, rightSideline - zone.rx - 0.3);
    const moved = { ...zone, at: { x: inside, y: zone.at.y + y } };
    if (!coversNobody(picture, moved, placed)) continue;
    const one = { drop, zone: moved, way: wayTo(moved, drop.drawn) };
    if (waysAreClear(picture, one, placed)) return one;
    nearest ??= one;
  }
  return nearest ?? { drop, zone, way: wayTo(zone, drop.drawn) };
}

/** Slides to try, the shortest first: outward and inward, deeper and shallower. */
const SLIDES: readonly Point[] = [-9, -7.5, -6, -4.5, -3, -1.5, 0, 1.5, 3, 4.5, 6, 7.5, 9]
  .flatMap((x) => [-2, -1, 0, 1, 2, 3, 4, 5].map((y) => ({ x, y })))
  .toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y) || b.x - a.x || b.y - a.y);

function coversNobody(picture: Picture, zone: DrawnZone, placed: readonly PlacedDrop[]): boolean {
  const apart = placed.every(
    ({ zone: other }) =>
      Math.abs(other.at.x - zone.at.x) >= other.rx + zone.rx + APART ||
      Math.abs(other.at.y - zone.at.y) >= other.ry + zone.ry + APART,
  );
  const men = picture.analysis.assignments.map(({ aligned }) => aligned);
  return apart && men.every((man) => !isInside(zone, man, manRadius(man.role.letter) + 0.1));
}

function waysAreClear(picture: Picture, { drop, zone, way }: PlacedDrop, placed: readonly PlacedDrop[]): boolean {
  const { id } = drop.drawn.aligned.role;
  const men = picture.analysis.assignments.map(({ aligned }) => aligned).filter((man) => man.role.id !== id);
  return (
    men.every((man) => distanceToPath(man, way) > manRadius(man.role.letter)) &&
    placed.every((other) => !crossesName(other.way, zone) && !crossesName(way, other.zone))
  );
}

/** Whether a way runs through the words in a ring. */
function crossesName(way: readonly Point[], { at, name }: DrawnZone): boolean {
  const half = (name.length * NAME_SIZE) / 4;
  const beside = [-1, -0.5, 0, 0.5, 1].map((share) => ({ x: at.x + share * half, y: at.y }));
  return beside.some((point) => distanceToPath(point, way) < NAME_SIZE * 0.6);
}
