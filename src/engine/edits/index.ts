/** Typed edits that mend a finding: made, applied, worded, proved in one look, and searched for over many. */
export { applyEdit, editCoverage, editFront, editPressure, sameWho } from './applyEdit.ts';
export { describeEdit } from './describeEdit.ts';
export { sizeOf, type Edit, type JobChange, type Named, type SurfaceTest, type Told } from './edit.ts';
export type { Library } from './library.ts';
export { applySet } from './applySet.ts';
export type { Standing } from './court.ts';
export { mend, type MendBudget, type Mending } from './mend.ts';
export { candidatesFor, mendingEdits, suggestionsFor, type Suggestions } from './suggestions.ts';
export { turnedTell } from './turnAround.ts';
export { tellHere, type Lined, type TellHere } from './tellHere.ts';
