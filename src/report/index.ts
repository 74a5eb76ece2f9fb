/** The only door of the report: an analysis in words. It reads results and computes no football. */
export type * from './types.ts';
export { buildReport } from './buildReport.ts';
export {
  compareReports,
  type ComparedLook,
  type Comparison,
  type ManChange,
  type RoomChanges,
  type VerdictChange,
} from './compare.ts';
export type { ReportEntry } from './entry.ts';
export { fill } from './fill.ts';
export { lookFaultTexts } from './lookFaults.ts';
export {
  reportJson,
  type CannotTellJson,
  type FindingJson,
  type JobJson,
  type LookJson,
  type ReportJson,
} from './reportJson.ts';
export { secondsText, walkReport } from './moments.ts';
export { BY_RULE } from './runs.ts';
export { toText } from './toText.ts';
export { checkOutSentence, checkOutWords, type CheckOutNames } from './words/checkOuts.ts';
export { FORMATION_WORDS } from './words/formations.ts';
export { playerWords, type PlayerWords } from './words/offence.ts';
export { lowered } from './words/lists.ts';
export { makeLexicon, type Lexicon } from './words/lexicon.ts';
export { makeRuleWords, type RuleWords } from './words/rules.ts';
export { COMMON_WORDS, type StaffWords, type TechniqueLabel } from './words/staffWords.ts';
export { techniqueNumber, type Standing } from './words/technique.ts';
export {
  BODY_WORDS,
  KIND_WORDS,
  LEVERAGE_WORDS,
  ROOM_WORDS,
  SPOT_WORDS,
  SUPPORT_WORDS,
  ZONE_WORDS,
  zoneName,
} from './words/names.ts';
export { landmarkText } from './words/landmarks.ts';
export { SEVERITY_WORDS, STATUS_WORDS, VERDICT_WORDS } from './words/verdicts.ts';
