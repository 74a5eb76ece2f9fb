import type { Point } from '../../engine/index.ts';
import type { Theme } from '../../scene/index.ts';
import type { Snapped } from '../snap.ts';
import type { Box, Hints } from '../tools/index.ts';
import { toPixels, type Pixel, type Size, type Viewport } from '../viewport.ts';

/** What the hand is at. */
export interface HandPicture {
  /** Where the men who are picked stand. */
  readonly spots: readonly Point[];
  readonly hints: Hints | null;
  readonly theme: Theme;
  readonly viewport: Viewport;
  readonly size: Size;
}

/** Paints over the field who is picked, what draws him, and what is swept over. */
export function paintHand(pen: CanvasRenderingContext2D, picture: HandPicture): void {
  const { spots, hints, theme, viewport } = picture;
  pen.save();
  for (const at of spots) paintRing(pen, toPixels(viewport, at), ringRadius(viewport), theme);
  if (hints !== null && hints.snapped !== null) paintSnap(pen, hints.snapped.to, picture);
  if (hints !== null && hints.box !== null) paintBox(pen, hints.box, picture);
  pen.restore();
}

function ringRadius({ scale }: Viewport): number {
  return Math.max(scale * 0.7, 12);
}

/** A double ring, dark and light, that shows on any ground. */
function paintRing(pen: CanvasRenderingContext2D, { px, py }: Pixel, radius: number, { colours }: Theme): void {
  for (const [colour, width] of [
    [colours.ground, 4],
    [colours.defence, 2],
  ] as const) {
    pen.beginPath();
    pen.arc(px, py, radius, 0, 2 * Math.PI);
    pen.strokeStyle = colour;
    pen.lineWidth = width;
    pen.stroke();
  }
}

/** Words beside the man, in CSS pixels: their size, the room about them, and how far they stand off his ring. */
const WORDS = { size: 13, padding: 5, away: 10 } as const;

/** The lines that draw him, from edge to edge, and beside him what a coach calls that spot. */
function paintSnap(pen: CanvasRenderingContext2D, to: Snapped, { theme, viewport, size }: HandPicture): void {
  if (to.name === '') return;
  const { px, py } = toPixels(viewport, to.at);
  pen.setLineDash([6, 4]);
  pen.lineWidth = 1.5;
  pen.strokeStyle = theme.colours.highlight;
  pen.beginPath();
  if (to.lineX !== null) {
    pen.moveTo(px, 0);
    pen.lineTo(px, size.height);
  }
  if (to.lineY !== null) {
    pen.moveTo(0, py);
    pen.lineTo(size.width, py);
  }
  pen.stroke();

  pen.font = `${WORDS.size}px "IBM Plex Sans", sans-serif`;
  const width = pen.measureText(to.name).width + 2 * WORDS.padding;
  const height = WORDS.size + 2 * WORDS.padding;
  const x = Math.min(Math.max(px - width / 2, 2), Math.max(size.width - width - 2, 2));
  // Away from the ball, where fewer men stand, unless the picture ends there.
  const away = ringRadius(viewport) + WORDS.away;
  const [above, below] = [py - away - height, py + away];
  const y = py >= viewport.ball.py ? (below + height < size.height ? below : above) : above > 2 ? above : below;
  pen.fillStyle = theme.colours.defence;
  pen.beginPath();
  pen.roundRect(x, y, width, height, 3);
  pen.fill();
  pen.fillStyle = theme.colours.ground;
  pen.textAlign = 'left';
  pen.textBaseline = 'middle';
  pen.fillText(to.name, x + WORDS.padding, y + height / 2);
}

/** The rectangle that picks whoever is in it. */
function paintBox(pen: CanvasRenderingContext2D, { from, to }: Box, { theme, viewport }: HandPicture): void {
  const a = toPixels(viewport, from);
  const b = toPixels(viewport, to);
  pen.setLineDash([4, 3]);
  pen.lineWidth = 1.5;
  pen.strokeStyle = theme.colours.defence;
  pen.strokeRect(a.px, a.py, b.px - a.px, b.py - a.py);
}
