import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainText } from '../../src/print/plainText.ts';

/** A typeface with the printable characters of ISO 8859-1 and nothing else. */
const latin = (codePoint: number): boolean =>
  (codePoint >= 0x20 && codePoint <= 0x7e) || (codePoint >= 0xa1 && codePoint <= 0xff && codePoint !== 0xad);

describe('text for a typeface', () => {
  it.each([
    ['plain words', 'plain words'],
    ['a → b', 'a -> b'],
    ['4 ≤ 5', '4 <= 5'],
    ['it’s “so” – fine…', 'it\'s "so" - fine...'],
    ['café', 'café'],
    ['cafe\u0301', 'café'],
    ['ő', 'o'],
    ['ﬁt', 'fit'],
    ['Ω', '?'],
    ['漢字', '??'],
    ['\u{1F600}', '?'],
    ['a\uD800b', 'a?b'],
    ['a\u0000\u0007b', 'ab'],
    ['a\u202Eb\u200Bc', 'abc'],
    ['a\r\n\tb', 'a b'],
    ['  a   b  ', 'a b'],
    ['x\u0301\u0302\u0303', 'x'],
    ['', ''],
  ])('%j becomes %j', (text, expected) => {
    expect(plainText(text, latin)).toBe(expected);
  });

  it('only ever holds what the typeface has, whatever comes in, and is left alone the second time', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const plain = plainText(text, latin);
        expect(Array.from(plain).every((character) => latin(character.codePointAt(0) ?? 0))).toBe(true);
        expect(plainText(plain, latin)).toBe(plain);
      }),
      { numRuns: 500, seed: 7 },
    );
  });

  it('loses no printable character without a sign', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1 }), (text) => {
        const visible = /[^\s\p{M}\p{C}]/u.test(text);
        if (visible) expect(plainText(text, latin)).not.toBe('');
      }),
      { numRuns: 300, seed: 7 },
    );
  });
});
