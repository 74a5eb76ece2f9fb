import { assertNever } from '../../base/index.ts';
import type { Point } from '../../engine/index.ts';
import {
  dashesOf,
  DOUBLE,
  flipShape,
  letterSize,
  lineWidth,
  markColour,
  pathData,
  polygonData,
  textColour,
  tipOf,
  type EllipseShape,
  type LabelShape,
  type PathShape,
  type PolygonShape,
  type Scene,
  type Shape,
  type Theme,
} from '../../scene/index.ts';
import type { Viewport } from '../viewport.ts';

/** Letters are never drawn smaller than this, in CSS pixels: below it they cannot be read. */
const SMALLEST_LETTER = 9;

/** How far the middle of capitals is from the middle of the line box, as a part of the size (IBM Plex Sans). */
const CAPITALS_RISE = 0.035;

/** Paints a whole scene: the one renderer for the board, which decides nothing but units. */
export function paintScene(pen: CanvasRenderingContext2D, scene: Scene, theme: Theme, viewport: Viewport): void {
  paintShapes(pen, scene.shapes, theme, viewport);
}

/** Paints some shapes of a scene, from back to front. */
export function paintShapes(
  pen: CanvasRenderingContext2D,
  shapes: readonly Shape[],
  theme: Theme,
  viewport: Viewport,
): void {
  for (const shape of viewport.turned ? shapes.map(flipShape) : shapes) {
    pen.save();
    pen.translate(viewport.ball.px, viewport.ball.py);
    paintShape(pen, shape, theme, viewport.scale);
    pen.restore();
  }
}

function paintShape(pen: CanvasRenderingContext2D, shape: Shape, theme: Theme, scale: number): void {
  switch (shape.kind) {
    case 'path':
      paintPath(pen, shape, theme, scale);
      break;
    case 'ellipse':
      paintEllipse(pen, shape, theme, scale);
      break;
    case 'polygon':
      paintPolygon(pen, shape, theme, scale);
      break;
    case 'label':
      paintLabel(pen, shape, theme, scale);
      break;
    default:
      assertNever(shape);
  }
}

function paintPath(pen: CanvasRenderingContext2D, shape: PathShape, theme: Theme, scale: number): void {
  const place = scaled(scale);
  const colour = markColour(theme, shape.ink, shape.faint);
  const width = lineWidth(theme, shape) * scale;
  outline(pen, new Path2D(pathData(shape, place)), colour, width, shape, theme, scale);
  const tip = tipOf(shape);
  if (tip === null) return;
  const head = new Path2D(polygonData(tip.points, tip.filled, place));
  pen.setLineDash([]);
  if (tip.filled) {
    pen.fillStyle = colour;
    pen.fill(head);
  } else {
    pen.lineWidth = Math.max(width, 0.12 * scale);
    pen.strokeStyle = colour;
    pen.stroke(head);
  }
}

function paintEllipse(pen: CanvasRenderingContext2D, shape: EllipseShape, theme: Theme, scale: number): void {
  const path = new Path2D();
  path.ellipse(shape.at.x * scale, shape.at.y * scale, shape.rx * scale, shape.ry * scale, 0, 0, 2 * Math.PI);
  paintClosed(pen, path, shape, theme, scale);
}

function paintPolygon(pen: CanvasRenderingContext2D, shape: PolygonShape, theme: Theme, scale: number): void {
  paintClosed(pen, new Path2D(polygonData(shape.points, true, scaled(scale))), shape, theme, scale);
}

function paintClosed(
  pen: CanvasRenderingContext2D,
  path: Path2D,
  shape: EllipseShape | PolygonShape,
  theme: Theme,
  scale: number,
): void {
  if (shape.fill !== null) {
    pen.fillStyle = markColour(theme, shape.fill, shape.faint);
    pen.fill(path);
  }
  if (shape.line === null) return;
  outline(pen, path, markColour(theme, shape.line, shape.faint), lineWidth(theme, shape) * scale, shape, theme, scale);
}

/** A line of that pattern; a double one is a wide line with a ground-coloured one inside. */
function outline(
  pen: CanvasRenderingContext2D,
  path: Path2D,
  colour: string,
  width: number,
  shape: PathShape | EllipseShape | PolygonShape,
  theme: Theme,
  scale: number,
): void {
  const dashes = dashesOf(shape.stroke);
  pen.setLineDash(dashes === null ? [] : dashes.map((dash) => dash * scale));
  const double = shape.stroke === 'double';
  pen.strokeStyle = colour;
  pen.lineWidth = double ? width * DOUBLE.outer : width;
  pen.stroke(path);
  if (!double) return;
  pen.strokeStyle = theme.colours.ground;
  pen.lineWidth = width * DOUBLE.inner;
  pen.stroke(path);
}

function paintLabel(pen: CanvasRenderingContext2D, shape: LabelShape, theme: Theme, scale: number): void {
  const size = Math.max(letterSize(theme, shape) * scale, SMALLEST_LETTER);
  pen.font = `${shape.bold ? '700' : '400'} ${size}px "IBM Plex Sans", sans-serif`;
  pen.textAlign = 'center';
  pen.textBaseline = 'middle';
  const { x, y } = scaled(scale)(shape.at);
  const middle = y + size * CAPITALS_RISE;
  if (shape.halo) {
    pen.strokeStyle = theme.colours.ground;
    pen.lineWidth = size * 0.22;
    pen.lineJoin = 'round';
    pen.setLineDash([]);
    pen.strokeText(shape.text, x, middle);
  }
  pen.fillStyle = textColour(theme, shape.ink, shape.faint);
  pen.fillText(shape.text, x, middle);
}

function scaled(scale: number): (point: Point) => Point {
  return (point) => ({ x: point.x * scale, y: point.y * scale });
}
