import { describe, expect, it } from 'vitest';
import type { LookTest } from '../../src/engine/index.ts';
import { COMMON_WORDS, makeRuleWords } from '../../src/report/index.ts';
import { findKey, keysToChoose, SIMPLE_KEYS } from '../../src/app/call/keys.ts';

const words = makeRuleWords([], COMMON_WORDS);
const two: readonly LookTest[] = [
  { kind: 'field', side: 'call' },
  { kind: 'receivers', side: 'away', compare: 'exactly', count: 1 },
];

describe('the keys to choose from', () => {
  it('are nine simple ones, each another key with words of its own', () => {
    expect(SIMPLE_KEYS).toHaveLength(9);
    expect(new Set(SIMPLE_KEYS.map(({ label }) => label)).size).toBe(9);
    for (const each of SIMPLE_KEYS) expect(findKey(SIMPLE_KEYS, each.key)).toBe(each);
  });

  it('take in any other key of a file, once, as a sentence', () => {
    const keys = keysToChoose([two, [...two]], words);
    expect(keys.slice(0, 9)).toStrictEqual(SIMPLE_KEYS);
    expect(keys.slice(9)).toStrictEqual([
      {
        id: 'other-9',
        label: 'the wide side of the field is on the call side, and there is exactly 1 receiver on the away side',
        key: two,
      },
    ]);
  });

  it('take in no simple key twice, and say what no condition means', () => {
    expect(keysToChoose([[{ side: 'call', kind: 'back' }]], words)).toStrictEqual(SIMPLE_KEYS);
    expect(keysToChoose([[]], words).at(-1)).toMatchObject({ label: 'always', key: [] });
  });
});
