import type { Point, Yards } from '../../engine/index.ts';
import type { Man, Preview, Standing } from '../../store/index.ts';
import type { Snapped } from '../snap.ts';

/** What a pointer or a key did on the field, in yards. Tools see nothing else. */
export type ToolEvent =
  /** `adding`: Shift or Ctrl is held, or the coach picks several. */
  | { readonly kind: 'down'; readonly man: Man | null; readonly at: Point; readonly adding: boolean }
  /** `free`: nothing draws the man to itself. */
  | { readonly kind: 'move'; readonly at: Point; readonly free: boolean }
  | { readonly kind: 'up'; readonly at: Point; readonly free: boolean }
  /** Escape, or the pointer was taken away (a call, a second finger). */
  | { readonly kind: 'cancel' };

/** What a tool may need to know of the field. */
export interface ToolContext {
  /** Where a man stands now; null when he is not there. */
  readonly whereIs: (man: Man) => Point | null;
  readonly men: readonly Standing[];
  /** The men who are picked. */
  readonly selection: readonly Man[];
  /** How far a press may wander and still be a click, in yards: a few pixels, whatever the zoom. */
  readonly slack: Yards;
  /** Where a man who is brought to that point comes to stand, while `moving` go with him. */
  readonly snap: (man: Man, moving: readonly Man[], at: Point) => Snapped;
}

/** What a tool asks for. */
export type EditorCommand =
  | { readonly kind: 'select'; readonly men: readonly Man[] }
  /** Everybody who is moved by one gesture. */
  | { readonly kind: 'move'; readonly moves: readonly Standing[] }
  /** A tool that does one thing has done it. */
  | { readonly kind: 'done' };

/** A rectangle between two corners, in yards. */
export interface Box {
  readonly from: Point;
  readonly to: Point;
}

/** What is drawn over the field while the hand is at work; null parts are not drawn. */
export interface Hints {
  /** What drew the man to itself, and who he is. */
  readonly snapped: { readonly man: Man; readonly to: Snapped } | null;
  readonly box: Box | null;
}

/** What follows from one event. */
export interface Step<State> {
  readonly state: State;
  readonly commands: readonly EditorCommand[];
  readonly preview: Preview | null;
  /** Left out: nothing. */
  readonly hints?: Hints;
}

/** A way of working on the field: a pure function of its state and what happens. */
export interface Tool<State> {
  readonly start: State;
  readonly step: (state: State, event: ToolEvent, context: ToolContext) => Step<State>;
}
