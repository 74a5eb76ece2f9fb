import type { Point } from '../../types/index.ts';

/** A cubic piece of a curve: two control points and its end. */
export interface Piece {
  readonly c1: Point;
  readonly c2: Point;
  readonly to: Point;
}

/** Straight bits a piece of curve is measured by: their sum is then within 1 % of the curve. */
const BITS = 6;

/** The piece of the Catmull-Rom curve through the points from point `index` to the next; null past the last. */
export function curvePiece(points: readonly Point[], index: number): Piece | null {
  const from = points[index];
  const to = points[index + 1];
  if (from === undefined || to === undefined) return null;
  const before = points[index - 1] ?? from;
  const after = points[index + 2] ?? to;
  return {
    c1: { x: from.x + (to.x - before.x) / 6, y: from.y + (to.y - before.y) / 6 },
    c2: { x: to.x - (after.x - from.x) / 6, y: to.y - (after.y - from.y) / 6 },
    to,
  };
}

/** The points of that piece after its first, close enough together to measure by; one for a straight way. */
export function bitsOfPiece(points: readonly Point[], index: number, curved: boolean): readonly Point[] {
  const from = points[index];
  const piece = curvePiece(points, index);
  if (from === undefined || piece === null) return [];
  if (!curved || points.length < 3) return [piece.to];
  return Array.from({ length: BITS }, (_, step) => cubic(from, piece, (step + 1) / BITS));
}

function cubic(from: Point, { c1, c2, to }: Piece, share: number): Point {
  const rest = 1 - share;
  const blend = (a: number, b: number, c: number, d: number) =>
    a * rest ** 3 + 3 * b * rest ** 2 * share + 3 * c * rest * share ** 2 + d * share ** 3;
  return share === 1 ? to : { x: blend(from.x, c1.x, c2.x, to.x), y: blend(from.y, c1.y, c2.y, to.y) };
}
