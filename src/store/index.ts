/** What the app knows and how it changes. Commands are pure functions of the playbook; nothing in here knows React. */
export { createAnalyst, standings, type Analyst } from './analyst.ts';
export { fitBoard, looksShown, partsOf, sameCombination, sameParts, standInCall } from './board.ts';
export { deleteCall, keepCall, nextCallId, renameCall, setCallParts, updateCall } from './commands/calls.ts';
export { setCheckOuts } from './commands/checkOuts.ts';
export { copySpots, pasteSpots } from './clip.ts';
export { clearHand, clearSomeHands } from './commands/defence.ts';
export {
  applySuggestion,
  applySuggestions,
  editedParts,
  isCallEdit,
  shareEdits,
  type CallEdit,
  type EditPlace,
} from './commands/edits.ts';
export { newCoverage, setCoverageTells, setNeeds } from './commands/coverages.ts';
export {
  clearHands,
  ELEVEN,
  handToRule,
  newFront,
  replaceRole,
  setAlignRules,
  setBaseJob,
  type FrontMan,
} from './commands/fronts.ts';
export { newRole, setRoleLetter, setRoleMate, setRoleRoom, setRoleSide } from './commands/roles.ts';
export {
  copyMirrored,
  mirroredName,
  mirrorInPlace,
  newLook,
  setMotion,
  setPlayerKind,
  setPlayerLetter,
  setPlayerSpot,
  setProtections,
  setRuns,
} from './commands/looks.ts';
export { LEAST_REASON, takeBack, waive, type Waived } from './commands/waivers.ts';
export { copyEntry, deleteEntry, nextEntry, nextIds, renameEntry } from './commands/entries.ts';
export { keptPoint } from './commands/points.ts';
export {
  giveJob,
  newPressure,
  retell,
  setCallSide,
  setCases,
  setPressureParts,
  tellMan,
  untell,
  type PressureParts,
} from './commands/pressures.ts';
export { renamePlaybook } from './commands/playbook.ts';
export { createAppStore, type AppStore, type Commit } from './createAppStore.ts';
export { heldMen, moveMan, moveMen } from './moves.ts';
export type { CommandProblem, Part } from './problems.ts';
export type { NothingToShow } from './question.ts';
export { aboutOf, lapsedWaivers, waiverHome, type WaiverHome } from './waivers.ts';
export { includesMan, manKey, sameMan, toggledMan, ZOOMS } from './types.ts';
export type {
  AppState,
  Board,
  CallParts,
  Change,
  Chosen,
  ClipSpot,
  Lit,
  Man,
  Overlay,
  Picking,
  PickPlace,
  Preview,
  Standing,
  Step,
  Steps,
  View,
  Zoom,
} from './types.ts';
export { SECTIONS, usesOf, type Entry, type Section, type Use } from './uses.ts';
