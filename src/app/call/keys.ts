import type { LookTest } from '../../engine/index.ts';
import type { RuleWords } from '../../report/index.ts';
import { sameCombination } from '../../store/index.ts';

/** What decides which of the two pressures is run: the first if all of it holds, else the second. */
export type Key = readonly LookTest[];

/** A key that can be picked from the list. */
export interface SimpleKey {
  readonly id: string;
  readonly label: string;
  readonly key: Key;
}

/** Keys a call is made by most often (common practice, no source); any other key a file holds is kept and shown. */
export const SIMPLE_KEYS: readonly [SimpleKey, ...SimpleKey[]] = [
  simple('end', 'the tight end is on the call side', { kind: 'bodies', side: 'call', compare: 'at-least', count: 3 }),
  simple('no-end', 'no tight end is on the call side', { kind: 'bodies', side: 'call', compare: 'at-most', count: 2 }),
  simple('back', 'the back is to the call side', { kind: 'back', side: 'call' }),
  simple('back-away', 'the back is away from the call', { kind: 'back', side: 'away' }),
  simple('field', 'the wide field is to the call side', { kind: 'field', side: 'call' }),
  simple('boundary', 'the short field is to the call side', { kind: 'field', side: 'away' }),
  simple('three', 'three receivers are on the call side', {
    kind: 'receivers',
    side: 'call',
    compare: 'at-least',
    count: 3,
  }),
  simple('two-backs', 'two backs are in the backfield', { kind: 'backs', compare: 'at-least', count: 2 }),
  simple('empty', 'nobody is in the backfield', { kind: 'backs', compare: 'at-most', count: 0 }),
];

/** The keys to choose from, with others that must not be lost, each once. */
export function keysToChoose(others: readonly Key[], words: RuleWords): readonly SimpleKey[] {
  return others.reduce<readonly SimpleKey[]>((keys, key) => {
    if (findKey(keys, key) !== undefined) return keys;
    return [...keys, { id: `other-${keys.length}`, label: keyText(key, words), key }];
  }, SIMPLE_KEYS);
}

/** The entry with the same key. */
export function findKey(keys: readonly SimpleKey[], key: Key): SimpleKey | undefined {
  return keys.find((each) => sameCombination({ kind: 'either-or', key: each.key }, { kind: 'either-or', key }));
}

/** Any key as a sentence. Without a condition the first is always run. */
function keyText(key: Key, words: RuleWords): string {
  return key.length === 0 ? 'always' : key.map(words.test).join(', and ');
}

function simple(id: string, label: string, test: LookTest): SimpleKey {
  return { id, label, key: [test] };
}
