import type { Gap, PlayerId, Point, RoleId, Yards } from '../engine/index.ts';

/**
 * One picture for screen and paper: a scene is a list of shapes in yards, in the engine's frame. A renderer (canvas, PDF,
 * SVG) turns it into its own units, maps inks to its theme, and may rotate it by half a turn; it decides nothing else.
 */

/** What a shape is drawn for. A theme maps each ink to a colour; every picture must also read in black on white. */
export const INKS = [
  'ground',
  'yard-line',
  'hash',
  'sideline',
  'ball',
  'offence',
  'offence-text',
  'defence',
  'defence-text',
  'rush',
  'drop',
  'man',
  'fit',
  'gap',
  'gap-open',
  'gap-text',
  'stop',
  'check',
  'note',
  'clean',
  'muted',
  'highlight',
] as const;
export type Ink = (typeof INKS)[number];

/** Line patterns that can be told apart without colour. */
export type Stroke = 'solid' | 'dashed' | 'dotted' | 'dash-dot' | 'double';

/**
 * The end of a path: a filled head for a rush, a bar for contain, an open head for man, a tee for a fit. A drop has no tip: it
 * ends at the outline of its zone.
 */
export type Tip = 'none' | 'filled-head' | 'open-head' | 'bar' | 'tee';

/**
 * What a shape belongs to, from back to front: a renderer may keep the still layers (`field`) apart from the busy ones, and
 * move the `mark` of a dragged man without his `job`.
 */
export const LAYERS = ['field', 'zone', 'job', 'gap', 'offence', 'mark', 'sign'] as const;
export type Layer = (typeof LAYERS)[number];

interface Common {
  /** Stable, unique in its scene: renderers key on it. */
  readonly key: string;
  readonly layer: Layer;
  /** Drawn light (another room's player on a room's sheet, say). */
  readonly faint: boolean;
  /** What a pointer on it means; null for decoration. */
  readonly target: Target | null;
}

/** What on the field a shape stands for. */
export type Target =
  | { readonly kind: 'defender'; readonly role: RoleId }
  | { readonly kind: 'offence'; readonly player: PlayerId }
  | { readonly kind: 'gap'; readonly gap: Gap };

/** An open path through points; `curved` is a smooth curve through them. */
export interface PathShape extends Common {
  readonly kind: 'path';
  readonly points: readonly Point[];
  readonly curved: boolean;
  readonly stroke: Stroke;
  readonly width: Yards;
  readonly ink: Ink;
  readonly tip: Tip;
}

/** An ellipse; `fill` null leaves it open. */
export interface EllipseShape extends Common {
  readonly kind: 'ellipse';
  readonly at: Point;
  readonly rx: Yards;
  readonly ry: Yards;
  readonly fill: Ink | null;
  readonly line: Ink | null;
  readonly stroke: Stroke;
  readonly width: Yards;
}

/** A closed polygon (octagon for a stop, triangle for a check, square for the snapper, slot of a gap). */
export interface PolygonShape extends Common {
  readonly kind: 'polygon';
  readonly points: readonly Point[];
  readonly fill: Ink | null;
  readonly line: Ink | null;
  readonly stroke: Stroke;
  readonly width: Yards;
}

/** Text, centred on its point and never rotated with the board. `size` is the height of capitals' em in yards. */
export interface LabelShape extends Common {
  readonly kind: 'label';
  readonly at: Point;
  readonly text: string;
  readonly size: Yards;
  readonly bold: boolean;
  readonly ink: Ink;
  /** Ground-coloured outline, so that it reads over lines. */
  readonly halo: boolean;
}

export type Shape = PathShape | EllipseShape | PolygonShape | LabelShape;

/** A part of the field, in yards: `top` is the smallest y, `bottom` the largest. Renderers cut off what lies outside. */
export interface Bounds {
  readonly left: Yards;
  readonly right: Yards;
  readonly top: Yards;
  readonly bottom: Yards;
}

/** A drawn picture: shapes from back to front, and the part of the field worth showing. */
export interface Scene {
  readonly shapes: readonly Shape[];
  readonly bounds: Bounds;
}
