import type { Matching, Seeker } from '../../../src/engine/complete/matchGaps.ts';

/*
 * The slow, plain form of `matchSeekers`, kept as the oracle: it was the engine's own before a leaner one took its place, which
 * must answer the same to the last tie.
 */

/** What the seekers so far have taken, told by the last of them and by what stood before him. */
interface State {
  readonly count: number;
  readonly cost: number;
  readonly choice: number | null;
  readonly before: State | null;
}

const NOBODY_YET: State = { count: 0, cost: 0, choice: null, before: null };

/**
 * The assignment that covers the most items, and among those the cheapest: exact, by dynamic programming over the set of
 * covered items (at most 14 gaps). Among equals the one found first in the given order wins, so order the input by sense.
 */
export function matchPlainly(itemCount: number, seekers: readonly Seeker[]): Matching {
  let states = new Map<number, State>([[0, NOBODY_YET]]);
  for (const seeker of seekers) {
    const next = new Map<number, State>();
    const offer = (mask: number, count: number, cost: number, choice: number | null, before: State): void => {
      const known = next.get(mask);
      if (known === undefined || isBetter(count, cost, known)) next.set(mask, { count, cost, choice, before });
    };
    for (const [mask, state] of states) {
      for (const [item, cost] of seeker.costs) {
        if ((mask & (1 << item)) === 0) offer(mask | (1 << item), state.count + 1, state.cost + cost, item, state);
      }
      offer(mask, state.count, state.cost, null, state);
    }
    states = next;
  }
  let best = states.values().next().value ?? NOBODY_YET;
  for (const state of states.values()) if (isBetter(state.count, state.cost, best)) best = state;
  const taken = choicesOf(best);
  return { taken, proofs: proveMissing(itemCount, seekers, taken) };
}

/** More items covered, or as many for less. */
function isBetter(count: number, cost: number, than: State): boolean {
  return count > than.count || (count === than.count && cost < than.cost);
}

/** What each seeker took, the first one first. */
function choicesOf(last: State): readonly (number | null)[] {
  const choices: (number | null)[] = [];
  for (let state = last; state.before !== null; state = state.before) choices.push(state.choice);
  return choices.reverse();
}

/**
 * For every item left over, the items and seekers reached from it by alternating steps (Hall's theorem): every such seeker
 * already has one of these items, so there is one item more than there are seekers. Overlapping sets are told as one.
 */
function proveMissing(itemCount: number, seekers: readonly Seeker[], taken: Matching['taken']): Matching['proofs'] {
  const covered = new Set(taken);
  const groups: { items: Set<number>; seekers: Set<number> }[] = [];
  for (let item = 0; item < itemCount; item += 1) {
    if (covered.has(item)) continue;
    const group = reachFrom(item, seekers, taken);
    for (const other of groups.filter((each) => [...each.items].some((one) => group.items.has(one)))) {
      other.items.forEach((one) => group.items.add(one));
      other.seekers.forEach((one) => group.seekers.add(one));
      groups.splice(groups.indexOf(other), 1);
    }
    groups.push(group);
  }
  const ascending = (set: ReadonlySet<number>): readonly number[] => [...set].sort((a, b) => a - b);
  return new Map(
    groups.flatMap((group) =>
      ascending(group.items)
        .filter((item) => !covered.has(item))
        .map((item) => [item, { items: ascending(group.items), seekers: ascending(group.seekers) }] as const),
    ),
  );
}

function reachFrom(
  start: number,
  seekers: readonly Seeker[],
  taken: Matching['taken'],
): { items: Set<number>; seekers: Set<number> } {
  const items = new Set([start]);
  const reached = new Set<number>();
  const queue = [start];
  for (let item = queue.pop(); item !== undefined; item = queue.pop()) {
    for (const [index, seeker] of seekers.entries()) {
      if (reached.has(index) || !seeker.costs.has(item)) continue;
      reached.add(index);
      const has = taken[index];
      if (has === null || has === undefined || items.has(has)) continue;
      items.add(has);
      queue.push(has);
    }
  }
  return { items, seekers: reached };
}
