import { assertNever } from '../base/index.ts';
import type { Point } from '../engine/index.ts';
import { flipScene } from './flip.ts';
import { dashesOf, numberText, pathData, polygonData, tipOf } from './geometry.ts';
import type { EllipseShape, LabelShape, PathShape, PolygonShape, Scene, Shape } from './shapes.ts';
import { letterSize, lineWidth, markColour, textColour, type Theme } from './theme.ts';

/** Words of a picture stand as high as their capitals: this part of the em, half of it below the middle. */
const CAPITAL_HEIGHT = 0.7;

/** How a scene becomes SVG: `width` in user units (its height follows), `flip` for half a turn. */
export interface SvgOptions {
  readonly flip: boolean;
  readonly width: number;
}

/**
 * A scene as one SVG document in text: presentation attributes only, no script, no style, no link. Names are escaped, and
 * characters XML does not allow are dropped.
 */
export function toSvg(scene: Scene, theme: Theme, options: SvgOptions): string {
  const { shapes, bounds } = options.flip ? flipScene(scene) : scene;
  const wide = bounds.right - bounds.left;
  const high = bounds.bottom - bounds.top;
  const box = [bounds.left, bounds.top, wide, high].map(numberText).join(' ');
  const size = `width="${numberText(options.width)}" height="${numberText((options.width * high) / wide)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} viewBox="${box}" font-family="IBM Plex Sans, Arial, sans-serif">`,
    ...shapes.map((shape) => shapeSvg(shape, theme)),
    '</svg>',
  ].join('\n');
}

function shapeSvg(shape: Shape, theme: Theme): string {
  switch (shape.kind) {
    case 'path':
      return pathSvg(shape, theme);
    case 'ellipse':
      return ellipseSvg(shape, theme);
    case 'polygon':
      return polygonSvg(shape, theme);
    case 'label':
      return labelSvg(shape, theme);
    default:
      return assertNever(shape);
  }
}

const asIs = (point: Point) => point;

function pathSvg(shape: PathShape, theme: Theme): string {
  const colour = markColour(theme, shape.ink, shape.faint);
  const width = lineWidth(theme, shape);
  const line = outlined(`path d="${pathData(shape, asIs)}"`, colour, width, shape, theme);
  const tip = tipOf(shape);
  if (tip === null) return line;
  const head = tip.filled
    ? `<path d="${polygonData(tip.points, true, asIs)}" fill="${colour}"/>`
    : `<path d="${polygonData(tip.points, false, asIs)}" fill="none" stroke="${colour}" stroke-width="${numberText(Math.max(width, 0.12))}"/>`;
  return line + head;
}

function ellipseSvg(shape: EllipseShape, theme: Theme): string {
  const { at, rx, ry } = shape;
  const place = `cx="${numberText(at.x)}" cy="${numberText(at.y)}" rx="${numberText(rx)}" ry="${numberText(ry)}"`;
  return closedSvg(`ellipse ${place}`, shape, theme);
}

function polygonSvg(shape: PolygonShape, theme: Theme): string {
  return closedSvg(`path d="${polygonData(shape.points, true, asIs)}"`, shape, theme);
}

function closedSvg(element: string, shape: EllipseShape | PolygonShape, theme: Theme): string {
  const inside = shape.fill === null ? '' : `<${element} fill="${markColour(theme, shape.fill, shape.faint)}"/>`;
  if (shape.line === null) return inside;
  return inside + outlined(element, markColour(theme, shape.line, shape.faint), lineWidth(theme, shape), shape, theme);
}

/** A line of that pattern; a double one is a wide line with a ground-coloured one inside. */
function outlined(
  element: string,
  colour: string,
  width: number,
  shape: PathShape | EllipseShape | PolygonShape,
  theme: Theme,
) {
  const dashes = dashesOf(shape.stroke);
  const pattern = dashes === null ? '' : ` stroke-dasharray="${dashes.map(numberText).join(' ')}"`;
  const once = (ink: string, wide: number) =>
    `<${element} fill="none" stroke="${ink}" stroke-width="${numberText(wide)}"${pattern}/>`;
  if (shape.stroke !== 'double') return once(colour, width);
  return once(colour, width * DOUBLE.outer) + once(theme.colours.ground, width * DOUBLE.inner);
}

/** A double line against a single one of the same width: how wide it is outside, and how wide the space inside. */
export const DOUBLE = { outer: 2.4, inner: 1.1 } as const;

function labelSvg(shape: LabelShape, theme: Theme): string {
  const size = letterSize(theme, shape);
  const halo = shape.halo
    ? ` stroke="${theme.colours.ground}" stroke-width="${numberText(size * 0.22)}" paint-order="stroke" stroke-linejoin="round"`
    : '';
  const baseline = shape.at.y + (size * CAPITAL_HEIGHT) / 2;
  const place = `x="${numberText(shape.at.x)}" y="${numberText(baseline)}" font-size="${numberText(size)}"`;
  const weight = shape.bold ? ' font-weight="700"' : '';
  const fill = textColour(theme, shape.ink, shape.faint);
  return `<text ${place} text-anchor="middle" fill="${fill}"${weight}${halo}>${escapeXml(shape.text)}</text>`;
}

/**
 * Text that XML may hold: the five special characters escaped, characters outside XML 1.0 (section 2.2) dropped, half a
 * surrogate pair among them.
 */
function escapeXml(text: string): string {
  return Array.from(text)
    .filter((character) => /[\t\n\r\u0020-\uD7FF\uE000-\uFFFD]|[\u{10000}-\u{10FFFF}]/u.test(character))
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
