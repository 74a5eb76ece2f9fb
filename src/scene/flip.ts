import type { Point } from '../engine/index.ts';
import type { Bounds, Scene, Shape } from './shapes.ts';

/** Half a turn about the ball: (x, y) -> (-x, -y). Never a mirror: left stays the defence's left. */
export function turned(point: Point): Point {
  return { x: 0 - point.x, y: 0 - point.y };
}

/** The scene seen from the other end of the field. As drawn, y grows down the screen and the defence is at the bottom. */
export function flipScene(scene: Scene): Scene {
  return { shapes: scene.shapes.map(flipShape), bounds: flipBounds(scene.bounds) };
}

function flipBounds(bounds: Bounds): Bounds {
  return { left: 0 - bounds.right, right: 0 - bounds.left, top: 0 - bounds.bottom, bottom: 0 - bounds.top };
}

/** A shape seen from the other end of the field. */
export function flipShape(shape: Shape): Shape {
  switch (shape.kind) {
    case 'path':
    case 'polygon':
      return { ...shape, points: shape.points.map(turned) };
    case 'ellipse':
    case 'label':
      return { ...shape, at: turned(shape.at) };
  }
}
