import { because, datum } from '../because.ts';
import { RUN_CONCEPT_WORDS } from '../offenceVocabulary.ts';
import type { RunAnswer } from '../types/index.ts';
import type { Report } from './defineCheck.ts';

/** A run the look is said to be known for, and cannot have as it is drawn: nothing can be told about it. */
export function notHere(run: Extract<RunAnswer, { readonly kind: 'not-here' }>): Report {
  return {
    undetermined: true,
    because: because(
      'this look cannot run {run} to the {side} as it is drawn',
      { run: datum.word(RUN_CONCEPT_WORDS[run.known.concept]), side: datum.side(run.known.side) },
      run.because,
    ),
  };
}
