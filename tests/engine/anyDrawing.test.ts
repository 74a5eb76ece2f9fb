import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import {
  analyse,
  asLookId,
  asPlayerId,
  gapKey,
  mirrorSetup,
  OFFENCE_KINDS,
  PLACES,
  RULE_LEVELS,
  TURNS,
  type Look,
  type Setup,
} from '../../src/engine/index.ts';
import { openDocument } from '../../src/document/index.ts';
import { frozen, read } from './book.ts';
import { digest } from './digest.ts';

/*
 * Whatever a coach drags on the board is answered, however absurd, with the invented team's fronts and pressures: the engine
 * never breaks, and its answer holds together.
 */
const book = read(openDocument(readFileSync(new URL('../../demo-data/playbook.json', import.meta.url), 'utf8')));

/** Milliseconds: many questions in each test, perhaps on a slow machine. */
vi.setConfig({ testTimeout: 120_000 });

const OTHERS = OFFENCE_KINDS.filter((kind) => kind !== 'snapper');

/** Near the ball as well as far from it, on round and on crooked places. No -0: the document knows none. */
const across = fc
  .oneof(
    fc.integer({ min: -52, max: 52 }).map((half) => half / 2),
    fc.double({ min: -8, max: 8, noNaN: true }),
  )
  .map((x) => (x === 0 ? 0 : x));
const behind = fc.oneof(fc.constantFrom(-0.6, -1.1, -1.5, -5, -7), fc.double({ min: -8, max: 0, noNaN: true }));
/** Nobody but the snapper stands on the ball itself: there is no left and right to him. */
const anyMan = fc
  .record({ kind: fc.constantFrom(...OTHERS), x: across, y: behind })
  .map((man) => (man.x === 0 && man.y >= -1 ? { ...man, x: 1 } : man));
const anyLook: fc.Arbitrary<Look> = fc.array(anyMan, { minLength: 10, maxLength: 10 }).map((men) => ({
  id: asLookId('drawn'),
  name: 'drawn',
  players: [
    { id: asPlayerId('C'), letter: 'C', kind: 'snapper', x: 0, y: -0.4 },
    ...men.map(({ kind, x, y }, index) => ({
      id: asPlayerId(`P${index}`),
      letter: 'P',
      kind,
      x,
      y: y === 0 ? 0 : y,
    })),
  ],
  motion: null,
  runs: [],
  protections: [],
}));

const anySetup: fc.Arbitrary<Setup> = fc
  .record({
    look: anyLook,
    level: fc.constantFrom(...RULE_LEVELS),
    spot: fc.constantFrom(...PLACES),
    front: fc.constantFrom(...book.fronts),
    first: fc.constantFrom(...book.pressures),
    second: fc.option(fc.constantFrom(...book.pressures), { nil: null }),
    turn: fc.constantFrom(...TURNS),
    coverage: fc.constantFrom(...book.coverages),
    hands: fc.array(fc.record({ man: fc.nat(10), x: across, y: fc.double({ min: -1, max: 15, noNaN: true }) }), {
      maxLength: 3,
    }),
  })
  .map(({ front, look, hands, ...rest }) => {
    const byHand = hands.flatMap(({ man, x, y }) => {
      const entry = front.roles[man];
      return entry === undefined ? [] : [{ look: look.id, role: entry.role, x, y: y === 0 ? 0 : y }];
    });
    return frozen({
      ...rest,
      look,
      roles: book.roles,
      front: { ...front, byHand },
      combination: { kind: 'together' as const },
      secondCoverage: null,
      waivers: [],
      dictionary: [],
      checkOut: null,
      rushers: null,
    });
  });

describe('any drawing', () => {
  it('is answered, and the answer holds together', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        const { facts, gaps, assignments, findings } = analyse(setup);
        // As many gaps as bodies on each side, the snapper on both, up to the seventh letter.
        const bodies = [facts.surface.left, facts.surface.right].map(({ length }) => Math.min(length, 7));
        expect(gaps).toHaveLength(bodies.reduce((sum, count) => sum + count, 0));
        expect(assignments).toHaveLength(11);
        for (const { gap, owners, proof } of gaps) {
          // Somebody has it, or a set proves that nobody is left for it.
          expect(owners.length === 0).toBe(proof !== null);
          expect(new Set(owners.map(({ role }) => role)).size).toBe(owners.length);
          if (proof !== null) expect(proof.gaps.map(gapKey)).toContain(gapKey(gap));
        }
        for (const { aligned, combined, run } of assignments) {
          const his = gaps.filter(({ owners }) => owners.some(({ role }) => role === aligned.role.id));
          if (combined.status !== 'conflict') expect(run.gaps).toEqual(his.map(({ gap }) => gap));
          expect(run.twoGaps ? run.gaps.length : 2).toBeGreaterThan(1);
        }
        const open = gaps.filter(({ proof }) => proof !== null).length;
        const told = findings.filter(({ rule }) => rule === 'gap.open').flatMap(({ gaps: about }) => about);
        expect(told).toHaveLength(open);
      }),
      { numRuns: 600, seed: 20261 },
    );
  });

  it('flipped left to right gets the flipped answer', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        expect(digest(analyse(mirrorSetup(setup)), true)).toBe(digest(analyse(setup), false));
      }),
      { numRuns: 600, seed: 20262 },
    );
  });
});
