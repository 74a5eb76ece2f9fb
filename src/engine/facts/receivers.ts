import { compareBy, gather } from '../../base/index.ts';
import { SIDES } from '../vocabulary.ts';
import type { BackFact, OffencePlayer, PlayerId, ReceiverFact, SurfaceBody, Yards } from '../types/index.ts';
import { depthOf, isOnLine } from './surface.ts';

/** A man this deep and inside this distance of the tackle is in the backfield, not a receiver (convention of ours). */
const BACKFIELD_DEPTH: Yards = 2.5;
const BACKFIELD_BEYOND_TACKLE: Yards = 1.5;

/** A back this close to the ball's line belongs to neither side (convention of ours: half a man). */
const OFFSET: Yards = 0.6;

interface Surfaces {
  readonly left: readonly SurfaceBody[];
  readonly right: readonly SurfaceBody[];
}

/** Whether he may catch a forward pass by position: a back, or the end man of the line (NCAA 7-3-3; NFHS 7-5-6). */
function eligibleByPlace(player: OffencePlayer, onLine: readonly OffencePlayer[]): boolean {
  if (!isOnLine(player)) return true;
  return onLine.every((other) => other.x <= player.x) || onLine.every((other) => other.x >= player.x);
}

/** Whether a man stands in the backfield: straight behind the snapper, or deep and not far outside the tackles. */
function inBackfield(player: OffencePlayer, surfaces: Surfaces): boolean {
  if (!isOnLine(player) && Math.abs(player.x) <= OFFSET) return true;
  const tackles = [surfaces.left[2]?.x ?? 0, surfaces.right[2]?.x ?? 0].map(Math.abs);
  return depthOf(player) >= BACKFIELD_DEPTH && Math.abs(player.x) <= Math.max(...tackles) + BACKFIELD_BEYOND_TACKLE;
}

/** The backs in the backfield, from the defence's left to its right. */
export function readBacks(players: readonly OffencePlayer[], surfaces: Surfaces): readonly BackFact[] {
  return players
    .filter((player) => canCarry(player) && inBackfield(player, surfaces))
    .sort(
      compareBy(
        (player) => player.x,
        depthOf,
        (player) => player.id,
      ),
    )
    .map((player) => ({
      player: player.id,
      place: player.x < -OFFSET ? 'left' : player.x > OFFSET ? 'right' : 'middle',
    }));
}

/**
 * Receivers outside the backfield, each side counted from the sideline inward; the attached tight end counts. A covered
 * man is listed without eligibility and takes no number from the others. On equal width the man on the line is outer
 * (there is no standard: staffs differ).
 */
export function readReceivers(players: readonly OffencePlayer[], surfaces: Surfaces): readonly ReceiverFact[] {
  const onLine = players.filter(isOnLine);
  const attached = new Set<PlayerId>([...surfaces.left, ...surfaces.right].map((body) => body.player));
  const candidates = players.filter((player) => canCarry(player) && !inBackfield(player, surfaces));
  return gather(SIDES, (side) => {
    const sign = side === 'right' ? 1 : -1;
    const outsideIn = candidates
      .filter((player) => (side === 'right' ? player.x >= 0 : player.x < 0))
      .sort(
        compareBy(
          (player) => -player.x * sign,
          depthOf,
          (player) => player.id,
        ),
      );
    let number = 0;
    return outsideIn.map((player): ReceiverFact => {
      const eligible = eligibleByPlace(player, onLine);
      if (eligible) number += 1;
      return {
        player: player.id,
        side,
        number: eligible ? number : 0,
        attached: attached.has(player.id),
        eligible,
      };
    });
  });
}

/** Tight ends, receivers and backs: everybody who may carry or catch by number; the passer is counted apart. */
function canCarry(player: OffencePlayer): boolean {
  return player.kind === 'tight-end' || player.kind === 'receiver' || player.kind === 'back';
}
