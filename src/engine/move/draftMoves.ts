import { rememberedLast } from '../../base/index.ts';
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

/** The moves of a draft, by the model of its rule level. Several checks of one draft ask for them. */
export const movesOfDraft = rememberedLast(({ facts, assignments, setup }: Drafted): readonly Move[] =>
  movesOf({ facts, assignments, level: setup.level, spot: setup.spot }),
);
