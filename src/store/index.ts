/** What the app knows and how it changes. Commands are pure functions of the playbook; nothing in here knows React. */
export { createAnalyst, standings, type Analyst, type NothingToShow } from './analyst.ts';
export { fitBoard, looksShown, partsOf, sameParts, standInCall } from './board.ts';
export { deleteCall, keepCall, nextCallId, renameCall, updateCall } from './commands/calls.ts';
export { clearHand } from './commands/defence.ts';
export { renamePlaybook } from './commands/playbook.ts';
export { createAppStore, type AppStore, type Commit } from './createAppStore.ts';
export { moveMan } from './moves.ts';
export type { CommandProblem } from './problems.ts';
export { manKey, sameMan, ZOOMS } from './types.ts';
export type { AppState, Board, CallParts, Change, Man, Preview, Standing, View, Zoom } from './types.ts';
