/** Somebody who may take one of these items, the cheaper the more natural. Costs are whole numbers. */
export interface Seeker {
  readonly name: string;
  /** Index of an item → cost. Items not in the map are out of his reach. */
  readonly costs: ReadonlyMap<number, number>;
}

/** Which item each seeker got (null: none), and for every item nobody got, the set that proves it. */
export interface Matching {
  readonly taken: readonly (number | null)[];
  readonly proofs: ReadonlyMap<number, { readonly items: readonly number[]; readonly seekers: readonly number[] }>;
}

/**
 * The assignment that covers the most items, and among those the cheapest. Among equals the one found first in the given order
 * wins, so order the input by sense; `bestChoices` says what is found first.
 */
export function matchSeekers(itemCount: number, seekers: readonly Seeker[]): Matching {
  const taken =
    itemCount === 0
      ? seekers.map(() => null)
      : itemCount === 1
        ? cheapestOnly(seekers)
        : (firstChoices(seekers) ?? bestChoices(itemCount, seekers));
  return { taken, proofs: proveMissing(itemCount, seekers, taken) };
}

/** The only item there is goes to the cheapest, the first of them. */
function cheapestOnly(seekers: readonly Seeker[]): Matching['taken'] {
  let least = Infinity;
  let winner = -1;
  seekers.forEach(({ costs }, index) => {
    const cost = costs.get(0) ?? Infinity;
    if (cost >= least) return;
    least = cost;
    winner = index;
  });
  return seekers.map((_, index) => (index === winner ? 0 : null));
}

/**
 * Everybody's cheapest item, if nobody has two of them and no two seekers the same one: nothing else covers as many for as
 * little. Null: somebody has to give way, or to choose.
 */
function firstChoices(seekers: readonly Seeker[]): Matching['taken'] | null {
  const choices: (number | null)[] = [];
  for (const { costs } of seekers) {
    let least = Infinity;
    let choice: number | null = null;
    let isOnly = true;
    for (const [item, cost] of costs) {
      if (cost > least) continue;
      isOnly = cost < least;
      least = cost;
      choice = item;
    }
    if (!isOnly || (choice !== null && choices.includes(choice))) return null;
    choices.push(choice);
  }
  return choices;
}

/** Items and their costs for one seeker, place by place. */
interface Offer {
  readonly items: readonly number[];
  readonly costs: readonly number[];
}

/** In place of an item: he takes none. */
const NONE = -1;

/**
 * The best assignment, exactly, by dynamic programming over the set of covered items (at most 14 gaps); a set is a number with
 * a bit for each item. After each seeker every set that can be covered by then is listed once, in the order in which it was
 * found: the sets before him in their order, for each of them his items in his order, then that he takes none. Of equally cheap
 * ways to a set the first found stays, and in the end of equally good sets.
 */
function bestChoices(itemCount: number, seekers: readonly Seeker[]): Matching['taken'] {
  // Whoever reaches nothing changes nothing.
  const offers = seekers
    .filter(({ costs }) => costs.size > 0)
    .map(({ costs }): Offer => ({ items: [...costs.keys()], costs: [...costs.values()] }));
  const sets = 1 << itemCount;
  const surely = surelyCovered(offers);
  /** What each seeker takes on the cheapest way to each set. */
  const choices = new Array<number>(offers.length * sets);
  const least = filled(sets, Infinity);
  let found = [0];
  let costs = [0];
  offers.forEach((offer, seeker) => {
    // Too few covered to be among the best at the end: left out with all that would follow, so the others keep their order.
    const enough = surely - (offers.length - 1 - seeker);
    const next: number[] = [];
    const reach = (set: number, cost: number, choice: number): void => {
      const known = least[set] ?? Infinity;
      if (cost >= known) return;
      if (known === Infinity) next.push(set);
      least[set] = cost;
      choices[seeker * sets + set] = choice;
    };
    for (let at = 0; at < found.length; at += 1) {
      const set = found[at] ?? 0;
      const cost = costs[at] ?? 0;
      const spare = countOf(set) - enough;
      for (let each = 0; spare >= -1 && each < offer.items.length; each += 1) {
        const item = offer.items[each] ?? 0;
        if ((set & (1 << item)) === 0) reach(set | (1 << item), cost + (offer.costs[each] ?? 0), item);
      }
      if (spare >= 0) reach(set, cost, NONE);
    }
    found = next;
    costs = next.map((set) => least[set] ?? 0);
    for (const set of next) least[set] = Infinity;
  });
  return choicesTo(bestOf(found, costs), choices, sets, seekers);
}

/** The set that covers most, and among those the cheapest; the first of equals. */
function bestOf(found: readonly number[], costs: readonly number[]): number {
  let best = 0;
  for (let at = 1; at < found.length; at += 1) {
    const more = countOf(found[at] ?? 0) - countOf(found[best] ?? 0);
    if (more > 0 || (more === 0 && (costs[at] ?? 0) < (costs[best] ?? 0))) best = at;
  }
  return found[best] ?? 0;
}

/** What each seeker took on the cheapest way to a set, told from the last one back. */
function choicesTo(
  set: number,
  choices: readonly number[],
  sets: number,
  seekers: readonly Seeker[],
): Matching['taken'] {
  const taken: (number | null)[] = [];
  let left = set;
  let row = choices.length;
  for (let index = seekers.length - 1; index >= 0; index -= 1) {
    if (seekers[index]?.costs.size === 0) {
      taken.push(null);
      continue;
    }
    row -= sets;
    const item = choices[row + left] ?? NONE;
    taken.push(item === NONE ? null : item);
    if (item !== NONE) left ^= 1 << item;
  }
  return taken.reverse();
}

/** How many items are covered if each takes the first one that is left. */
function surelyCovered(offers: readonly Offer[]): number {
  let set = 0;
  for (const { items } of offers) {
    for (const item of items) {
      if ((set & (1 << item)) !== 0) continue;
      set |= 1 << item;
      break;
    }
  }
  return countOf(set);
}

/** How many items are in a set. */
function countOf(set: number): number {
  let count = 0;
  for (let left = set; left !== 0; left &= left - 1) count += 1;
  return count;
}

function filled(length: number, value: number): number[] {
  const list = new Array<number>(length);
  for (let at = 0; at < length; at += 1) list[at] = value;
  return list;
}

/**
 * For every item left over, the items and seekers reached from it by alternating steps (Hall's theorem): every such seeker
 * already has one of these items, so there is one item more than there are seekers. Overlapping sets are told as one.
 */
function proveMissing(itemCount: number, seekers: readonly Seeker[], taken: Matching['taken']): Matching['proofs'] {
  const missing = placesOf(itemCount, (item) => !taken.includes(item));
  if (missing.length === 0) return NOTHING_MISSING;
  const reach = seekers.map(({ costs }) => setOf(costs.keys()));
  let groups: readonly number[] = [];
  for (const item of missing) {
    const own = reachedFrom(item, reach, taken);
    const together = groups.reduce((all, other) => ((other & own) === 0 ? all : all | other), own);
    groups = [...groups.filter((other) => (other & own) === 0), together];
  }
  const proofs = new Map<number, { readonly items: readonly number[]; readonly seekers: readonly number[] }>();
  for (const group of groups) {
    const proof = {
      items: placesOf(itemCount, (item) => (group & (1 << item)) !== 0),
      seekers: placesOf(reach.length, (seeker) => ((reach[seeker] ?? 0) & group) !== 0),
    };
    for (const item of missing) if ((group & (1 << item)) !== 0) proofs.set(item, proof);
  }
  return proofs;
}

const NOTHING_MISSING: Matching['proofs'] = new Map();

/** The places below an end that something holds for. */
function placesOf(end: number, holds: (place: number) => boolean): readonly number[] {
  const places: number[] = [];
  for (let place = 0; place < end; place += 1) if (holds(place)) places.push(place);
  return places;
}

/** Items as a set: a number with a bit for each. */
function setOf(items: Iterable<number>): number {
  let set = 0;
  for (const item of items) set |= 1 << item;
  return set;
}

/** The items reached from one: whatever is taken by a seeker who could take one of them is one of them. */
function reachedFrom(start: number, reach: readonly number[], taken: Matching['taken']): number {
  let items = 1 << start;
  for (let before = 0; before !== items;) {
    before = items;
    for (const [seeker, item] of taken.entries()) {
      if (item !== null && ((reach[seeker] ?? 0) & items) !== 0) items |= 1 << item;
    }
  }
  return items;
}
