import type { Lexicon } from '../../report/index.ts';
import { assertNever } from '../../base/index.ts';
import type { Asked, Spotted } from '../../quiz/index.ts';
import { capital } from '../parts/capital.ts';

/** The column that is asked for, as it stands after "against". */
export const ASKED_WORDS: Readonly<Record<Asked, string>> = { run: 'the run', pass: 'the pass' };

/** What a player is told to do. */
export const ASKED_SENTENCES: Readonly<Record<Asked, string>> = {
  run: 'It is a run. Point to your gap.',
  pass: 'It is a pass. Point to your zone or your receiver, or to the passer if you go after him.',
};

/** Something that can be pointed at, in words. */
export function spottedText(spotted: Spotted, lexicon: Lexicon): string {
  switch (spotted.kind) {
    case 'gap':
      return lexicon.gap(spotted.gap);
    case 'zone':
      return capital(lexicon.datum({ kind: 'zone', zone: spotted.zone, side: spotted.side }));
    case 'receiver':
      return capital(lexicon.player(spotted.player));
    case 'passer':
      return 'The passer';
    default:
      return assertNever(spotted);
  }
}
