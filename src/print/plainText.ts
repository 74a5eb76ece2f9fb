import type { HasGlyph } from './fonts.ts';

/** What is written for a character the typeface lacks. Anything else becomes a question mark: never a hole. */
const STAND_INS: ReadonlyMap<string, string> = new Map([
  ['\u2190', '<-'],
  ['\u2192', '->'],
  ['\u2194', '<->'],
  ['\u2191', '^'],
  ['\u2193', 'v'],
  ['\u21D2', '=>'],
  ['\u2264', '<='],
  ['\u2265', '>='],
  ['\u2260', '!='],
  ['\u2248', '~'],
  ['\u2212', '-'],
  ['\u2010', '-'],
  ['\u2011', '-'],
  ['\u2013', '-'],
  ['\u2014', '-'],
  ['\u2018', "'"],
  ['\u2019', "'"],
  ['\u201C', '"'],
  ['\u201D', '"'],
  ['\u2026', '...'],
  ['\u2022', '*'],
  ['\u2713', 'ok'],
  ['\u00D7', 'x'],
]);

/** Half a surrogate pair: JavaScript text may hold one, no font can draw it. */
const HALF_PAIR = /[\uD800-\uDFFF]/gu;

/**
 * Text that a typeface can draw, one line of it: control and direction characters are taken out, white space becomes one
 * space, and what the typeface lacks is replaced by a stand-in, by its letter without the accent, or by "?".
 */
export function plainText(text: string, hasGlyph: HasGlyph): string {
  const known = (character: string) => hasGlyph(character.codePointAt(0) ?? 0);
  const drawn = (character: string): string => {
    if (known(character)) return character;
    const stand = STAND_INS.get(character);
    if (stand !== undefined) return stand;
    const parts = Array.from(character.normalize('NFKD'));
    const letters = parts.filter((part) => known(part) && !/\p{M}/u.test(part));
    if (letters.length > 0) return letters.join('');
    return /\p{M}/u.test(character) ? '' : '?';
  };
  const cleaned = text
    .replace(HALF_PAIR, '?')
    .normalize('NFC')
    .replace(/\s+/gu, ' ')
    .replace(/[\p{Cc}\p{Cf}]/gu, '');
  return Array.from(cleaned, drawn).join('').trim();
}
