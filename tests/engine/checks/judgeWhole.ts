import { accountOf } from '../../../src/engine/checks/account.ts';
import { judgeBy, tieOf, type Check, type Draft, type Judgement } from '../../../src/engine/checks/defineCheck.ts';

/** What one check says of a whole analysis. */
export function judgeWhole(check: Check, draft: Draft): Judgement {
  return judgeBy(check, draft, accountOf(draft), tieOf(draft));
}
