import { describe, expect, it, vi } from 'vitest';
import { seeded, type Chance } from '../../../scripts/demo/grow/index.ts';
import { matchSeekers, type Seeker } from '../../../src/engine/complete/matchGaps.ts';
import { matchPlainly } from './plainMatching.ts';

const CASES = 24_000;
/** Milliseconds, for a slow machine. */
vi.setConfig({ testTimeout: 240_000 });

interface Case {
  readonly items: number;
  readonly seekers: readonly Seeker[];
}

/**
 * Up to ten items and nine seekers, some who reach nothing, some who are there twice as a two-gap man is, their items in any
 * order. Costs are few on purpose in most cases: a tie is where two exact methods part.
 */
function randomCase(chance: Chance): Case {
  const items = chance.below(chance.below(8) === 0 ? 11 : 6);
  const reach = 1 + chance.below(8);
  const dearest = chance.pick([1, 2, 3, 6, 100_000]);
  const seekers: Seeker[] = [];
  const most = chance.below(10);
  while (seekers.length < most) {
    const costs: [number, number][] = [];
    for (let item = 0; item < items; item += 1) {
      if (chance.below(8) < reach) costs.splice(chance.below(costs.length + 1), 0, [item, chance.below(dearest)]);
    }
    const seeker = { name: 'he', costs: new Map(costs) };
    seekers.push(seeker);
    if (chance.below(5) === 0 && seekers.length < most) seekers.push(seeker);
  }
  return { items, seekers };
}

/** How many best assignments there are, up to two: whether a tie had to be broken. */
function isTied({ seekers }: Case, count: number, cost: number): boolean {
  let ways = 0;
  const used = new Set<number>();
  const attempt = (index: number, left: number, paid: number): void => {
    const next = seekers[index];
    if (ways > 1 || paid > cost || left > seekers.length - index) return;
    if (next === undefined) {
      if (paid === cost) ways += 1;
      return;
    }
    attempt(index + 1, left, paid);
    for (const [item, price] of next.costs) {
      if (used.has(item)) continue;
      used.add(item);
      attempt(index + 1, left - 1, paid + price);
      used.delete(item);
    }
  };
  attempt(0, count, 0);
  return ways > 1;
}

describe(`the lean sharing out against the plain one, ${CASES} cases`, () => {
  it('gives the same men the same items, with the same proofs in the same order', () => {
    const chance = seeded(7);
    let [proofs, ties] = [0, 0];
    for (let index = 0; index < CASES; index += 1) {
      const each = randomCase(chance);
      const plain = matchPlainly(each.items, each.seekers);
      const lean = matchSeekers(each.items, each.seekers);
      expect({ taken: lean.taken, proofs: [...lean.proofs] }, `case ${index}`).toEqual({
        taken: plain.taken,
        proofs: [...plain.proofs],
      });
      proofs += plain.proofs.size;
      if (index % 10 > 0) continue;
      const prices = plain.taken.flatMap((item, at) => (item === null ? [] : [each.seekers[at]?.costs.get(item) ?? 0]));
      const paid = prices.reduce((sum, price) => sum + price, 0);
      if (isTied(each, prices.length, paid)) ties += 1;
    }
    // There must be much to prove and many ties to break, or the loop above says little.
    expect(proofs).toBeGreaterThan(CASES / 2);
    expect(ties).toBeGreaterThan(CASES / 40);
  });
});
