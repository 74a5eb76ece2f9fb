import { because, datum, fact } from '../../because.ts';
import { opposite } from '../../resolve/sides.ts';
import type { Because, Hot } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';
import type { PickUp } from './pickUp.ts';
import type { Duty } from './plan.ts';
import type { ProtectionScheme } from './types.ts';

/**
 * The side the passer must throw hot to: the one more free men come on; as many on both, the side away from the slide. The
 * count behind it is told where the sides are shared out before the snap: more come on a side than it has blockers.
 * Sources: "Understanding 1/2 Slide Protection", Blitzology, 2010 (both the inside and the outside backer on the man side, or
 * more than the sliders on theirs); "Beating the Blitz: Throwing Hot", Dawgs By Nature, 2011.
 */
export function hotRule(pickUp: PickUp, duties: readonly Duty[], scheme: ProtectionScheme): Hot | null {
  if (pickUp.unblocked.length === 0) return null;
  const manSide = opposite(scheme.slideSide);
  const free = (side: Side): number => pickUp.unblocked.filter((each) => each.endGap.side === side).length;
  const side = free(scheme.slideSide) > free(manSide) ? scheme.slideSide : manSide;
  const here = pickUp.unblocked.filter((each) => each.endGap.side === side);
  const data = { side: datum.side(side), who: datum.roles(here.map((each) => each.rusher)) };
  const why = because(
    'throw hot to the {side}: {who} comes free there',
    data,
    ...countReason(pickUp, duties, scheme, side),
    ...here.map((each) => each.because),
  );
  return { side, why };
}

/** The count of a side, where the scheme gives every blocker a side: its rushers against its blockers. */
function countReason(
  pickUp: PickUp,
  duties: readonly Duty[],
  scheme: ProtectionScheme,
  side: Side,
): readonly Because[] {
  if (scheme.scheme === 'man') return [fact('man for man, a second man has no blocker')];
  const blockers = duties.filter((duty) => duty.party === side).map((duty) => duty.blocker);
  const blocked = pickUp.blocks.filter((block) => blockers.includes(block.blocker)).length;
  const come = blocked + pickUp.unblocked.filter((each) => each.endGap.side === side).length;
  const data = { come: datum.number(come), blockers: datum.number(blockers.length), side: datum.side(side) };
  return come > blockers.length
    ? [because('{come} come on the {side}, which has {blockers} blockers', data)]
    : [because('{come} come on the {side}, which has {blockers} blockers, but not where they block', data)];
}
