import { assertNever } from '../../base/index.ts';
import type { Gap, LookFacts, PassColumn, PlayerId, RunColumn } from '../../engine/index.ts';
import { ifNobodyHas } from './jobSentence.ts';
import { listed, numberText } from './lists.ts';
import { EDGE_WORDS, gapName, SUPPORT_WORDS, zoneName } from './names.ts';

/** Printed where there is nothing to say. */
export const NOTHING = '—';

/**
 * The run column in a short cell: "B gap right, spill", "force; D gap right if nobody has it".
 * `loose` are gaps he takes only if nobody else has them, the first one first, without those he already has.
 */
export function runCell(run: RunColumn, loose: readonly Gap[]): string {
  const gaps = listed(run.gaps.map(gapName), '');
  const own = [
    ...(gaps === '' ? [] : [gaps]),
    ...(run.twoGaps ? ['two-gap'] : []),
    ...(run.edge === null ? [] : [EDGE_WORDS[run.edge]]),
  ].join(', ');
  const cell = [
    ...(own === '' ? [] : [own]),
    ...(run.support === null ? [] : [SUPPORT_WORDS[run.support]]),
    ...(loose.length === 0 ? [] : [ifNobodyHas(loose.map(gapName))]),
  ].join('; ');
  return cell === '' ? NOTHING : cell;
}

/** The pass column in a short cell: "rush lane", "contain right", "seam left", "man on #2 left", "spy". */
export function passCell(pass: PassColumn, facts: LookFacts, letter: (player: PlayerId) => string): string {
  switch (pass.kind) {
    case 'rush':
      return 'rush lane';
    case 'contain':
      return `contain ${pass.side}`;
    case 'zone':
      return zoneName(pass.zone, pass.side);
    case 'man':
      return `man on ${receiverCell(pass.receiver, facts, letter)}`;
    case 'spy':
      return 'spy';
    case 'none':
      return NOTHING;
    default:
      return assertNever(pass);
  }
}

function receiverCell(player: PlayerId, facts: LookFacts, letter: (player: PlayerId) => string): string {
  const receiver = facts.receivers.find((each) => each.player === player && each.eligible);
  if (receiver !== undefined) return `#${numberText(receiver.number)} ${receiver.side}`;
  return facts.backs.some((back) => back.player === player) ? `the back ${letter(player)}` : letter(player);
}
