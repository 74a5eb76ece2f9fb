/** Playbook files: their shape, opening, saving, and the way from a playbook to the engine. */
export { references, type Reference } from './crossChecks/references.ts';
export { sideFaults, type SideFault } from './crossChecks/sides.ts';
export { MAX_ENTRIES, MAX_FILE_BYTES } from './limits.ts';
export { playbookJsonSchema } from './jsonSchema.ts';
export { checkPlaybook, openDocument } from './openDocument.ts';
export { refusalText, type Refusal } from './refusal.ts';
export { saveDocument } from './saveDocument.ts';
export {
  asOpponentId,
  asSheetId,
  FORMAT,
  PAPERS,
  VERSION,
  type Opponent,
  type OpponentId,
  type Playbook,
  type Sheet,
  type SheetId,
  type StaffWords,
} from './schema/playbook.ts';
export { toSetup, type Question } from './toSetup.ts';
