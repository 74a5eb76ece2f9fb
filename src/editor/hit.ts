import type { Man, Standing } from '../store/index.ts';
import { toPixels, type Pixel, type Viewport } from './viewport.ts';

/** How exactly a hand points: with a mouse, a pen, a finger. */
export type Fineness = 'fine' | 'pen' | 'coarse';

/** Half of the smallest target a pointer is given, in CSS pixels: 24 across (WCAG 2.2, 2.5.8), 44 for a finger. */
export const HIT_RADIUS: Readonly<Record<Fineness, number>> = { fine: 12, pen: 16, coarse: 22 };

/** Half the width of a man's mark, in yards. */
const MARK_RADIUS = 0.6;

/** The man under the pointer: the nearest whose mark or target it is on; null when it is on nobody. */
export function manAt(men: readonly Standing[], pixel: Pixel, viewport: Viewport, radius: number): Man | null {
  let best = Math.max(radius, viewport.scale * MARK_RADIUS);
  let found: Man | null = null;
  for (const { man, at } of men) {
    const middle = toPixels(viewport, at);
    const far = Math.hypot(middle.px - pixel.px, middle.py - pixel.py);
    if (far <= best) {
      best = far;
      found = man;
    }
  }
  return found;
}
