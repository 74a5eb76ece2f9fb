import { alignIllegal } from './alignIllegal.ts';
import type { Check } from './defineCheck.ts';
import { gapDoubled } from './gapDoubled.ts';
import { gapOpen } from './gapOpen.ts';
import { lineTooFar } from './lineTooFar.ts';
import { lineTwoJobs } from './lineTwoJobs.ts';
import { lineTwoManners } from './lineTwoManners.ts';
import { lookIllegal } from './lookIllegal.ts';
import { playerTwoJobs } from './playerTwoJobs.ts';
import { ruleUnresolved } from './ruleUnresolved.ts';
import { sideUndecided } from './sideUndecided.ts';

/** All checks, in the order their findings are told: what decides first. */
export const standardChecks: readonly Check[] = [
  lineTwoJobs,
  playerTwoJobs,
  sideUndecided,
  ruleUnresolved,
  gapOpen,
  alignIllegal,
  lineTwoManners,
  lineTooFar,
  gapDoubled,
  lookIllegal,
];
