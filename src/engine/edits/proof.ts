import type { Finding } from '../types/index.ts';
import { entryAt, type Court, type Failure, type Standing } from './court.ts';

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
    const finding = mostCommon(seen.map((each) => each.stands));
    proof.push(court.tell(look, finding));
    open = seen.filter(({ stands }) => !stands.some(({ rule }) => rule === finding.rule)).map(({ failure }) => failure);
  }
  return proof;
}

/** The finding whose rule stands in most of the lists, as it is first told; of equals the first. */
function mostCommon(lists: readonly (readonly Finding[])[]): Finding {
  const rules = new Map<string, { readonly finding: Finding; readonly lists: Set<number> }>();
  for (const [index, list] of lists.entries()) {
    for (const finding of list) {
      const known = rules.get(finding.rule);
      if (known === undefined) rules.set(finding.rule, { finding, lists: new Set([index]) });
      else known.lists.add(index);
    }
  }
  return entryAt(
    [...rules.values()].sort((a, b) => b.lists.size - a.lists.size),
    0,
  ).finding;
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
