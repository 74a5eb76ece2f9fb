import type { Lexicon } from '../../report/index.ts';
import type { Man } from '../../store/index.ts';

/** A man inside a sentence: "N (Nose)", "the tight end Y". */
export function manName(man: Man, lexicon: Lexicon): string {
  if (man.kind === 'offence') return lexicon.player(man.player);
  return `${lexicon.letter(man.role)} (${lexicon.roleName(man.role)})`;
}
