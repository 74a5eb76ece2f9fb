/**
 * `mend` against brute force on 300 small random calls of the grown playbook: the same number of edits at least, or both say
 * there is none. Brute force tries every set of up to as many edits in every look and leaves out nothing.
 */
import { describe, expect, it } from 'vitest';
import { grow, seeded, type Chance } from '../../../scripts/demo/grow/index.ts';
import { toSetup } from '../../../src/document/index.ts';
import { analyse, PLACES, TURNS, type Setup } from '../../../src/engine/index.ts';
import { candidatesFor, mend, type Edit, type MendBudget } from '../../../src/engine/edits/index.ts';
import { pairCall, pressuresOf } from '../../../src/menu/index.ts';
import { demo } from '../../store/demo.ts';
import { fewestEdits } from './bruteForce.ts';

const CASES = 300;
const playbook = grow(demo(), { pressures: 40, looks: 40, calls: 40 }, 21);
const library = { coverages: playbook.coverages };

/** Turning and swapping may mend anything, and undo each other; the rest is what the findings ask for. */
const ALWAYS: readonly Edit[] = [...TURNS.map((turn): Edit => ({ kind: 'turn', turn })), { kind: 'swap' }];

interface Case {
  readonly setups: readonly Setup[];
  readonly pool: readonly Edit[];
  readonly edits: MendBudget['edits'];
}

/** A random pair in one look or two, and a handful of edits; up to three of them in every fourth case. */
function smallCase(chance: Chance, at: number): Case {
  const front = chance.pick(playbook.fronts);
  const here = pressuresOf(playbook, front.id);
  const [first, second] = [chance.pick(here), chance.pick(here)];
  if (first === second) return smallCase(chance, at);
  const call = pairCall(front.id, first, second, chance.pick(TURNS));
  const spot = chance.pick(PLACES);
  const setups = Array.from({ length: chance.below(3) === 0 ? 2 : 1 }, () => {
    const setup = toSetup(playbook, { call, look: chance.pick(playbook.looks).id, spot });
    if (!setup.ok) throw new Error(setup.problem.path);
    return setup.value;
  });
  // The same look twice is one look.
  if (setups.length === 2 && setups[0]?.look === setups[1]?.look) return smallCase(chance, at);
  const analyses = setups.map((setup) => analyse(setup));
  const stops = analyses.flatMap((analysis) =>
    analysis.findings.flatMap((finding) => (finding.severity === 'stop' ? [{ analysis, finding }] : [])),
  );
  // With more stops than edits there is seldom anything to find, with fewer than two seldom more than one edit.
  if (stops.length > 3 || (stops.length < 2 && chance.below(3) > 0)) return smallCase(chance, at);
  const pool = stops.slice(0, 2).flatMap(({ analysis, finding }) => {
    const natural = candidatesFor(finding, analysis, library).edits;
    return natural.length === 0 ? [] : [chance.pick(natural), chance.pick(natural)];
  });
  return { setups, pool: [...new Set([...pool, chance.pick(ALWAYS)])], edits: at % 4 === 0 ? 3 : 2 };
}

describe('mend and brute force', () => {
  it(`agree on ${CASES} small calls`, () => {
    const chance = seeded(9);
    const answers = new Map<number | null, number>();
    const differ: unknown[] = [];
    for (let at = 0; at < CASES; at += 1) {
      const { setups, pool, edits } = smallCase(chance, at);
      const fewest = fewestEdits(setups, pool, edits);
      const mending = mend(setups, pool, { analyses: 10_000, edits, sets: 1 });
      const found = mending.kind === 'found' ? (mending.sets[0]?.length ?? -1) : mending.kind === 'none' ? null : -1;
      if (found !== fewest) differ.push([at, found, fewest, setups[0]?.first.name, setups[0]?.second?.name]);
      answers.set(fewest, (answers.get(fewest) ?? 0) + 1);
    }
    expect(differ).toEqual([]);
    // One edit, two, and none at all: each of them often enough.
    const often = [1, 2, null].map((fewest) => [fewest, (answers.get(fewest) ?? 0) >= CASES / 30] as const);
    expect([often, [...answers]]).toEqual([often.map(([fewest]) => [fewest, true]), [...answers]]);
  }, 120_000);
});
