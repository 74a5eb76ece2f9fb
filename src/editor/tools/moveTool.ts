import { assertNever } from '../../base/index.ts';
import type { Point } from '../../engine/index.ts';
import type { Man } from '../../store/index.ts';
import { plus, minus, distance } from './points.ts';
import type { Step, Tool, ToolContext, ToolEvent } from './events.ts';

/** Pressing on a man selects him; dragging moves him; pressing on grass lets go of the selection. */
export type MoveState =
  | { readonly kind: 'idle' }
  /** The pointer is down on a man and has not left its place yet. `grip` is from the pointer to his middle. */
  | { readonly kind: 'pressing'; readonly man: Man; readonly from: Point; readonly grip: Point }
  | { readonly kind: 'dragging'; readonly man: Man; readonly grip: Point };

const IDLE: Step<MoveState> = { state: { kind: 'idle' }, commands: [], preview: null };

/** The usual tool: select, and move by dragging. A drag that is given up changes nothing. */
export const moveTool: Tool<MoveState> = { start: { kind: 'idle' }, step };

function step(state: MoveState, event: ToolEvent, context: ToolContext): Step<MoveState> {
  if (event.kind === 'cancel') return IDLE;
  switch (state.kind) {
    case 'idle':
      return event.kind === 'down' ? press(event.man, event.at, context) : IDLE;
    case 'pressing':
      return whilePressing(state, event, context);
    case 'dragging':
      return whileDragging(state, event);
    default:
      return assertNever(state);
  }
}

function press(man: Man | null, at: Point, context: ToolContext): Step<MoveState> {
  const stands = man === null ? null : context.whereIs(man);
  if (man === null || stands === null) return { ...IDLE, commands: [{ kind: 'select', man: null }] };
  return {
    state: { kind: 'pressing', man, from: at, grip: minus(stands, at) },
    commands: [{ kind: 'select', man }],
    preview: null,
  };
}

type Moving = Exclude<ToolEvent, { kind: 'cancel' }>;

function whilePressing(
  state: Extract<MoveState, { kind: 'pressing' }>,
  event: Moving,
  context: ToolContext,
): Step<MoveState> {
  if (event.kind !== 'move') return IDLE;
  if (distance(event.at, state.from) <= context.slack) return { state, commands: [], preview: null };
  return whileDragging({ kind: 'dragging', man: state.man, grip: state.grip }, event);
}

function whileDragging(state: Extract<MoveState, { kind: 'dragging' }>, event: Moving): Step<MoveState> {
  // A second pointer came down while he was being dragged: the drag is given up.
  if (event.kind === 'down') return IDLE;
  const to = plus(event.at, state.grip);
  if (event.kind === 'up') return { ...IDLE, commands: [{ kind: 'move', man: state.man, to }] };
  return { state, commands: [], preview: { man: state.man, at: to } };
}
