import { signOf } from '../facts/surface.ts';
import type { Gap, GapFact, LookFacts, PlayerId, SurfaceBody, Yards } from '../types/index.ts';
import { GAP_LETTERS, type Side } from '../vocabulary.ts';
import { gapsEqual } from '../gaps.ts';

/**
 * A defender this close to the ball is on the line of scrimmage, in yards (a convention of ours: a lineman or a stand-up edge
 * man within a long step of the ball; a linebacker stands at 4 or more).
 */
const LINE_DEPTH: Yards = 1.5;

/** Nobody deeper than this plays like a linebacker, in yards: the depth of the box, as alignment has it (ours). */
export const LINEBACKER_DEPTH: Yards = 6.5;

/** Whether a defender is at a lineman's depth, whatever room he belongs to. */
export function isAtLine(man: { readonly y: Yards }): boolean {
  return man.y <= LINE_DEPTH;
}

/** Yards as whole thousandths, so that two distances that are equal compare as equal on both sides of the ball. */
export function thousandths(yards: Yards): number {
  return Math.round(yards * 1000);
}

/** One body of the surface in the row across the ball, with the gaps on its two sides as places in `LookFacts.gaps`. */
export interface RowBody {
  readonly player: PlayerId;
  readonly x: Yards;
  /** Snapper, guard, tackle, whoever came in as a lineman; false for a tight end or a wing. */
  readonly lineman: boolean;
  readonly snapper: boolean;
  readonly leftGap: number;
  readonly rightGap: number;
}

/** All bodies of the surface from the defence's left to its right. */
export function rowOf(facts: LookFacts): readonly RowBody[] {
  const middle = facts.gaps.filter((each) => each.gap.side === 'left').length;
  const body = ({ player, index, x }: SurfaceBody, side: Side): RowBody => {
    const inner = side === 'right' ? middle + index - 1 : middle - index;
    const kind = facts.players.get(player)?.kind;
    const snapper = index === 0;
    const lineman = snapper || kind === 'lineman';
    if (snapper) return { player, x, lineman, snapper, leftGap: middle - 1, rightGap: middle };
    return side === 'right'
      ? { player, x, lineman, snapper, leftGap: inner, rightGap: inner + 1 }
      : { player, x, lineman, snapper, leftGap: inner - 1, rightGap: inner };
  };
  const side = (which: Side): readonly RowBody[] =>
    facts.surface[which].slice(0, GAP_LETTERS.length).map((each) => body(each, which));
  return [...side('left').toReversed(), ...side('right').slice(1)];
}

/** The place of a gap in `LookFacts.gaps`. A gap that is not in this look is a broken promise of whoever resolved it. */
export function gapIndex(gap: Gap, facts: LookFacts): number {
  const outward = GAP_LETTERS.indexOf(gap.letter);
  const middle = GAP_LETTERS.indexOf(facts.edge.left) + 1;
  const index = gap.side === 'right' ? middle + outward : middle - 1 - outward;
  const found = facts.gaps[index];
  if (found === undefined || !gapsEqual(found.gap, gap)) {
    throw new Error(`There is no gap ${gap.letter} on the ${gap.side} of this look`);
  }
  return index;
}

/** The gap at a place of `LookFacts.gaps`. A place outside the row is a broken promise inside the engine. */
export function gapAt(index: number, facts: LookFacts): GapFact {
  const found = facts.gaps[index];
  if (found === undefined) throw new Error(`There is no gap at place ${String(index)} of this look`);
  return found;
}

/** The gap beside a body on one side, as a place; with `open`, that gap and every one beyond it, the nearest first. */
export function gapsToward(body: RowBody, side: Side, open: boolean, facts: LookFacts): readonly number[] {
  const first = side === 'right' ? body.rightGap : body.leftGap;
  if (!open) return [first];
  const places: number[] = [];
  for (let at = first; at >= 0 && at < facts.gaps.length; at += signOf(side)) places.push(at);
  return places;
}
