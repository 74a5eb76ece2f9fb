import type { Lexicon } from '../../report/index.ts';
import { assertNever } from '../../base/index.ts';
import type { Asked, Spotted } from '../../quiz/index.ts';

/** The column that is asked for, as it stands after "against". */
export const ASKED_WORDS: Readonly<Record<Asked, string>> = { run: 'the run', pass: 'the pass' };

/** What a player is told to do. */
export const ASKED_SENTENCES: Readonly<Record<Asked, string>> = {
  run: 'It is a run. Point to your gap.',
  pass: 'It is a pass. Point to your zone or your receiver, or to the passer if you go after him.',
};

/** Something that can be pointed at, as it stands in a sentence: "the A gap left", "the seam right". */
export function spottedText(spotted: Spotted, lexicon: Lexicon): string {
  switch (spotted.kind) {
    case 'gap':
      return `the ${lexicon.gap(spotted.gap)}`;
    case 'zone':
      return lexicon.datum({ kind: 'zone', zone: spotted.zone, side: spotted.side });
    case 'receiver':
      return lexicon.player(spotted.player);
    case 'passer':
      return 'the passer';
    default:
      return assertNever(spotted);
  }
}
