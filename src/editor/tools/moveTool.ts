import { assertNever } from '../../base/index.ts';
import type { Point } from '../../engine/index.ts';
import { includesMan, toggledMan, type Man, type Standing } from '../../store/index.ts';
import { unsnapped, type Snapped } from '../snap.ts';
import type { Box, Step, Tool, ToolContext, ToolEvent } from './events.ts';
import { distance, minus, plus } from './points.ts';

/** The men who are taken along, where they stood when the drag began; the one under the pointer first. */
interface Held {
  readonly lead: Standing;
  readonly others: readonly Standing[];
  /** From the pointer to the middle of the lead. */
  readonly grip: Point;
}

/**
 * Pressing on a man picks him, with Shift or Ctrl to those already picked; dragging moves all who are picked; pressing on
 * grass lets go of them, and dragging from there picks everybody in the rectangle.
 */
export type MoveState =
  | { readonly kind: 'idle' }
  /** The pointer is down on a man and has not left its place yet. */
  | { readonly kind: 'pressing'; readonly from: Point; readonly held: Held; readonly alone: Man | null }
  | { readonly kind: 'dragging'; readonly held: Held }
  /** The pointer is down on grass; `kept` stay picked. */
  | { readonly kind: 'on-grass'; readonly from: Point; readonly kept: readonly Man[] }
  | { readonly kind: 'sweeping'; readonly from: Point; readonly kept: readonly Man[] };

const IDLE: Step<MoveState> = { state: { kind: 'idle' }, commands: [], preview: null };

/** The usual tool: pick, and move by dragging. A drag that is given up changes nothing. */
export const moveTool: Tool<MoveState> = { start: { kind: 'idle' }, step };

type Moving = Exclude<ToolEvent, { kind: 'cancel' }>;

function step(state: MoveState, event: ToolEvent, context: ToolContext): Step<MoveState> {
  if (event.kind === 'cancel') return IDLE;
  switch (state.kind) {
    case 'idle':
      return event.kind === 'down' ? press(event, context) : IDLE;
    case 'pressing':
      return whilePressing(state, event, context);
    case 'dragging':
      return whileDragging(state.held, event, context);
    case 'on-grass':
      return onGrass(state, event, context);
    case 'sweeping':
      return whileSweeping(state, event, context);
    default:
      return assertNever(state);
  }
}

function press(event: Extract<ToolEvent, { kind: 'down' }>, context: ToolContext): Step<MoveState> {
  const { man, at, adding } = event;
  const stands = man === null ? null : context.whereIs(man);
  if (man === null || stands === null) {
    const kept = adding ? context.selection : [];
    return { state: { kind: 'on-grass', from: at, kept }, commands: [], preview: null };
  }
  const known = includesMan(context.selection, man);
  const men = adding ? toggledMan(context.selection, man) : known ? context.selection : [man];
  const commands = adding || !known ? [{ kind: 'select', men } as const] : [];
  // Taken out of those who are picked: there is nobody to drag.
  if (!includesMan(men, man)) return { ...IDLE, commands };
  const held = holding({ man, at: stands }, men, at, context);
  // A click on one of several picks him alone, but only when it turns out to be a click.
  const alone = known && !adding && men.length > 1 ? man : null;
  return { state: { kind: 'pressing', from: at, held, alone }, commands, preview: null };
}

function holding(lead: Standing, men: readonly Man[], at: Point, { whereIs }: ToolContext): Held {
  const others = men.flatMap((man): readonly Standing[] => {
    const spot = whereIs(man);
    return spot === null || includesMan([lead.man], man) ? [] : [{ man, at: spot }];
  });
  return { lead, others, grip: minus(lead.at, at) };
}

function whilePressing(
  state: Extract<MoveState, { kind: 'pressing' }>,
  event: Moving,
  context: ToolContext,
): Step<MoveState> {
  if (event.kind === 'up' && state.alone !== null) {
    return { ...IDLE, commands: [{ kind: 'select', men: [state.alone] }] };
  }
  if (event.kind !== 'move') return IDLE;
  if (distance(event.at, state.from) <= context.slack) return { state, commands: [], preview: null };
  return whileDragging(state.held, event, context);
}

function whileDragging(held: Held, event: Moving, context: ToolContext): Step<MoveState> {
  // A second pointer came down while they were being dragged: the drag is given up.
  if (event.kind === 'down') return IDLE;
  const { lead, others, grip } = held;
  const wanted = plus(event.at, grip);
  const to = event.free ? unsnapped(wanted) : context.snap(lead.man, menOf(held), wanted);
  const moves = movesTo(held, to);
  if (event.kind === 'up') return { ...IDLE, commands: [{ kind: 'move', moves }] };
  return {
    state: { kind: 'dragging', held: { lead, others, grip } },
    commands: [],
    preview: moves,
    hints: { snapped: { man: lead.man, to }, box: null },
  };
}

function menOf({ lead, others }: Held): readonly Man[] {
  return [lead, ...others].map(({ man }) => man);
}

/** Everybody goes as far as the lead does. */
function movesTo({ lead, others }: Held, to: Snapped): readonly Standing[] {
  const way = minus(to.at, lead.at);
  return [{ man: lead.man, at: to.at }, ...others.map(({ man, at }) => ({ man, at: plus(at, way) }))];
}

function onGrass(
  state: Extract<MoveState, { kind: 'on-grass' }>,
  event: Moving,
  context: ToolContext,
): Step<MoveState> {
  if (event.kind === 'up') return { ...IDLE, commands: [{ kind: 'select', men: state.kept }] };
  if (event.kind === 'down') return IDLE;
  if (distance(event.at, state.from) <= context.slack) return { state, commands: [], preview: null };
  return whileSweeping({ ...state, kind: 'sweeping' }, event, context);
}

function whileSweeping(
  state: Extract<MoveState, { kind: 'sweeping' }>,
  event: Moving,
  context: ToolContext,
): Step<MoveState> {
  if (event.kind === 'down') return IDLE;
  const box = { from: state.from, to: event.at };
  if (event.kind === 'move') return { state, commands: [], preview: null, hints: { snapped: null, box } };
  const swept = context.men.filter(({ man, at }) => isIn(box, at) && !includesMan(state.kept, man));
  return { ...IDLE, commands: [{ kind: 'select', men: [...state.kept, ...swept.map(({ man }) => man)] }] };
}

function isIn({ from, to }: Box, { x, y }: Point): boolean {
  return (x - from.x) * (x - to.x) <= 0 && (y - from.y) * (y - to.y) <= 0;
}
