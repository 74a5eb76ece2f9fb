import { entryAt, type Court, type Failure, type Standing, type Stands } from './court.ts';

/**
 * Why none of the sets does, as short as it gets: findings of which, whichever set is taken, the rule of one still stands in
 * its look. One finding where one look refuses every set for the same rule; else the look that refuses most of the sets
 * that are left, and so on. A look is asked about a set it has not seen as long as analyses are left.
 */
export function shortestProof(failures: readonly Failure[], court: Court): readonly Standing[] {
  const proof: Standing[] = [];
  let open = failures;
  while (open.length > 0) {
    const look = mostFrequent(open.map((each) => each.look));
    const seen = open.map((failure) => ({
      failure,
      stands: failure.look === look ? failure.stands : (court.standingIn(failure.set, look) ?? []),
    }));
    const { stands, list } = mostCommon(seen.map((each) => each.stands));
    proof.push(court.tell(entryAt(seen, list).failure.set, look, stands));
    open = seen.filter((each) => !each.stands.some(({ rule }) => rule === stands.rule)).map(({ failure }) => failure);
  }
  return proof;
}

/** What stands in most of the lists by its rule, as it is first told, and in which of them; of equals the first. */
function mostCommon(lists: readonly (readonly Stands[])[]): { readonly stands: Stands; readonly list: number } {
  const rules = new Map<string, { readonly stands: Stands; readonly list: number; readonly lists: Set<number> }>();
  for (const [list, all] of lists.entries()) {
    for (const stands of all) {
      const known = rules.get(stands.rule);
      if (known === undefined) rules.set(stands.rule, { stands, list, lists: new Set([list]) });
      else known.lists.add(list);
    }
  }
  return entryAt(
    [...rules.values()].sort((a, b) => b.lists.size - a.lists.size),
    0,
  );
}

/** The number that occurs most; of equals the smallest. */
function mostFrequent(numbers: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const each of numbers) counts.set(each, (counts.get(each) ?? 0) + 1);
  return entryAt(
    [...counts].sort(([a, m], [b, n]) => n - m || a - b),
    0,
  )[0];
}
