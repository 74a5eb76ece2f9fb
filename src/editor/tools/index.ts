export type { EditorCommand, Step, Tool, ToolContext, ToolEvent } from './events.ts';
export { moveTool } from './moveTool.ts';
export { NUDGE, nudge } from './nudge.ts';
export { placeTool } from './placeTool.ts';
