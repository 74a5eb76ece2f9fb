import type { Point, Yards } from '../../engine/index.ts';
import type { Shape } from '../shapes.ts';
import { ellipse, type Tag } from './shape.ts';

/** The double ring about somebody a finding is about, clear of his mark. `radius` is his mark's, in yards. */
export function litRing(tag: Tag, at: Point, radius: Yards): Shape {
  const reach = radius + 0.22;
  return ellipse(
    { ...tag, layer: 'sign' },
    { at, rx: reach, ry: reach, fill: null, line: 'highlight', stroke: 'double', width: 0.11 },
  );
}
