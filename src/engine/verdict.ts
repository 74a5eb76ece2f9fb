import type { Setup, ToldCall, Verdict } from './types/index.ts';
import { SEVERITIES, type Severity } from './vocabulary.ts';

/** As much of what the checks say as the verdict hangs on: what is found and not waived, and whether anything stayed open. */
interface Judged {
  readonly found: readonly { readonly severity: Severity }[];
  readonly doubts: readonly unknown[];
}

/**
 * The worst thing found and not waived. What could not be judged is for the coach to decide, so it is no less than a check. A
 * call that is not run against this look is not judged; of an either-or call only the half that is run counts.
 */
export function worstOf({ setup, choice }: Pick<ToldCall, 'setup' | 'choice'>, judged: readonly Judged[]): Verdict {
  if (isLeftOut(setup, choice)) return 'left-out';
  const order: readonly Severity[] = SEVERITIES;
  let worst = order.length;
  for (const { found, doubts } of judged) {
    if (doubts.length > 0) worst = Math.min(worst, order.indexOf('check'));
    for (const { severity } of found) worst = Math.min(worst, order.indexOf(severity));
  }
  return order[worst] ?? 'clean';
}

function isLeftOut(setup: Setup, choice: ToldCall['choice']): boolean {
  const run = choice === null ? [setup.first, setup.second] : [setup[choice.ran]];
  return run.some((pressure) => pressure?.notAgainst.includes(setup.look.id) ?? false);
}
