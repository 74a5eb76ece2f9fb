import { ok, refused, type Result } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Leverage, Side } from '../vocabulary.ts';
import type { Because, LookFacts, OffencePlayer, Point, ReceiverFact, Spot, Yards } from '../types/index.ts';
import { signOf } from '../facts/surface.ts';
import { findBody } from '../resolve/names.ts';

/**
 * How far outward of a body's middle each leverage stands, in yards, for 2 ft bodies: a shoulder is 1 ft, a whole man 2 ft.
 * Derived from 2 ft bodies; the names of the shades: J. T. Reed, "Terms of Football"; "Defensive Line Technique Numbering",
 * Coach Z.
 */
export const LEVERAGE_OFFSET: Readonly<Record<Leverage, Yards>> = {
  inside: -2 / 3,
  'inside-foot': -1 / 3,
  head: 0,
  'outside-foot': 1 / 3,
  outside: 2 / 3,
};

/** How far inside or outside a receiver a cover man stands, in yards (common practice, no source). */
export const RECEIVER_OFFSET = { inside: -1, head: 0, outside: 1 } as const;

function findReceiverOfSide(
  number: number,
  side: Side,
  facts: LookFacts,
): Result<{ readonly receiver: ReceiverFact; readonly player: OffencePlayer }, Because> {
  const receiver = facts.receivers.find((each) => each.side === side && each.number === number);
  const player = receiver === undefined ? undefined : facts.players.get(receiver.player);
  if (receiver !== undefined && player !== undefined) return ok({ receiver, player });
  return refused(
    because('there is no receiver number {n} on the {side}', { n: datum.number(number), side: datum.side(side) }),
  );
}

/** Where a spot of an alignment rule lies in this look, or why it cannot be found. */
export function placeSpot(spot: Spot, side: Side | null, facts: LookFacts): Result<Point, Because> {
  if (side === null) return placeInMiddle(spot);
  const sign = signOf(side);
  switch (spot.kind) {
    case 'technique': {
      const body = findBody(spot.on, side, facts);
      if (!body.ok) return body;
      return ok({ x: body.value.x + LEVERAGE_OFFSET[spot.leverage] * sign, y: spot.depth });
    }
    case 'edge': {
      const last = findBody('last', side, facts);
      if (!last.ok) return last;
      return ok({ x: last.value.x + spot.offset * sign, y: spot.depth });
    }
    case 'receiver': {
      const found = findReceiverOfSide(spot.number, side, facts);
      if (!found.ok) return found;
      return ok({ x: found.value.player.x + RECEIVER_OFFSET[spot.leverage] * sign, y: spot.depth });
    }
    case 'apex': {
      const found = findReceiverOfSide(spot.number, side, facts);
      if (!found.ok) return found;
      const last = findBody('last', side, facts);
      if (!last.ok) return last;
      return ok({ x: (found.value.player.x + last.value.x) / 2, y: spot.depth });
    }
    case 'ball':
      return ok({ x: spot.offset * sign, y: spot.depth });
  }
}

/** A man without a side can stand head up on the snapper or over the ball; anything else needs a side. */
function placeInMiddle(spot: Spot): Result<Point, Because> {
  if (spot.kind === 'technique' && spot.on === 'snapper' && spot.leverage === 'head')
    return ok({ x: 0, y: spot.depth });
  if (spot.kind === 'ball' && spot.offset === 0) return ok({ x: 0, y: spot.depth });
  return refused(fact('he stands in the middle and has no side of his own'));
}
