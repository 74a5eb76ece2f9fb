import { gather } from '../base/index.ts';
import { gapsEqual } from './gaps.ts';
import { findGap, findReceiver, findSide, type NameContext } from './resolve/names.ts';
import { findWho } from './resolve/who.ts';
import { SIDES, type Side } from './vocabulary.ts';
import type { Aligned, Gap, GapRef, LookFacts, PlayerId, ReceiverRef, RoleId, SideRef, Who } from './types/index.ts';

/**
 * The way back from a place on the field to a rule: every name a rule could have for it in this look, the most natural one
 * first. Each of them, read in this look, is that place again; in another look they part.
 */
export type NamingContext = NameContext;

/** By the call first, for that is how a pressure travels; then plainly; then by the man himself. */
const SIDE_ORDER: readonly SideRef[] = ['call', 'away', ...SIDES, 'mine', 'other'];

function sideNames(side: Side, context: NamingContext): readonly SideRef[] {
  return SIDE_ORDER.filter((ref) => {
    const found = findSide(ref, context);
    return found.ok && found.value === side;
  });
}

/** Names of a run gap: its letter on a side, the edge of a side, the gap outside the tight end or the wing of a side. */
export function gapNames(gap: Gap, context: NamingContext): readonly GapRef[] {
  const sides = sideNames(gap.side, context);
  const names: readonly GapRef[] = [
    ...sides.map((side): GapRef => ({ kind: 'letter', side, letter: gap.letter })),
    ...sides.map((side): GapRef => ({ kind: 'edge', side })),
    ...gather(['end', 'wing'] as const, (body) => sides.map((side): GapRef => ({ kind: 'outside', side, body }))),
  ];
  return names.filter((name) => {
    const found = findGap(name, context);
    return found.ok && gapsEqual(found.value, gap);
  });
}

/** Names of a receiver: his number on a side, or which back he is; none for a man who is neither. */
export function receiverNames(player: PlayerId, context: NamingContext): readonly ReceiverRef[] {
  const { receivers, backs } = context.facts;
  const receiver = receivers.find((each) => each.player === player);
  const names: readonly ReceiverRef[] =
    receiver === undefined
      ? backs.map((_, index): ReceiverRef => ({ kind: 'back', number: index + 1 }))
      : sideNames(receiver.side, context).map((side): ReceiverRef => ({
          kind: 'number',
          side,
          number: receiver.number,
        }));
  return names.filter((name) => {
    const found = findReceiver(name, context);
    return found.ok && found.value === player;
  });
}

/** Names of the side of a zone; one in the middle has one. */
export function zoneSideNames(side: Side | 'middle', context: NamingContext): readonly (SideRef | 'middle')[] {
  return side === 'middle' ? [side] : sideNames(side, context);
}

/** Names of a man: of his group the one on the call side or away from it, and last the man himself, wherever he stands. */
export function manNames(role: RoleId, callSide: Side | null, aligned: ReadonlyMap<RoleId, Aligned>): readonly Who[] {
  const group = aligned.get(role)?.role.group;
  const himself: Who = { kind: 'role', role };
  if (group === undefined || callSide === null) return [himself];
  const byGroup = (['call', 'away'] as const)
    .map((side): Who => ({ kind: 'group', group, side }))
    .filter((who) => {
      const man = findWho(who, callSide, aligned);
      return man.ok && man.value === role;
    });
  // Alone in his group he is meant on both sides: his own name says it better.
  return byGroup.length === 1 ? [...byGroup, himself] : [himself];
}

/** What names are read against for one man of a look, the call going to that side; null: no side is found. */
export function namingFor(facts: LookFacts, callSide: Side | null, man: Aligned): NamingContext {
  return { facts, callSide, mySide: man.place === 'middle' ? null : man.place };
}
