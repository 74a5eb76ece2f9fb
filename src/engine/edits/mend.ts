import type { Setup } from '../types/index.ts';
import { entryAt, openCourt, type Failure, type Standing } from './court.ts';
import type { Edit } from './edit.ts';
import { setsOf } from './editSets.ts';
import { shortestProof } from './proof.ts';

/** How far a search may go. */
export interface MendBudget {
  /** Analyses at most, those of the unchanged setups included. */
  readonly analyses: number;
  /** Edits in one set at most: three are searched only as long as analyses are left. */
  readonly edits: 1 | 2 | 3;
  /** How many sets are wanted at most. */
  readonly sets: number;
}

/** What came of a search over many looks. */
export type Mending =
  /**
   * Sets of edits that mend the call in every look, all with the fewest edits there can be, the smallest change first.
   * `complete`: there is no other set of so few. One empty set: nothing has to be mended.
   */
  | {
      readonly kind: 'found';
      readonly sets: readonly (readonly Edit[])[];
      readonly complete: boolean;
      readonly analyses: number;
    }
  /** No set of up to `within` of the given edits mends it; whichever is taken, one of the findings of the proof stands. */
  | { readonly kind: 'none'; readonly within: number; readonly proof: readonly Standing[]; readonly analyses: number }
  /** The budget ran out before all pairs were tried; no set of up to `within` edits mends it. */
  | { readonly kind: 'out-of-budget'; readonly within: number; readonly analyses: number };

/** Two edits at least are searched to the end before "none" is an answer, unless fewer are asked for. */
const SURE = 2;

/**
 * Searches the given edits for the smallest sets that clear every stop of one call in all its setups (all looks and
 * spots) without a stop or a check that was not there before. Sets are tried in order: fewer edits, then the smaller
 * change, then the order given; a look that made a set fail is asked first for the next one. Edits of one place are never
 * taken together, and an edit that does not reach a look (`applyEdit` refuses it) leaves that look as it is.
 * Pure and deterministic.
 */
export function mend(setups: readonly Setup[], edits: readonly Edit[], budget: MendBudget): Mending {
  const court = openCourt(setups, edits, budget.analyses);
  if (court === null) return { kind: 'out-of-budget', within: -1, analyses: 0 };
  const failures: Failure[] = [];
  const found: (readonly Edit[])[] = [];
  let within = -1;
  let proof: readonly Standing[] = [];
  for (let size = 0; size <= budget.edits; size += 1) {
    for (const set of setsOf(edits, size)) {
      const failure = court.failureOf(set);
      if (failure === 'spent') return ended(found, within, proof, budget.edits, court.spent());
      if (failure !== null) {
        failures.push(failure);
        continue;
      }
      found.push(set.map((index) => entryAt(edits, index)));
      if (found.length === budget.sets) return { kind: 'found', sets: found, complete: false, analyses: court.spent() };
    }
    if (found.length > 0) return { kind: 'found', sets: found, complete: true, analyses: court.spent() };
    within = size;
    if (size >= Math.min(SURE, budget.edits)) proof = shortestProof(failures, court);
  }
  return { kind: 'none', within, proof, analyses: court.spent() };
}

/** The answer when the analyses have run out in the middle of a size. */
function ended(
  found: readonly (readonly Edit[])[],
  within: number,
  proof: readonly Standing[],
  most: number,
  analyses: number,
): Mending {
  if (found.length > 0) return { kind: 'found', sets: found, complete: false, analyses };
  if (within >= Math.min(SURE, most)) return { kind: 'none', within, proof, analyses };
  return { kind: 'out-of-budget', within, analyses };
}
