export type { Box, EditorCommand, Hints, Step, Tool, ToolContext, ToolEvent } from './events.ts';
export { moveTool } from './moveTool.ts';
export { ARRANGEMENTS, arranged, type Arrangement } from './arrange.ts';
export { BIG_NUDGE, NUDGE, nudge } from './nudge.ts';
export { pickChoices, type PickChoice, type PickedMan } from './pickChoices.ts';
export { pickStep, type PickEvent } from './pickTool.ts';
export { placeTool } from './placeTool.ts';
export { minus } from './points.ts';
