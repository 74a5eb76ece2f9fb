import type { Man } from '../../store/index.ts';
import { distance } from './points.ts';
import type { Step, Tool, ToolContext, ToolEvent } from './events.ts';
import type { Point } from '../../engine/index.ts';

/** Moving a man without dragging: he is picked, the next click on the field puts him there (WCAG 2.2, 2.5.7). */
export type PlaceState = { readonly kind: 'waiting' } | { readonly kind: 'pressing'; readonly from: Point };

const WAITING: Step<PlaceState> = { state: { kind: 'waiting' }, commands: [], preview: null };

/** The tool for that man. It acts when the pointer comes up, so that sliding off takes the click back (WCAG 2.2, 2.5.2). */
export function placeTool(man: Man): Tool<PlaceState> {
  return {
    start: { kind: 'waiting' },
    step: (state, event, context) => step(man, state, event, context),
  };
}

function step(man: Man, state: PlaceState, event: ToolEvent, context: ToolContext): Step<PlaceState> {
  if (event.kind === 'cancel') return { ...WAITING, commands: [{ kind: 'done' }] };
  if (event.kind === 'down') return { state: { kind: 'pressing', from: event.at }, commands: [], preview: null };
  if (state.kind === 'waiting') return WAITING;
  if (event.kind === 'move') return { state, commands: [], preview: null };
  if (distance(event.at, state.from) > context.slack) return WAITING;
  return { ...WAITING, commands: [{ kind: 'move', moves: [{ man, at: event.at }] }, { kind: 'done' }] };
}
