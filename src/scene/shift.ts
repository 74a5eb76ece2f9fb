import type { Point } from '../engine/index.ts';
import type { Shape } from './shapes.ts';

/** The same shape so many yards away. */
export function shifted(shape: Shape, by: Point): Shape {
  const move = ({ x, y }: Point): Point => ({ x: x + by.x, y: y + by.y });
  switch (shape.kind) {
    case 'path':
    case 'polygon':
      return { ...shape, points: shape.points.map(move) };
    case 'ellipse':
    case 'label':
      return { ...shape, at: move(shape.at) };
  }
}
