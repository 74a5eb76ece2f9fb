import type { FieldMarks, Yards } from '../../engine/index.ts';
import type { Bounds, Shape } from '../shapes.ts';
import { box, decoration, ellipse, path, polygon } from './shape.ts';

/** A yard line is drawn every five yards. Source: NFL Rule 1-1; NCAA Rule 1-2-1-a. */
const YARD_LINES: Yards = 5;

/** Length of a short yard mark: 24 in. Source: NCAA Rule 1-2-1-b. */
const SHORT_MARK: Yards = 2 / 3;

/** Half the length of the ball, 11 in. Source: NFL Rule 2-1, from memory. */
const HALF_BALL: Yards = 11 / 36 / 2;

/** The ground, every line on it, and the ball; lines are drawn as if the ball lay on a five-yard line. */
export function fieldShapes(marks: FieldMarks, bounds: Bounds): readonly Shape[] {
  const middle = { x: (marks.leftSideline + marks.rightSideline) / 2, y: (bounds.top + bounds.bottom) / 2 };
  const halfWidth = (marks.rightSideline - marks.leftSideline) / 2;
  const halfLength = (bounds.bottom - bounds.top) / 2;
  return [
    polygon(decoration('ground', 'field'), {
      points: box(middle, halfWidth, halfLength),
      fill: 'ground',
      line: null,
      width: 0,
    }),
    ...yardLines(marks, bounds),
    ...hashMarks(marks, bounds),
    ...[marks.leftSideline, marks.rightSideline].map((x, index) =>
      path(decoration(`sideline/${index}`, 'field'), {
        points: [
          { x, y: bounds.top },
          { x, y: bounds.bottom },
        ],
        ink: 'sideline',
        width: 0.25,
      }),
    ),
    ballShape(),
  ];
}

/** The ball, point to point along the field. */
export function ballShape(): Shape {
  return ellipse(decoration('ball', 'mark'), {
    at: { x: 0, y: 0 },
    rx: HALF_BALL * 0.65,
    ry: HALF_BALL,
    fill: 'ball',
    line: 'ball',
    width: 0.03,
  });
}

function yardLines(marks: FieldMarks, bounds: Bounds): readonly Shape[] {
  return multiples(bounds, YARD_LINES).map((y) =>
    path(decoration(`yard-line/${y}`, 'field'), {
      points: [
        { x: marks.leftSideline, y },
        { x: marks.rightSideline, y },
      ],
      ink: y === 0 ? 'hash' : 'yard-line',
      width: y === 0 ? 0.12 : 0.09,
    }),
  );
}

function hashMarks(marks: FieldMarks, bounds: Bounds): readonly Shape[] {
  return [marks.leftHash, marks.rightHash].flatMap((x, index) =>
    multiples(bounds, 1).map((y) =>
      path(decoration(`hash/${index}/${y}`, 'field'), {
        points: [
          { x: x - SHORT_MARK / 2, y },
          { x: x + SHORT_MARK / 2, y },
        ],
        ink: 'hash',
        width: 0.09,
      }),
    ),
  );
}

/** Every multiple of a step strictly inside the bounds' length. */
function multiples(bounds: Bounds, step: Yards): readonly Yards[] {
  const first = Math.floor(bounds.top / step) + 1;
  const last = Math.ceil(bounds.bottom / step) - 1;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}
