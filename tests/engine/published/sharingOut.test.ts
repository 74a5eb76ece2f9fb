import { munkres } from 'munkres';
import { beforeAll, describe, expect, it } from 'vitest';
import { matchSeekers, type Matching, type Seeker } from '../../../src/engine/complete/matchGaps.ts';

/*
 * The sharing out of gaps, zones and receivers against somebody else's program: the Hungarian method of npm's munkres 2.0.4
 * (M. Rojas, MIT licence), after J. Munkres, "Algorithms for the Assignment and Transportation Problems", Journal of the
 * Society for Industrial and Applied Mathematics, 1957. It knows nothing of football and shares no line with the engine.
 */
const CASES = 24_000;

/** A linear congruential generator (the constants of "Numerical Recipes", 1992), so that a case is its number. */
function generator(seed: number): (below: number) => number {
  let state = (Math.imul(seed, 0x9e3779b9) ^ 0x5bd1e995) >>> 0;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  next();
  return (below) => Math.floor(next() * below);
}

interface Case {
  readonly seed: number;
  readonly items: number;
  readonly seekers: readonly Seeker[];
}

/** Costs as the engine makes them: small ranks full of ties, distances, a rank with a distance on top. */
const PRICES: readonly ((below: (limit: number) => number) => number)[] = [
  (below) => below(3),
  (below) => below(20_000),
  (below) => below(4) * 100_000 + below(20_000),
  (below) => below(2) * 10_000_000 + below(4) * 100_000 + below(20_000),
];

/** One case in so many is as large as a goal-line look: fourteen gaps, eleven men and one who plays two. */
const LARGE = 4000;

function randomCase(seed: number): Case {
  const below = generator(seed);
  const large = seed % LARGE === LARGE - 1;
  const items = large ? 10 + below(5) : below(9);
  const price = PRICES[below(PRICES.length)];
  const reach = 1 + below(6);
  const seekers = Array.from({ length: large ? 12 : below(10) }, (_, index) => ({
    name: `man ${index}`,
    costs: new Map(
      Array.from({ length: items }, (_unused, item) => [item, price?.(below) ?? 0] as const).filter(
        () => below(6) < reach,
      ),
    ),
  }));
  return { seed, items, seekers };
}

interface Size {
  readonly count: number;
  readonly cost: number;
}

/** Dearer than all of a case's items together, so that the library takes an item out of reach only when it must. */
const OUT_OF_REACH = 10 ** 9;

function byLibrary({ items, seekers }: Case): Size {
  if (items === 0 || seekers.length === 0) return { count: 0, cost: 0 };
  const table = seekers.map(({ costs }) => Array.from({ length: items }, (_, item) => costs.get(item) ?? OUT_OF_REACH));
  const costs = munkres(table).flatMap(([man, item]) => seekers[man]?.costs.get(item) ?? []);
  return { count: costs.length, cost: costs.reduce((sum, cost) => sum + cost, 0) };
}

function byEngine({ seekers }: Case, { taken }: Matching): Size {
  const costs = taken.flatMap((item, man) => (item === null ? [] : [seekers[man]?.costs.get(item) ?? NaN]));
  return { count: costs.length, cost: costs.reduce((sum, cost) => sum + cost, 0) };
}

describe(`sharing out, ${CASES} cases`, () => {
  const solved: { readonly each: Case; readonly matching: Matching; readonly best: Size }[] = [];
  const seedsWhere = (wrong: (one: (typeof solved)[number]) => boolean): readonly number[] =>
    solved.filter(wrong).map(({ each }) => each.seed);

  beforeAll(() => {
    for (let seed = 0; seed < CASES; seed += 1) {
      const each = randomCase(seed);
      solved.push({ each, matching: matchSeekers(each.items, each.seekers), best: byLibrary(each) });
    }
  }, 180_000);

  it('covers as many items as the library can, at the same cost', () => {
    const wrong = seedsWhere(({ each, matching, best }) => {
      const ours = byEngine(each, matching);
      return ours.count !== best.count || ours.cost !== best.cost;
    });
    expect(wrong).toEqual([]);
  });

  it('gives nobody an item out of his reach, and no item twice', () => {
    const wrong = seedsWhere(({ each, matching: { taken } }) => {
      const given = taken.filter((item) => item !== null);
      const beyond = taken.some((item, man) => item !== null && each.seekers[man]?.costs.has(item) !== true);
      return beyond || taken.length !== each.seekers.length || new Set(given).size !== given.length;
    });
    expect(wrong).toEqual([]);
  });

  it('has a proof for every item nobody got, and only for those', () => {
    const wrong = seedsWhere(({ each, matching: { taken, proofs } }) => {
      const open = Array.from({ length: each.items }, (_, item) => item).filter((item) => !taken.includes(item));
      return [...proofs.keys()].toSorted((a, b) => a - b).join() !== open.join();
    });
    expect(wrong).toEqual([]);
  });

  /*
   * P. Hall, "On Representatives of Subsets", Journal of the London Mathematical Society, 1935: items that fewer men can
   * reach than there are items. That the shortfalls of all sets add up to the items left over is the theorem's other half
   * (O. Ore, "Graphs and Matching Theorems", Duke Mathematical Journal, 1955): no set explains more than is missing.
   */
  it('each proof is a set of more items than men who reach it, and together they explain all that is missing', () => {
    let sets = 0;
    const wrong = seedsWhere(({ each, matching: { proofs }, best }) => {
      const distinct = new Map([...proofs].map(([item, proof]) => [proof.items.join(), { item, proof }]));
      let missing = 0;
      for (const { item, proof } of distinct.values()) {
        const reach = each.seekers.flatMap(({ costs }, man) =>
          proof.items.some((one) => costs.has(one)) ? [man] : [],
        );
        const holds = proof.items.includes(item) && reach.join() === proof.seekers.join();
        if (!holds || proof.items.length <= reach.length) return true;
        missing += proof.items.length - reach.length;
        sets += 1;
      }
      return missing !== each.items - best.count;
    });
    expect(wrong).toEqual([]);
    // Without many open items the loop above would say nothing.
    expect(sets).toBeGreaterThan(CASES / 4);
  });
});
