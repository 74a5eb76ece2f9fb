import { assertNever } from '../base/index.ts';
import type { Point } from '../engine/index.ts';
import {
  dashesOf,
  DOUBLE,
  flipScene,
  lineWidth,
  markColour,
  PAPER_THEME,
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
} from '../scene/index.ts';
import type { Pen } from './pen.ts';

/** A place on the page, in points. */
export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A drawing in progress: the pen, and how yards become points. */
interface Canvas {
  readonly pen: Pen;
  readonly scale: number;
  readonly place: (point: Point) => Point;
}

/** Height of capitals against the em; half of it below the middle centres them. */
const CAPITAL_HEIGHT = 0.7;

/** The height a scene takes at a width, at most `highest`. */
export function sceneHeight({ bounds }: Scene, width: number, highest: number): number {
  return Math.min(highest, (width * (bounds.bottom - bounds.top)) / (bounds.right - bounds.left));
}

/** Draws a scene in lines and letters, as large as its frame allows, in its middle; what leaves its bounds is cut off. */
export function drawScene(pen: Pen, scene: Scene, flip: boolean, frame: Frame): void {
  const { shapes, bounds } = flip ? flipScene(scene) : scene;
  const wide = bounds.right - bounds.left;
  const high = bounds.bottom - bounds.top;
  const scale = Math.min(frame.width / wide, frame.height / high);
  const left = frame.x + (frame.width - wide * scale) / 2;
  const top = frame.y + (frame.height - high * scale) / 2;
  const place = ({ x, y }: Point) => ({ x: left + (x - bounds.left) * scale, y: top + (y - bounds.top) * scale });
  pen.doc.save();
  pen.doc.rect(left, top, wide * scale, high * scale).clip();
  for (const shape of shapes) drawShape({ pen, scale, place }, shape);
  pen.doc.restore();
}

function drawShape(canvas: Canvas, shape: Shape): void {
  switch (shape.kind) {
    case 'path': {
      drawPath(canvas, shape);
      return;
    }
    case 'ellipse': {
      drawClosed(canvas, shape, () => {
        const at = canvas.place(shape.at);
        canvas.pen.doc.ellipse(at.x, at.y, shape.rx * canvas.scale, shape.ry * canvas.scale);
      });
      return;
    }
    case 'polygon': {
      drawClosed(canvas, shape, () => {
        canvas.pen.doc.path(polygonData(shape.points, true, canvas.place));
      });
      return;
    }
    case 'label': {
      drawLabel(canvas, shape);
      return;
    }
    default:
      return assertNever(shape);
  }
}

function drawPath(canvas: Canvas, shape: PathShape): void {
  const { doc } = canvas.pen;
  const colour = markColour(PAPER_THEME, shape.ink, shape.faint);
  const data = pathData(shape, canvas.place);
  if (data === '') return;
  stroke(canvas, shape, colour, () => {
    doc.path(data);
  });
  const tip = tipOf(shape);
  if (tip === null) return;
  doc.path(polygonData(tip.points, tip.filled, canvas.place));
  if (tip.filled) doc.fill(colour);
  else doc.lineWidth(Math.max(lineWidth(PAPER_THEME, shape), 0.12) * canvas.scale).stroke(colour);
}

function drawClosed(canvas: Canvas, shape: EllipseShape | PolygonShape, outline: () => void): void {
  if (shape.fill !== null) {
    outline();
    canvas.pen.doc.fill(markColour(PAPER_THEME, shape.fill, shape.faint));
  }
  if (shape.line !== null) stroke(canvas, shape, markColour(PAPER_THEME, shape.line, shape.faint), outline);
}

/** Strokes an outline in its pattern; a double line is a wide one with a white one inside. */
function stroke(
  { pen: { doc }, scale }: Canvas,
  shape: PathShape | EllipseShape | PolygonShape,
  colour: string,
  outline: () => void,
): void {
  const width = lineWidth(PAPER_THEME, shape) * scale;
  const dashes = dashesOf(shape.stroke);
  if (dashes !== null) doc.addContent(`[${dashes.map((dash) => (dash * scale).toFixed(3)).join(' ')}] 0 d`);
  outline();
  doc.lineWidth(shape.stroke === 'double' ? width * DOUBLE.outer : width).stroke(colour);
  if (dashes !== null) doc.undash();
  if (shape.stroke !== 'double') return;
  outline();
  doc.lineWidth(width * DOUBLE.inner).stroke(PAPER_THEME.colours.ground);
}

function drawLabel({ pen, scale, place }: Canvas, shape: LabelShape): void {
  const { doc } = pen;
  const text = pen.clean(shape.text);
  if (text === '') return;
  const size = shape.size * scale;
  const at = place(shape.at);
  const width = doc
    .font(shape.bold ? 'bold' : 'regular')
    .fontSize(size)
    .widthOfString(text);
  // A white patch instead of an outline: an outline would put every word into the text twice.
  if (shape.halo) doc.rect(at.x - width / 2 - size * 0.08, at.y - size * 0.42, width + size * 0.16, size * 0.84);
  if (shape.halo) doc.fill(PAPER_THEME.colours.ground);
  doc.fillColor(textColour(PAPER_THEME, shape.ink, shape.faint));
  const baseline = at.y + (size * CAPITAL_HEIGHT) / 2;
  doc.text(text, at.x - width / 2, baseline, { lineBreak: false, baseline: 'alphabetic' });
}
