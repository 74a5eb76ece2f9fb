import { compareBy } from '../../../base/index.ts';
import { inBox } from '../../align/technique.ts';
import { signOf } from '../../facts/surface.ts';
import type { LookFacts, PlayerId, Yards } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';
import { isAtLine, thousandths, type RowBody } from '../row.ts';
import type { Threat } from './types.ts';

/** The defenders the line counts: those in the box, at a lineman's depth or behind it. */
export function boxThreats(
  defenders: readonly Threat[],
  facts: LookFacts,
): { readonly atLine: readonly Threat[]; readonly behind: readonly Threat[] } {
  const inside = defenders.filter((man) => inBox(man, facts));
  return { atLine: inside.filter(isAtLine), behind: inside.filter((man) => !isAtLine(man)) };
}

/**
 * Which blocker is covered, and by whom: every man at the line covers the blocker nearest to him (between two, the inner one),
 * and a blocker with several on him counts the nearest (of two, the one toward the slide). That an uncovered lineman starts the
 * slide: "Understanding 1/2 Slide Protection", Blitzology, 2010; how near "covered" is, is ours.
 */
export function covered(
  bodies: readonly RowBody[],
  atLine: readonly Threat[],
  slideSide: Side,
): ReadonlyMap<PlayerId, Threat> {
  const found = new Map<PlayerId, Threat>();
  const nearFirst = [...atLine].sort(
    compareBy(
      (man) => nearest(bodies, man.x).distance,
      (man) => thousandths(-man.x * signOf(slideSide)),
      (man) => thousandths(man.y),
      (man) => man.role,
    ),
  );
  for (const man of nearFirst) {
    const { body } = nearest(bodies, man.x);
    if (!found.has(body.player)) found.set(body.player, man);
  }
  return found;
}

function nearest(bodies: readonly RowBody[], x: Yards): { readonly body: RowBody; readonly distance: number } {
  const [body] = [...bodies].sort(
    compareBy(
      (each) => thousandths(Math.abs(each.x - x)),
      (each) => thousandths(Math.abs(each.x)),
    ),
  );
  if (body === undefined) throw new Error('A protection without blockers');
  return { body, distance: thousandths(Math.abs(body.x - x)) };
}

/** One blocker with the defender he is given. */
export interface Pair {
  readonly body: RowBody;
  readonly man: Threat;
}

/**
 * Gives men to blockers without crossing, both lists in the same order: as many pairs as can be, and of those the ones with
 * the least way to go; among equals the earlier in the lists. Lists are a handful long, so trying everything is quick.
 */
export function pairInOrder(bodies: readonly RowBody[], men: readonly Threat[]): readonly Pair[] {
  return bestPairs(bodies, men).pairs;
}

interface Pairing {
  readonly pairs: readonly Pair[];
  readonly way: number;
}

function bestPairs(bodies: readonly RowBody[], men: readonly Threat[]): Pairing {
  const [body, ...otherBodies] = bodies;
  const [man, ...otherMen] = men;
  if (body === undefined || man === undefined) return { pairs: [], way: 0 };
  const rest = bestPairs(otherBodies, otherMen);
  const together: Pairing = {
    pairs: [{ body, man }, ...rest.pairs],
    way: rest.way + thousandths(Math.abs(body.x - man.x)),
  };
  return [bestPairs(otherBodies, men), bestPairs(bodies, otherMen)].reduce(
    (best, other) => (isBetter(other, best) ? other : best),
    together,
  );
}

function isBetter(a: Pairing, b: Pairing): boolean {
  return a.pairs.length === b.pairs.length ? a.way < b.way : a.pairs.length > b.pairs.length;
}
