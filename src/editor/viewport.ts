import type { Point, Yards } from '../engine/index.ts';

/** A place on the drawing, in CSS pixels from its top left corner. */
export interface Pixel {
  readonly px: number;
  readonly py: number;
}

/** Size of the drawing in CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A part of the field in yards. `top` is the smaller y: the offence's side, drawn above when the board is not turned. */
export interface Area {
  readonly left: Yards;
  readonly right: Yards;
  readonly top: Yards;
  readonly bottom: Yards;
}

/**
 * How yards become pixels: pixels a yard, where the ball lies, and which way round. Not turned, the defence stands below
 * and looks up the picture, so its right is the picture's right; turned, everything goes through half a turn.
 */
export interface Viewport {
  readonly scale: number;
  readonly ball: Pixel;
  readonly turned: boolean;
}

/** A point of the field on the drawing. */
export function toPixels(viewport: Viewport, point: Point): Pixel {
  const sign = viewport.turned ? -1 : 1;
  return {
    px: viewport.ball.px + sign * viewport.scale * point.x,
    py: viewport.ball.py + sign * viewport.scale * point.y,
  };
}

/** The point of the field under a place on the drawing. */
export function toYards(viewport: Viewport, pixel: Pixel): Point {
  const sign = viewport.turned ? -1 : 1;
  // Adding zero turns -0 into 0, which would otherwise show in a saved file.
  return {
    x: (sign * (pixel.px - viewport.ball.px)) / viewport.scale + 0,
    y: (sign * (pixel.py - viewport.ball.py)) / viewport.scale + 0,
  };
}

/** Shows that area as large as it fits, in the middle of the drawing. `margin` in pixels on every side. */
export function fitViewport(area: Area, size: Size, turned: boolean, margin = 8): Viewport {
  const width = Math.max(size.width - 2 * margin, 1);
  const height = Math.max(size.height - 2 * margin, 1);
  const scale = Math.min(width / (area.right - area.left), height / (area.bottom - area.top));
  const sign = turned ? -1 : 1;
  const middle = { x: (area.left + area.right) / 2, y: (area.top + area.bottom) / 2 };
  return {
    scale,
    ball: { px: size.width / 2 - sign * scale * middle.x, py: size.height / 2 - sign * scale * middle.y },
    turned,
  };
}
