import { assertNever } from '../base/index.ts';
import { bitsOfPiece, curvePiece, distance, toward, type Point, type Yards } from '../engine/index.ts';
import type { PathShape, Stroke, Tip } from './shapes.ts';

/** The point of the straight line between two others, ends included, that is nearest to a point. */
function footOn(point: Point, from: Point, to: Point): Point {
  const square = (to.x - from.x) ** 2 + (to.y - from.y) ** 2;
  if (square === 0) return from;
  const along = ((point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y)) / square;
  const share = Math.min(1, Math.max(0, along));
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}

/** The point of a line through points that is nearest to a point; null for a line of no points. */
export function nearestOn(points: readonly Point[], to: Point): Point | null {
  const [first] = points;
  if (first === undefined) return null;
  const feet = points.slice(1).map((end, index) => footOn(to, points[index] ?? end, end));
  return feet.reduce((best, foot) => (distance(foot, to) < distance(best, to) ? foot : best), first);
}

/** How near a line through points comes to a point. */
export function distanceToPath(point: Point, points: readonly Point[]): Yards {
  return Math.min(
    Infinity,
    ...points.slice(1).map((to, index) => distance(point, footOn(point, points[index] ?? to, to))),
  );
}

/** How long a tip is, and how wide to each side. */
const TIP_SIZE: Readonly<Record<Exclude<Tip, 'none'>, { readonly length: Yards; readonly half: Yards }>> = {
  'filled-head': { length: 0.62, half: 0.27 },
  'open-head': { length: 0.55, half: 0.32 },
  bar: { length: 0, half: 0.42 },
  tee: { length: 0, half: 0.26 },
};

/** Dashes and spaces of a line pattern in turn, in yards; null is an unbroken line. */
export function dashesOf(stroke: Stroke): readonly Yards[] | null {
  switch (stroke) {
    case 'solid':
    case 'double':
      return null;
    case 'dashed':
      return [0.55, 0.32];
    case 'dotted':
      return [0.12, 0.24];
    case 'dash-dot':
      return [0.5, 0.2, 0.1, 0.2];
    default:
      return assertNever(stroke);
  }
}

/** The tip of a path as points in yards: filled ones are closed. Null: no tip, or a path without a direction. */
export function tipOf(path: PathShape): { readonly points: readonly Point[]; readonly filled: boolean } | null {
  const end = path.points.at(-1);
  const before = directionPoint(path.points);
  if (path.tip === 'none' || end === undefined || before === null) return null;
  const { length, half } = TIP_SIZE[path.tip];
  const base = toward(end, before, length);
  const unit = toward({ x: 0, y: 0 }, { x: end.x - before.x, y: end.y - before.y }, 1);
  const left = { x: base.x - unit.y * half, y: base.y + unit.x * half };
  const right = { x: base.x + unit.y * half, y: base.y - unit.x * half };
  switch (path.tip) {
    case 'filled-head':
      return { points: [left, end, right], filled: true };
    case 'open-head':
      return { points: [left, end, right], filled: false };
    case 'bar':
    case 'tee':
      return { points: [left, right], filled: false };
    default:
      return assertNever(path.tip);
  }
}

/** The last point that lies apart from the end, which is where the path comes from. */
function directionPoint(points: readonly Point[]): Point | null {
  const end = points.at(-1);
  if (end === undefined) return null;
  return points.findLast((point) => distance(point, end) > 1e-6) ?? null;
}

/** The points to stroke: cut short inside a filled head, so that its point stays sharp. */
function strokedPoints(path: PathShape): readonly Point[] {
  const end = path.points.at(-1);
  const before = directionPoint(path.points);
  if (path.tip !== 'filled-head' || end === undefined || before === null) return path.points;
  const cut = Math.min(TIP_SIZE['filled-head'].length * 0.8, distance(before, end));
  return [...path.points.slice(0, -1), toward(end, before, cut)];
}

/** Turns yards into a renderer's own units. */
export type ToUnits = (point: Point) => Point;

/** A path's line as SVG path data (also understood by canvas and PDF libraries); smooth through its points if curved. */
export function pathData(path: PathShape, place: ToUnits): string {
  const points = strokedPoints(path).map(place);
  const [first, ...rest] = points;
  if (first === undefined) return '';
  if (!path.curved || points.length < 3) return [`M${pair(first)}`, ...rest.map((point) => `L${pair(point)}`)].join('');
  return `M${pair(first)}${rest.map((_, index) => curveTo(points, index)).join('')}`;
}

/** A closed polygon or an open polyline as path data. */
export function polygonData(points: readonly Point[], closed: boolean, place: ToUnits): string {
  return points.map((point, index) => `${index === 0 ? 'M' : 'L'}${pair(place(point))}`).join('') + (closed ? 'Z' : '');
}

function curveTo(points: readonly Point[], index: number): string {
  const piece = curvePiece(points, index);
  return piece === null ? '' : `C${pair(piece.c1)} ${pair(piece.c2)} ${pair(piece.to)}`;
}

/** Points along a path as drawn, close enough together to measure by: its corners, and the bits of a curve between them. */
export function pointsAlong({ points, curved }: PathShape): readonly Point[] {
  return [...points.slice(0, 1), ...points.flatMap((_, index) => bitsOfPiece(points, index, curved))];
}

/** Numbers as the shortest text of at most three decimals, never "-0". */
export function numberText(value: number): string {
  return String(Math.round(value * 1000) / 1000 + 0);
}

function pair(point: Point): string {
  return `${numberText(point.x)} ${numberText(point.y)}`;
}
