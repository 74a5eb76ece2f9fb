import type { Lexicon } from '../../report/index.ts';
import type { Man } from '../../store/index.ts';

/** A man inside a sentence: "N (Nose)", "the tight end Y". */
export function manName(man: Man, lexicon: Lexicon): string {
  if (man.kind === 'offence') return lexicon.player(man.player);
  return `${lexicon.letter(man.role)} (${lexicon.roleName(man.role)})`;
}

/** A man without his name: "N", "Y". */
export function manLetter(man: Man, lexicon: Lexicon): string {
  return man.kind === 'offence' ? lexicon.playerLetter(man.player) : lexicon.role(man.role);
}

/** Several men inside a sentence: one by his name, more as a number. */
export function menName(men: readonly Man[], lexicon: Lexicon): string {
  const [only] = men;
  return men.length === 1 && only !== undefined ? manName(only, lexicon) : `${men.length} men`;
}
