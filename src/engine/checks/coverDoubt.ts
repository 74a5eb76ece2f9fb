import { gather } from '../../base/index.ts';
import { answerReceivers } from '../cover/answers.ts';
import type { Answer, PassColumn, Played, PlayerId, RoleId } from '../types/index.ts';
import { decisions, inConflict, outcomesOf } from './outcomes.ts';

/** Men who cover somebody by one of the two jobs they are told, and not in the same way by the other. */
export function coverInDoubt(draft: Played): readonly RoleId[] {
  return gather(draft.assignments.filter(inConflict), (man) => {
    const ways = outcomesOf(man, draft).map((outcome) => passKey(outcome.pass));
    const covers = ways.some((way) => way !== null);
    return covers && new Set(ways).size > 1 ? [man.aligned.role.id] : [];
  });
}

/** A zone or a receiver as a stable text; null when he covers nobody. */
function passKey(pass: PassColumn): string | null {
  if (pass.kind === 'zone') return `${pass.zone} ${pass.side}`;
  return pass.kind === 'man' ? pass.receiver : null;
}

/** Receivers nobody has whatever the men in doubt end up doing, and receivers who are open one way and not another. */
export interface OpenReceivers {
  readonly sure: readonly PlayerId[];
  readonly maybe: readonly PlayerId[];
}

/** Shares the receivers out again for every way the men in doubt may decide. */
export function openReceivers(draft: Played, inDoubt: readonly RoleId[]): OpenReceivers {
  if (inDoubt.length === 0) return { sure: openNow(draft.answers), maybe: [] };
  const open = decisions(draft, inDoubt).map((men) => new Set(openNow(answerReceivers(men, draft.facts, draft.lean))));
  const players = draft.answers.map((answer) => answer.player);
  return {
    sure: players.filter((player) => open.every((each) => each.has(player))),
    maybe: players.filter((player) => open.some((each) => each.has(player)) && !open.every((each) => each.has(player))),
  };
}

function openNow(answers: readonly Answer[]): readonly PlayerId[] {
  return answers.filter((answer) => answer.by === null).map((answer) => answer.player);
}
