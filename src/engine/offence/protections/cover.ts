import { compareBy, firstInOrder } from '../../../base/index.ts';
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
  const nearFirst = atLine
    .map((man) => ({ man, ...nearest(bodies, man.x) }))
    .sort(
      compareBy(
        ({ distance }) => distance,
        ({ man }) => thousandths(-man.x * signOf(slideSide)),
        ({ man }) => thousandths(man.y),
        ({ man }) => man.role,
      ),
    );
  for (const { man, body } of nearFirst) {
    if (!found.has(body.player)) found.set(body.player, man);
  }
  return found;
}

function nearest(bodies: readonly RowBody[], x: Yards): { readonly body: RowBody; readonly distance: number } {
  const body = firstInOrder(
    bodies,
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

/** The best that can be done with the last blockers and the last men: the first pair of it, and what follows. */
interface Pairing {
  readonly first: Pair | null;
  readonly rest: Pairing | null;
  readonly count: number;
  readonly way: number;
}

const NOBODY: Pairing = { first: null, rest: null, count: 0, way: 0 };

/**
 * Gives men to blockers without crossing, both lists in the same order: as many pairs as can be, and of those the ones with
 * the least way to go; among equals the first two go together before the blocker, and the blocker before the man, is left out.
 */
export function pairInOrder(bodies: readonly RowBody[], men: readonly Threat[]): readonly Pair[] {
  const nobody = [...men.map(() => NOBODY), NOBODY];
  const row = bodies.reduceRight((below, body) => bestWith(body, men, below), nobody);
  const pairs: Pair[] = [];
  for (let best = row[0] ?? null; best !== null; best = best.rest) if (best.first !== null) pairs.push(best.first);
  return pairs;
}

/** From each man on, and from the last: the best with a blocker before those whose best is known. */
function bestWith(body: RowBody, men: readonly Threat[], below: readonly Pairing[]): Pairing[] {
  const row = [NOBODY];
  for (let at = men.length - 1; at >= 0; at -= 1) {
    const man = men[at];
    const [rest = NOBODY, withoutBody = NOBODY, [withoutMan = NOBODY]] = [below[at + 1], below[at], row];
    if (man === undefined) continue;
    const way = rest.way + thousandths(Math.abs(body.x - man.x));
    let best: Pairing = { first: { body, man }, rest, count: rest.count + 1, way };
    if (isBetter(withoutBody, best)) best = withoutBody;
    if (isBetter(withoutMan, best)) best = withoutMan;
    row.unshift(best);
  }
  return row;
}

function isBetter(a: Pairing, b: Pairing): boolean {
  return a.count === b.count ? a.way < b.way : a.count > b.count;
}
