import type { Point } from '../engine/index.ts';
import { fitViewport, toYards, type Area, type Pixel, type Size, type Viewport } from './viewport.ts';

/** A closer look at the field: how many times larger than fitting, and what is in the middle. Null: it fits. */
export type Camera = { readonly zoom: number; readonly middle: Point } | null;

/** The most the field is enlarged. */
export const MOST_ZOOM = 8;

/** One press of "closer" or "farther", or one notch of a wheel. */
export const ZOOM_STEP = 1.25;

/** What is looked at: the area that fits, the drawing it fits into, and which way round. */
export interface Sight {
  readonly area: Area;
  readonly size: Size;
  readonly turned: boolean;
}

/** How yards become pixels through that camera. */
export function viewportOf(sight: Sight, camera: Camera): Viewport {
  const fit = fitViewport(sight.area, sight.size, sight.turned);
  return camera === null ? fit : around(sight, fit.scale * camera.zoom, camera.middle);
}

/** Enlarged that many times more, the place under that pixel staying where it is. */
export function zoomed(sight: Sight, camera: Camera, pixel: Pixel, factor: number): Camera {
  const zoom = Math.min((camera?.zoom ?? 1) * factor, MOST_ZOOM);
  if (zoom <= 1 + 1e-9) return null;
  const before = viewportOf(sight, camera);
  const held = toYards(before, pixel);
  const scale = fitViewport(sight.area, sight.size, sight.turned).scale * zoom;
  const sign = sight.turned ? -1 : 1;
  const after: Viewport = {
    scale,
    ball: { px: pixel.px - sign * scale * held.x, py: pixel.py - sign * scale * held.y },
    turned: sight.turned,
  };
  return { zoom, middle: inside(sight.area, toYards(after, middleOf(sight.size))) };
}

/** Enlarged that many times more, what is in the middle staying there. */
export function zoomedInMiddle(area: Area, camera: Camera, factor: number): Camera {
  const { zoom, middle } = camera ?? {
    zoom: 1,
    middle: { x: (area.left + area.right) / 2, y: (area.top + area.bottom) / 2 },
  };
  const next = Math.min(zoom * factor, MOST_ZOOM);
  return next <= 1 + 1e-9 ? null : { zoom: next, middle };
}

/** Shoved by so many pixels, as a sheet under the hand; a field that fits stays. */
export function shoved(sight: Sight, camera: Camera, by: Pixel): Camera {
  if (camera === null) return null;
  const { width, height } = sight.size;
  const at = { px: width / 2 - by.px, py: height / 2 - by.py };
  return { ...camera, middle: inside(sight.area, toYards(viewportOf(sight, camera), at)) };
}

/** The middle of a drawing. */
export function middleOf({ width, height }: Size): Pixel {
  return { px: width / 2, py: height / 2 };
}

function around({ size, turned }: Sight, scale: number, middle: Point): Viewport {
  const sign = turned ? -1 : 1;
  const { px, py } = middleOf(size);
  return { scale, ball: { px: px - sign * scale * middle.x, py: py - sign * scale * middle.y }, turned };
}

/** Some of the area is always in sight. */
function inside({ left, right, top, bottom }: Area, { x, y }: Point): Point {
  return { x: Math.min(Math.max(x, left), right), y: Math.min(Math.max(y, top), bottom) };
}
