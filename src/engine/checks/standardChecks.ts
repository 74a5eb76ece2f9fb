import type { Check } from './defineCheck.ts';
import { alignIllegal } from './alignIllegal.ts';
import { alignReach } from './alignReach.ts';
import { alignTell } from './alignTell.ts';
import { containMissing } from './containMissing.ts';
import { boxNumbers } from './boxNumbers.ts';
import { conflictRunPass } from './conflictRunPass.ts';
import { coverMismatch } from './coverMismatch.ts';
import { coverNoPost } from './coverNoPost.ts';
import { coverUnmatched } from './coverUnmatched.ts';
import { coverZoneEmpty } from './coverZoneEmpty.ts';
import { edgeInconsistent } from './edgeInconsistent.ts';
import { forceDoubled } from './forceDoubled.ts';
import { forceMissing } from './forceMissing.ts';
import { frontUnreplaced } from './frontUnreplaced.ts';
import { gapDoubled } from './gapDoubled.ts';
import { gapOpen } from './gapOpen.ts';
import { laneEmpty } from './laneEmpty.ts';
import { lineTooFar } from './lineTooFar.ts';
import { lineTwoJobs } from './lineTwoJobs.ts';
import { lineTwoManners } from './lineTwoManners.ts';
import { lookIllegal } from './lookIllegal.ts';
import { optionUnassigned } from './optionUnassigned.ts';
import { pathCrossing } from './pathCrossing.ts';
import { peelUnconverted } from './peelUnconverted.ts';
import { playerOrphanedDuty } from './playerOrphanedDuty.ts';
import { playerTwoJobs } from './playerTwoJobs.ts';
import { ruleUnresolved } from './ruleUnresolved.ts';
import { rushCount } from './rushCount.ts';
import { rushUnblockedAnswer } from './rushUnblockedAnswer.ts';
import { sideMotionFlips } from './sideMotionFlips.ts';
import { sideSplit } from './sideSplit.ts';
import { sideUndecided } from './sideUndecided.ts';
import { wordsTwoMeanings } from './wordsTwoMeanings.ts';

/** All checks, in the order their findings are told: what decides first. */
export const standardChecks: readonly Check[] = [
  lineTwoJobs,
  playerTwoJobs,
  sideUndecided,
  ruleUnresolved,
  gapOpen,
  frontUnreplaced,
  playerOrphanedDuty,
  forceMissing,
  edgeInconsistent,
  containMissing,
  peelUnconverted,
  coverUnmatched,
  coverZoneEmpty,
  optionUnassigned,
  alignIllegal,
  lineTwoManners,
  lineTooFar,
  sideSplit,
  sideMotionFlips,
  gapDoubled,
  forceDoubled,
  coverMismatch,
  boxNumbers,
  conflictRunPass,
  laneEmpty,
  rushCount,
  alignReach,
  pathCrossing,
  lookIllegal,
  wordsTwoMeanings,
  alignTell,
  coverNoPost,
  rushUnblockedAnswer,
];
