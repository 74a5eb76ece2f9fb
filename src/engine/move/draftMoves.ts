import type { PlayedMan, LookFacts } from '../types/index.ts';
import type { Place, RuleLevel } from '../vocabulary.ts';
import { movesOf } from './moves.ts';
import type { Move } from './types.ts';

/** As much of an analysis as its moves need. */
interface Drafted {
  readonly facts: LookFacts;
  readonly assignments: readonly PlayedMan[];
  readonly setup: { readonly level: RuleLevel; readonly spot: Place };
}

/** Two checks ask for the moves of one draft; they are worked out once. */
const known = new WeakMap<Drafted, readonly Move[]>();

/** The moves of a draft, by the model of its rule level. */
export function movesOfDraft(draft: Drafted): readonly Move[] {
  const found = known.get(draft);
  if (found !== undefined) return found;
  const { facts, assignments, setup } = draft;
  const moves = movesOf({ facts, assignments, level: setup.level, spot: setup.spot });
  known.set(draft, moves);
  return moves;
}
