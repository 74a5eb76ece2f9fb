import type { CheckExamples } from '../example.ts';
import { examples as alignIllegal } from './alignIllegal.ts';
import { examples as alignReach } from './alignReach.ts';
import { examples as alignTell } from './alignTell.ts';
import { examples as boxNumbers } from './boxNumbers.ts';
import { examples as conflictRunPass } from './conflictRunPass.ts';
import { examples as containMissing } from './containMissing.ts';
import { examples as coverMismatch } from './coverMismatch.ts';
import { examples as coverNoPost } from './coverNoPost.ts';
import { examples as coverUnmatched } from './coverUnmatched.ts';
import { examples as coverZoneEmpty } from './coverZoneEmpty.ts';
import { examples as edgeInconsistent } from './edgeInconsistent.ts';
import { examples as forceDoubled } from './forceDoubled.ts';
import { examples as forceMissing } from './forceMissing.ts';
import { examples as frontUnreplaced } from './frontUnreplaced.ts';
import { examples as gapDoubled } from './gapDoubled.ts';
import { examples as gapOpen } from './gapOpen.ts';
import { examples as laneEmpty } from './laneEmpty.ts';
import { examples as lineTooFar } from './lineTooFar.ts';
import { examples as lineTwoJobs } from './lineTwoJobs.ts';
import { examples as lineTwoManners } from './lineTwoManners.ts';
import { examples as lookIllegal } from './lookIllegal.ts';
import { examples as optionUnassigned } from './optionUnassigned.ts';
import { examples as pathCrossing } from './pathCrossing.ts';
import { examples as peelUnconverted } from './peelUnconverted.ts';
import { examples as playerOrphanedDuty } from './playerOrphanedDuty.ts';
import { examples as playerTwoJobs } from './playerTwoJobs.ts';
import { examples as ruleUnresolved } from './ruleUnresolved.ts';
import { examples as rushCount } from './rushCount.ts';
import { examples as rushUnblockedAnswer } from './rushUnblockedAnswer.ts';
import { examples as sideMotionFlips } from './sideMotionFlips.ts';
import { examples as sideSplit } from './sideSplit.ts';
import { examples as sideUndecided } from './sideUndecided.ts';
import { examples as wordsTwoMeanings } from './wordsTwoMeanings.ts';

/** The examples of every check, by the name of its file. A check without a row here fails a test. */
export const EXAMPLES_BY_FILE: Readonly<Record<string, CheckExamples>> = {
  alignIllegal,
  alignReach,
  alignTell,
  boxNumbers,
  conflictRunPass,
  containMissing,
  coverMismatch,
  coverNoPost,
  coverUnmatched,
  coverZoneEmpty,
  edgeInconsistent,
  forceDoubled,
  forceMissing,
  frontUnreplaced,
  gapDoubled,
  gapOpen,
  laneEmpty,
  lineTooFar,
  lineTwoJobs,
  lineTwoManners,
  lookIllegal,
  optionUnassigned,
  pathCrossing,
  peelUnconverted,
  playerOrphanedDuty,
  playerTwoJobs,
  ruleUnresolved,
  rushCount,
  rushUnblockedAnswer,
  sideMotionFlips,
  sideSplit,
  sideUndecided,
  wordsTwoMeanings,
};

export const ALL_EXAMPLES: readonly CheckExamples[] = Object.values(EXAMPLES_BY_FILE);
