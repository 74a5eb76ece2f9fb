import type { Analysis, Point, Yards } from '../engine/index.ts';
import { fieldAt } from '../engine/index.ts';
import type { View } from './options.ts';
import type { Bounds, Shape } from './shapes.ts';

/** Free space about the outermost man. */
const MARGIN: Yards = 1.5;

/** The box view: this far to each side of the ball, and from behind the passer to behind the linebackers. */
const BOX: Bounds = { left: -9, right: 9, top: -7.5, bottom: 7.5 };

/**
 * The part of the field to show. `players`: everybody with 1.5 yd about, and whatever is drawn for them; `field`: the same
 * length, from sideline to sideline; `box`: nine yards to each side.
 */
export function boundsOf(analysis: Analysis, view: View, shapes: readonly Shape[]): Bounds {
  if (view === 'box') return BOX;
  const men = [...analysis.facts.players.values(), ...analysis.assignments.map(({ aligned }) => aligned)];
  const around = surrounding(
    men.map((man) => ({ x: man.x, y: man.y })),
    MARGIN,
  );
  const drawn = surrounding(shapes.flatMap(extentOf), 0.6);
  const { leftSideline, rightSideline } = fieldAt(analysis.setup.level, analysis.setup.spot);
  const length = { top: Math.min(around.top, drawn.top), bottom: Math.max(around.bottom, drawn.bottom) };
  const whole = { left: leftSideline - 0.6, right: rightSideline + 0.6 };
  if (view === 'field') return { ...whole, ...length };
  return { left: Math.min(around.left, drawn.left), right: Math.max(around.right, drawn.right), ...length };
}

/** The smallest bounds about some points, with a margin; a yard about the ball when there are none. */
export function surrounding(points: readonly Point[], margin: Yards): Bounds {
  const xs = points.map((point) => point.x);
  const ys = points.map((point) => point.y);
  return {
    left: Math.min(-1, ...xs) - margin,
    right: Math.max(1, ...xs) + margin,
    top: Math.min(-1, ...ys) - margin,
    bottom: Math.max(1, ...ys) + margin,
  };
}

/** Corners of what a shape covers; words count as the point they are centred on. */
function extentOf(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'path':
    case 'polygon':
      return shape.points;
    case 'ellipse':
      return [
        { x: shape.at.x - shape.rx, y: shape.at.y - shape.ry },
        { x: shape.at.x + shape.rx, y: shape.at.y + shape.ry },
      ];
    case 'label':
      return [shape.at];
  }
}
