import { assertNever } from '../../base/index.ts';
import type { FieldMarks, Job, Place, Point, Yards, Zone } from '../../engine/index.ts';
import { distance } from '../geometry.ts';
import { manRadius, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import type { DrawnJob } from './jobs.ts';
import { fromRim } from './paths.ts';
import { ellipse, label, part, path, type Tag } from './shape.ts';

/** A zone as drawn: an ellipse with its name in it. */
interface DrawnZone {
  readonly at: Point;
  readonly rx: Yards;
  readonly ry: Yards;
  readonly name: string;
}

/** Words in the rings; the staff's own words stand in the tables. */
const NAMES: Readonly<Record<Zone, string>> = {
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

/** The drop as drawn when its man is told two jobs and this is the second. */
export interface Drop {
  readonly drawn: DrawnJob;
  readonly job: Extract<Job, { kind: 'drop' }>;
  readonly tag: Tag;
}

/** The zones of all drops and the ways to them, placed so that no two zones cover each other and no name hides a man. */
export function dropShapes(picture: Picture, drops: readonly Drop[]): readonly Shape[] {
  const placed: DrawnZone[] = [];
  return drops.flatMap((drop) => {
    const zone = placeZone(picture, landmark(picture.field, drop, quarterRank(drops, drop)), drop, placed);
    placed.push(zone);
    return shapesOf(drop, zone);
  });
}

function shapesOf({ drawn, tag }: Drop, zone: DrawnZone): readonly Shape[] {
  const stroke = drawn.as === 'second' ? 'double' : 'solid';
  const { aligned } = drawn;
  const way = fromRim([{ x: aligned.x, y: aligned.y }, rimToward(zone, aligned)], manRadius(aligned.role.letter));
  const ring = { ...part(tag, 'zone'), layer: 'zone' as const };
  return [
    ellipse(ring, { at: zone.at, rx: zone.rx, ry: zone.ry, fill: null, line: 'drop', stroke, width: 0.08 }),
    ...(isInside(zone, aligned, 0) ? [] : [path(tag, { points: way, ink: 'drop', width: 0.08, stroke })]),
    label(part(ring, 'name'), zone.at, zone.name, { size: NAME_SIZE, ink: 'defence-text', halo: true }),
  ];
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

/** Of the men who drop to a quarter on one side, the outermost has rank 0. */
function quarterRank(drops: readonly Drop[], of: Drop): number {
  if (of.job.zone !== 'quarter') return 0;
  const mates = drops.filter((drop) => drop.job.zone === 'quarter' && drop.job.side === of.job.side);
  const far = (drop: Drop) => Math.abs(drop.drawn.aligned.x);
  return mates.filter((mate) => far(mate) > far(of)).length;
}

/**
 * Where a zone lies before anything is in its way. Depths and landmarks: common practice, no one source (hook 8 to 12 yd deep
 * between hash and tackle; seam from inside the hash to the numbers; thirds, halves and quarters divide the field's width).
 */
function landmark(field: FieldMarks, { drawn, job }: Drop, rank: number): DrawnZone {
  const side = sideSign(job.side);
  const sideline = side < 0 ? -field.leftSideline : field.rightSideline;
  const hash = side * (side < 0 ? field.leftHash : field.rightHash);
  const numbers = side * (side < 0 ? field.leftNumbers : field.rightNumbers);
  const width = field.rightSideline - field.leftSideline;
  const middle = (field.leftSideline + field.rightSideline) / 2;
  /** Yards outward on his side; a zone in the middle is about the ball. */
  const out = (yards: Yards, depth: Yards, rx: Yards, ry: Yards): DrawnZone => ({
    at: { x: side === 0 ? drawn.aligned.x * 0.3 : side * yards, y: depth },
    rx,
    ry,
    name: NAMES[job.zone],
  });
  const fromSideline = (share: number): DrawnZone =>
    side === 0 ? { ...out(0, 15.5, 3.4, 1.3), at: { x: middle, y: 15.5 } } : out(sideline - width * share, 15.5, 3.4, 1.3);
  switch (job.zone) {
    case 'seam':
      return out(Math.max(6.5, (Math.max(hash, 4) + numbers) / 2), 9, 2.3, 1.1);
    case 'hook':
      return out(4.2, 10, 2.1, 1.1);
    case 'hole':
      return out(0, 8, 2.1, 1.1);
    case 'curl-flat':
      return out(Math.max(8, numbers - 2), 8.5, 2.5, 1.1);
    case 'flat':
      return out(Math.max(9, (numbers + sideline) / 2), 5, 2.1, 1);
    case 'hot':
      return out(6, 7, 2, 1.1);
    case 'middle':
      return { ...out(0, 15.5, 3.4, 1.3), at: { x: middle, y: 15.5 } };
    case 'third':
      return fromSideline(1 / 6);
    case 'half':
      return fromSideline(1 / 4);
    case 'quarter':
      return fromSideline(rank === 0 ? 1 / 8 : 3 / 8);
    default:
      return assertNever(job.zone);
  }
}

function sideSign(side: Place): -1 | 0 | 1 {
  return side === 'left' ? -1 : side === 'right' ? 1 : 0;
}

/** The nearest free place to a zone's landmark, inside the sidelines: it slides a little before it covers anything. */
function placeZone(picture: Picture, zone: DrawnZone, { job }: Drop, placed: readonly DrawnZone[]): DrawnZone {
  const { leftSideline, rightSideline } = picture.field;
  const outward = sideSign(job.side) || 1;
  const tries = SLIDES.map(({ x, y }) => {
    const at = {
      x: Math.min(rightSideline - zone.rx - 0.3, Math.max(leftSideline + zone.rx + 0.3, zone.at.x + outward * x)),
      y: zone.at.y + y,
    };
    return { ...zone, at };
  });
  return tries.find((one) => isFree(picture, one, placed)) ?? tries[0] ?? zone;
}

/** Slides to try, the shortest first: outward and inward, deeper and shallower. */
const SLIDES: readonly Point[] = [-9, -7.5, -6, -4.5, -3, -1.5, 0, 1.5, 3, 4.5, 6, 7.5, 9]
  .flatMap((x) => [-2, -1, 0, 1, 2, 3, 4, 5].map((y) => ({ x, y })))
  .toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y) || b.x - a.x || b.y - a.y);

function isFree(picture: Picture, zone: DrawnZone, placed: readonly DrawnZone[]): boolean {
  const apart = placed.every(
    (other) =>
      Math.abs(other.at.x - zone.at.x) >= other.rx + zone.rx + 0.15 ||
      Math.abs(other.at.y - zone.at.y) >= other.ry + zone.ry + 0.15,
  );
  return apart && picture.analysis.assignments.every(({ aligned }) => !touches(zone, aligned, manRadius(aligned.role.letter)));
}

/** Whether a man's letters would lie in the ring. */
function touches(zone: DrawnZone, man: Point, radius: Yards): boolean {
  return isInside(zone, man, radius + 0.1) && distance(zone.at, man) < zone.rx + radius + 0.1;
}
