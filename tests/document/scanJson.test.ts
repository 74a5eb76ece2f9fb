/** The scanner against the platform's own reader: ECMAScript, `JSON.parse`, which takes the grammar of RFC 8259. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scanJson } from '../../src/document/text/scanJson.ts';

const LIMITS = { depth: 40, keys: 1_000 };

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

const SCRAPS = ['{', '}', '[', ']', ',', ':', '"', '\\', '"a"', '"\\n"', '\\u00e9', ' ', '\n', '\t', '\0', '\uFEFF'];
const WORDS = [
  'true',
  'false',
  'null',
  'nul',
  'NaN',
  '0',
  '-',
  '1',
  '12.5',
  '1.',
  '.5',
  '1e5',
  '1e',
  'E+2',
  '-0',
  '01',
];
const scrap = fc.constantFrom(...SCRAPS, ...WORDS);

describe('scanJson', () => {
  it('takes all that JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), fc.constantFrom(0, 2), (text, indent) => {
        expect(scanJson(JSON.stringify(JSON.parse(text), null, indent), LIMITS)).toBeNull();
      }),
    );
  });

  it('takes exactly what JSON.parse takes', () => {
    fc.assert(
      fc.property(fc.array(scrap, { maxLength: 7 }), (scraps) => {
        const text = scraps.join('');
        expect({ text, ok: scanJson(text, LIMITS) === null }).toEqual({ text, ok: parses(text) });
      }),
      { numRuns: 20_000 },
    );
  });

  it('takes exactly what JSON.parse takes when one place of a good text is spoilt', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), scrap, fc.nat(), fc.nat(3), (good, piece, place, cut) => {
        const at = place % (good.length + 1);
        const text = good.slice(0, at) + piece + good.slice(at + cut);
        expect({ text, ok: scanJson(text, LIMITS) === null }).toEqual({ text, ok: parses(text) });
      }),
      { numRuns: 5_000 },
    );
  });

  it('a file that ends early could have gone on: every start of a good text does', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 3 }), fc.nat(), (good, place) => {
        const start = good.slice(0, place % good.length);
        const fault = scanJson(start, LIMITS);
        // A number may be whole before it is finished.
        if (fault !== null) expect(fault).toEqual({ kind: 'ends-early' });
        else expect(parses(start)).toBe(true);
      }),
    );
  });

  it('the fault is at the place that was spoilt, or at the start of the word that is spoilt there', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 3 }), fc.nat(), (good, place) => {
        const at = place % (good.length + 1);
        const text = `${good.slice(0, at)}\u0001${good.slice(at)}`;
        const fault = scanJson(text, LIMITS);
        if (fault?.kind !== 'unexpected') throw new Error(`${text} is not refused`);
        expect(text.slice(fault.index, at)).toMatch(/^[-+.\\\w]*$/);
        expect(fault.index).toBeLessThanOrEqual(at);
      }),
    );
  });

  it('stops at its limits, and not before', () => {
    expect(scanJson('[[{"a":[]}]]', { depth: 4, keys: 1 })).toBeNull();
    expect(scanJson('[[{"a":[]}]]', { depth: 3, keys: 1 })).toEqual({ kind: 'too-deep', index: 7 });
    expect(scanJson('[{"a":{"b":0},"c":0},{"d":0,"e":0}]', { depth: 4, keys: 2 })).toBeNull();
    expect(scanJson('[{"a":{"b":0},"c":0}]', { depth: 4, keys: 1 })).toEqual({ kind: 'too-many-keys', index: 17 });
  });
});
