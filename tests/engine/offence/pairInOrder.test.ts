import { describe, expect, it, vi } from 'vitest';
import { seeded, type Chance } from '../../../scripts/demo/grow/index.ts';
import { asPlayerId, asRoleId } from '../../../src/engine/index.ts';
import type { Threat } from '../../../src/engine/offence/index.ts';
import { pairInOrder } from '../../../src/engine/offence/protections/cover.ts';
import type { RowBody } from '../../../src/engine/offence/row.ts';
import { pairPlainly } from './plainPairing.ts';

const CASES = 20_000;
/** Milliseconds, for a slow machine. */
vi.setConfig({ testTimeout: 120_000 });

/** Up to six blockers and six men, most of them on a coarse grid, so that ways are equal and men stand on one spot. */
function randomCase(chance: Chance): { readonly bodies: readonly RowBody[]; readonly men: readonly Threat[] } {
  const fine = chance.below(4) === 0;
  const x = (): number => (fine ? chance.below(9000) / 1000 : (chance.below(7) * 2) / 3);
  const sorted = (): readonly number[] => Array.from({ length: chance.below(7) }, x).sort((a, b) => a - b);
  return {
    bodies: sorted().map((at, index) => ({
      player: asPlayerId(`P${String(index)}`),
      x: at,
      lineman: true,
      snapper: false,
      leftGap: index,
      rightGap: index + 1,
    })),
    men: sorted().map((at, index) => ({ role: asRoleId(`D${String(index)}`), x: at, y: 1 })),
  };
}

describe('giving men to blockers without crossing', () => {
  it(`pairs the same men as trying everything, ${CASES} cases`, () => {
    const chance = seeded(11);
    let pairs = 0;
    for (let index = 0; index < CASES; index += 1) {
      const { bodies, men } = randomCase(chance);
      const found = pairInOrder(bodies, men);
      pairs += found.length;
      expect(found, `case ${index}`).toEqual(pairPlainly(bodies, men));
    }
    // There must be much to pair, or the loop above says nothing.
    expect(pairs).toBeGreaterThan(CASES);
  });
});
