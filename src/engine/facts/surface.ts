import { compareBy } from '../../base/index.ts';
import { GAP_LETTERS, type GapLetter, type Side } from '../vocabulary.ts';
import type { GapFact, OffencePlayer, SurfaceBody, Yards } from '../types/index.ts';

/**
 * Drawing conventions of ours for "on the line" and "back", measured at the middle of a man's circle. The rule itself is a
 * plane through the snapper's waist (NFHS 2-25-2 and 2-32-9; NCAA 2-27-4), which a circle cannot show.
 */
export const ON_LINE_DEPTH: Yards = 1.0;
export const BACK_DEPTH: Yards = 1.25;

/**
 * Widest centre-to-centre distance at which a man still belongs to the surface. Splits run from toe-to-toe to 6 ft
 * (smartfootball.blogspot.com, 15 Oct 2008); with 2 ft bodies 2 yd is a 4 ft split: beyond it he is flexed.
 */
export const ATTACHED_SPLIT: Yards = 2.0;

/** A wing stands at most this deep and at least this far outside the last man, so that he makes a gap of his own. */
export const WING_DEPTH: Yards = 2.0;
const WING_MIN_SPLIT: Yards = 0.6;

/** The edge gap is drawn one yard outside the last man. */
const EDGE_OFFSET: Yards = 1.0;

/** Yards behind the ball; the offence's y is negative. */
export function depthOf(player: OffencePlayer): Yards {
  return -player.y;
}

/** Whether his circle is on the line of scrimmage. */
export function isOnLine(player: OffencePlayer): boolean {
  return depthOf(player) <= ON_LINE_DEPTH;
}

/** +1 outward on the right, -1 on the left. */
export function signOf(side: Side): 1 | -1 {
  return side === 'right' ? 1 : -1;
}

/**
 * The surface on one side: the snapper, then every body outward that is on the line within a split of the one before,
 * then the wings just behind and outside them.
 */
export function readSurface(
  players: readonly OffencePlayer[],
  snapper: OffencePlayer,
  side: Side,
): readonly SurfaceBody[] {
  const sign = signOf(side);
  const outward = (player: OffencePlayer): Yards => (player.x - snapper.x) * sign;
  const candidates = players
    .filter((player) => player.id !== snapper.id && player.kind !== 'passer' && outward(player) > 0)
    .sort(compareBy(outward, depthOf, (player) => player.id));
  const bodies: SurfaceBody[] = [{ player: snapper.id, index: 0, x: snapper.x, how: 'line' }];
  let last = 0;
  for (const player of candidates.filter(isOnLine)) {
    if (player.kind !== 'lineman' && outward(player) - last > ATTACHED_SPLIT) break;
    last = outward(player);
    bodies.push({ player: player.id, index: bodies.length, x: player.x, how: 'line' });
  }
  for (const player of candidates.filter((each) => !isOnLine(each) && depthOf(each) <= WING_DEPTH)) {
    const split = outward(player) - last;
    if (split < WING_MIN_SPLIT || split > ATTACHED_SPLIT) continue;
    last = outward(player);
    bodies.push({ player: player.id, index: bodies.length, x: player.x, how: 'wing' });
  }
  return bodies;
}

/**
 * The gaps of one side, from the snapper outward: one beside every body, the last one open to the sideline. So a side has
 * as many gaps as bodies, the snapper counted (gaps to own = blockers + 1: "Two Gap, One Gap Revisited", Football Is Life blog, 17 Aug 2015).
 */
export function gapsOfSide(surface: readonly SurfaceBody[], side: Side): readonly GapFact[] {
  const gaps: GapFact[] = [];
  surface.forEach((body, index) => {
    const letter = GAP_LETTERS[index];
    if (letter === undefined) return;
    const next = surface[index + 1];
    gaps.push({
      gap: { side, letter },
      x: next === undefined ? body.x + EDGE_OFFSET * signOf(side) : (body.x + next.x) / 2,
      inside: body.player,
      outside: next?.player ?? null,
    });
  });
  return gaps;
}

/** The letter of the outermost gap of a side. */
export function edgeLetter(surface: readonly SurfaceBody[]): GapLetter {
  return GAP_LETTERS[Math.min(surface.length, GAP_LETTERS.length) - 1] ?? 'A';
}
