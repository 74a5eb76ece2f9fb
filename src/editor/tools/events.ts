import type { Point, Yards } from '../../engine/index.ts';
import type { Man, Preview } from '../../store/index.ts';

/** What a pointer or a key did on the field, in yards. Tools see nothing else. */
export type ToolEvent =
  | { readonly kind: 'down'; readonly man: Man | null; readonly at: Point }
  | { readonly kind: 'move'; readonly at: Point }
  | { readonly kind: 'up'; readonly at: Point }
  /** Escape, or the pointer was taken away (a call, a second finger). */
  | { readonly kind: 'cancel' };

/** What a tool may need to know of the field. */
export interface ToolContext {
  /** Where a man stands now; null when he is not there. */
  readonly whereIs: (man: Man) => Point | null;
  /** How far a press may wander and still be a click, in yards: a few pixels, whatever the zoom. */
  readonly slack: Yards;
}

/** What a tool asks for. */
export type EditorCommand =
  | { readonly kind: 'select'; readonly man: Man | null }
  | { readonly kind: 'move'; readonly man: Man; readonly to: Point }
  /** A tool that does one thing has done it. */
  | { readonly kind: 'done' };

/** What follows from one event. */
export interface Step<State> {
  readonly state: State;
  readonly commands: readonly EditorCommand[];
  readonly preview: Preview | null;
}

/** A way of working on the field: a pure function of its state and what happens. */
export interface Tool<State> {
  readonly start: State;
  readonly step: (state: State, event: ToolEvent, context: ToolContext) => Step<State>;
}
