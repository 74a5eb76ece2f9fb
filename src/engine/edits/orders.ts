import { compareBy } from '../../base/index.ts';
import { gapKey } from '../gaps.ts';
import type { Assignment, Gap, LookFacts, PlayerId } from '../types/index.ts';
import { GAP_LETTERS, ROOMS, type Side } from '../vocabulary.ts';

/** An order of the men that a mirrored look has mirrored: nobody comes first for standing on the left. */
export function manOrder(lean: Side | null): (a: Assignment, b: Assignment) => number {
  return compareBy(
    ({ aligned }) => ROOMS.indexOf(aligned.role.room),
    ({ aligned }) => Math.round(Math.abs(aligned.x) * 1000),
    ({ aligned }) => (aligned.place === lean ? 0 : 1),
    ({ aligned }) => aligned.y,
    ({ aligned }) => aligned.role.id,
  );
}

/** Gaps from the ball outward, the call side first. */
export function gapOrder(lean: Side | null): (a: Gap, b: Gap) => number {
  return compareBy(
    (gap) => GAP_LETTERS.indexOf(gap.letter),
    (gap) => (gap.side === lean ? 0 : 1),
    gapKey,
  );
}

/** Players of the offence from the ball outward, the call side first. */
export function playerOrder(lean: Side | null, facts: LookFacts): (a: PlayerId, b: PlayerId) => number {
  const x = (player: PlayerId): number => facts.players.get(player)?.x ?? 0;
  return compareBy(
    (player) => Math.round(Math.abs(x(player)) * 1000),
    (player) => (lean === (x(player) < 0 ? 'left' : 'right') ? 0 : 1),
    (player) => player,
  );
}
