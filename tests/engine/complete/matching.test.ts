import { describe, expect, it, vi } from 'vitest';
import { matchSeekers, type Seeker } from '../../../src/engine/complete/matchGaps.ts';

const seeker = (...costs: readonly (readonly [item: number, cost: number])[]): Seeker => ({
  name: 'he',
  costs: new Map(costs),
});

interface Row {
  readonly name: string;
  readonly items: number;
  readonly seekers: readonly Seeker[];
  readonly taken: readonly (number | null)[];
  /** Item → items and seekers of its proof. */
  readonly proofs: Readonly<Record<number, readonly [items: readonly number[], seekers: readonly number[]]>>;
}

const ROWS: readonly Row[] = [
  { name: 'nothing to take, nobody to take it', items: 0, seekers: [], taken: [], proofs: {} },
  { name: 'nothing to take', items: 0, seekers: [seeker(), seeker()], taken: [null, null], proofs: {} },
  {
    name: 'nobody to take it: proved by itself',
    items: 1,
    seekers: [],
    taken: [],
    proofs: { 0: [[0], []] },
  },
  { name: 'one for one', items: 1, seekers: [seeker([0, 5])], taken: [0], proofs: {} },
  { name: 'the nearer of two men', items: 1, seekers: [seeker([0, 5]), seeker([0, 4])], taken: [null, 0], proofs: {} },
  {
    name: 'equally near: the first in order',
    items: 1,
    seekers: [seeker([0, 5]), seeker([0, 5])],
    taken: [0, null],
    proofs: {},
  },
  {
    name: 'the nearer of two gaps, if that is all',
    items: 2,
    seekers: [seeker([0, 5], [1, 4])],
    taken: [1],
    proofs: { 0: [[0, 1], [0]] },
  },
  {
    name: 'more gaps beat nearer gaps',
    items: 2,
    seekers: [seeker([0, 1], [1, 900]), seeker([0, 800])],
    taken: [1, 0],
    proofs: {},
  },
  {
    name: 'a chain gives way along its whole length',
    items: 3,
    seekers: [seeker([0, 1], [1, 2]), seeker([1, 1], [2, 2]), seeker([0, 1])],
    taken: [1, 2, 0],
    proofs: {},
  },
  {
    name: 'out of everybody’s reach',
    items: 2,
    seekers: [seeker([0, 1]), seeker([0, 1])],
    taken: [0, null],
    proofs: { 1: [[1], []] },
  },
  {
    name: 'three gaps only two men can reach: one proof for both ways to leave one',
    items: 3,
    seekers: [seeker([0, 1], [1, 1], [2, 9]), seeker([0, 1], [1, 1], [2, 9])],
    taken: [0, 1],
    proofs: {
      2: [
        [0, 1, 2],
        [0, 1],
      ],
    },
  },
  {
    name: 'two open gaps that share a man are proved together, one that does not is proved apart',
    items: 4,
    seekers: [seeker([0, 1], [1, 2], [2, 3])],
    taken: [0],
    proofs: { 1: [[0, 1, 2], [0]], 2: [[0, 1, 2], [0]], 3: [[3], []] },
  },
];

describe('sharing out', () => {
  it.each(ROWS)('$name', ({ items, seekers, taken, proofs }) => {
    const matching = matchSeekers(items, seekers);
    expect(matching.taken).toEqual(taken);
    const told = [...matching.proofs].map(([item, proof]) => [String(item), [proof.items, proof.seekers]] as const);
    expect(Object.fromEntries(told)).toEqual(proofs);
  });
});

/** A small seeded generator (mulberry32, public domain), so that a failure can be repeated by its number. */
function generator(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

interface Case {
  readonly items: number;
  readonly seekers: readonly Seeker[];
}

function randomCase(seed: number): Case {
  const below = generator(seed);
  const items = 1 + below(5);
  const reach = 1 + below(4);
  // Few different costs on purpose: ties are where an exact method can go wrong unseen.
  const dearest = 1 + below(6);
  const seekers = Array.from({ length: below(6) }, () =>
    seeker(
      ...Array.from({ length: items }, (_, item) => [item, below(dearest)] as const).filter(() => below(4) < reach),
    ),
  );
  return { items, seekers };
}

/** The best there is, by trying every assignment: most items first, then least cost. */
function tryEverything({ seekers }: Case): { readonly count: number; readonly cost: number } {
  let best = { count: 0, cost: 0 };
  const used = new Set<number>();
  const attempt = (index: number, count: number, cost: number): void => {
    const next = seekers[index];
    if (next === undefined) {
      if (count > best.count || (count === best.count && cost < best.cost)) best = { count, cost };
      return;
    }
    attempt(index + 1, count, cost);
    for (const [item, price] of next.costs) {
      if (used.has(item)) continue;
      used.add(item);
      attempt(index + 1, count + 1, cost + price);
      used.delete(item);
    }
  };
  attempt(0, 0, 0);
  return best;
}

const CASES = 3000;
/** Milliseconds, for a slow machine. */
vi.setConfig({ testTimeout: 120_000 });

describe(`against trying every assignment, ${CASES} cases`, () => {
  const cases = Array.from({ length: CASES }, (_, seed) => ({ seed, ...randomCase(seed) }));

  it('every man gets at most one item, one he can reach, and no item goes twice', () => {
    for (const { seed, items, seekers } of cases) {
      const { taken } = matchSeekers(items, seekers);
      const given = taken.filter((item) => item !== null);
      expect(taken, `case ${seed}`).toHaveLength(seekers.length);
      expect(new Set(given).size, `case ${seed}`).toBe(given.length);
      taken.forEach((item, index) => {
        if (item !== null) expect(seekers[index]?.costs.has(item), `case ${seed}`).toBe(true);
      });
    }
  });

  it('covers as much, as cheaply, as the best of all', () => {
    for (const each of cases) {
      const { taken } = matchSeekers(each.items, each.seekers);
      const costs = taken.flatMap((item, index) =>
        item === null ? [] : [each.seekers[index]?.costs.get(item) ?? NaN],
      );
      const found = { count: costs.length, cost: costs.reduce((sum, cost) => sum + cost, 0) };
      expect(found, `case ${each.seed}`).toEqual(tryEverything(each));
    }
  });

  /*
   * P. Hall, "On Representatives of Subsets", Journal of the London Mathematical Society, 1935: a set of items that fewer
   * men can reach than there are items in it is the reason why not all can be covered.
   */
  it('proves every item nobody got, and only those, by a set with more items than men who reach it', () => {
    let proved = 0;
    for (const { seed, items, seekers } of cases) {
      const { taken, proofs } = matchSeekers(items, seekers);
      const open = Array.from({ length: items }, (_, item) => item).filter((item) => !taken.includes(item));
      expect([...proofs.keys()].sort(), `case ${seed}`).toEqual(open);
      for (const [item, proof] of proofs) {
        const reach = seekers.flatMap(({ costs }, index) => (proof.items.some((one) => costs.has(one)) ? [index] : []));
        expect(proof.items, `case ${seed}`).toContain(item);
        expect(proof.seekers, `case ${seed}`).toEqual(reach);
        const short = proof.items.length - proof.seekers.length;
        expect(short, `case ${seed}`).toBe(proof.items.filter((one) => open.includes(one)).length);
        proved += 1;
      }
    }
    // The table of cases must show many open items, or the loop above says nothing.
    expect(proved).toBeGreaterThan(1000);
  });

  it('gives the same answer twice', () => {
    for (const { seed, items, seekers } of cases.slice(0, 300)) {
      expect(matchSeekers(items, seekers), `case ${seed}`).toEqual(matchSeekers(items, seekers));
    }
  });
});
