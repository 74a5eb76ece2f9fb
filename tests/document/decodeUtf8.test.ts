/** The decoder against the platform's own: WHATWG Encoding Standard, "UTF-8 decoder", with the error mode "fatal". */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeUtf8, utf8Offset } from '../../src/document/text/decodeUtf8.ts';

function platform(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

function ours(bytes: Uint8Array): string | null {
  const decoded = decodeUtf8(bytes);
  return decoded.ok ? decoded.value : null;
}

describe('decodeUtf8', () => {
  it('agrees with the platform on any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        const bytes = new TextEncoder().encode(text);
        expect(ours(bytes)).toBe(platform(bytes));
      }),
    );
  });

  it('agrees with the platform on any bytes', () => {
    // Mostly bytes near the borders of the table, or random ones would hardly ever get past the first.
    const byte = fc.oneof(
      fc.constantFrom(0x00, 0x7f, 0x80, 0x8f, 0x90, 0x9f, 0xa0, 0xbf, 0xc0, 0xc1, 0xc2, 0xdf, 0xe0, 0xe1, 0xec),
      fc.constantFrom(0xed, 0xee, 0xef, 0xf0, 0xf1, 0xf3, 0xf4, 0xf5, 0xff),
      fc.integer({ min: 0, max: 255 }),
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 8 }), fc.array(byte, { maxLength: 8 }), (random, chosen) => {
        for (const bytes of [random, Uint8Array.from(chosen)]) expect(ours(bytes)).toBe(platform(bytes));
      }),
      { numRuns: 3_000 },
    );
  });

  it('reads a text longer than one chunk, with a pair across the border', () => {
    const text = `${'a'.repeat(4095)}🏈${'ü'.repeat(9000)}`;
    expect(ours(new TextEncoder().encode(text))).toBe(text);
  });

  it.each([
    ['a cut character', [0x61, 0xf0, 0x9f, 0x8f], { at: 1, cut: true }],
    ['a lone lead byte before another character', [0x61, 0xc3, 0x61], { at: 1, cut: false }],
    ['a lone following byte', [0x61, 0x61, 0x80], { at: 2, cut: false }],
  ])('says where: %s', (_, bytes, problem) => {
    expect(decodeUtf8(Uint8Array.from(bytes))).toEqual({ ok: false, problem });
  });
});

it('utf8Offset counts the bytes before a unit', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 50 }), fc.nat(50), (text, length) => {
      const start = Array.from(text).slice(0, length).join('');
      expect(utf8Offset(text, start.length)).toBe(new TextEncoder().encode(start).length);
    }),
  );
});
