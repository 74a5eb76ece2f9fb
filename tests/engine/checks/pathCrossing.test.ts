import { describe, expect, it } from 'vitest';
import { pathCrossing } from '../../../src/engine/checks/pathCrossing.ts';
import { asRoleId, type Finding } from '../../../src/engine/index.ts';
import { frozen, LOOKS, sayAll } from '../book.ts';
import { judgeWhole } from './judgeWhole.ts';
import { worked, type Scene, type Sent } from '../move/men.ts';

/**
 * Two rushers on one path at one moment need to be told who goes first: "DL hits first and LBs second", never one wave (K. Bowers,
 * "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O Labs, 2022).
 */
const judged = (men: readonly Sent[], more: Omit<Scene, 'men'> = {}): readonly Finding[] =>
  judgeWhole(pathCrossing, frozen(worked({ men, ...more }))).findings;

const END: Sent = { role: 'RE', at: [3, 1], job: 'rush C-right loop' };
const BACKER: Sent = { role: 'S', at: [4.8, 1.6], job: 'rush B-right slant' };
const order = (turn: 'first' | 'second', neighbour: string) => ({ order: { turn, neighbour: asRoleId(neighbour) } });

const UNTOLD = 'neither is told to go first';
const FAILING: readonly (readonly [string, readonly Sent[], who: string, says: readonly string[]])[] = [
  [
    'an end loops out into a backer who comes in',
    [END, BACKER],
    'RE S',
    ['RE+S run into each other, by estimate 0.7 s after the snap', UNTOLD],
  ],
  [
    'two backers side by side in one gap',
    [
      { role: 'M', at: [1.7, 4.5], job: 'rush B-right' },
      { role: 'S', at: [2.6, 4.5], job: 'rush B-right' },
    ],
    'M S',
    ['M+S run into each other, by estimate 1.1 s after the snap', UNTOLD],
  ],
  [
    'an end drops through the backer who rushes over him',
    [
      { role: 'RE', at: [3, 1], job: 'drop hook-right' },
      { role: 'M', at: [2.7, 2], job: 'rush A-right' },
    ],
    'M RE',
    ['M+RE run into each other, by estimate 0.6 s after the snap', UNTOLD],
  ],
  [
    'both are told to go second',
    [
      { ...END, ...order('second', 'S') },
      { ...BACKER, ...order('second', 'RE') },
    ],
    'RE S',
    ['RE+S run into each other, by estimate 1.3 s after the snap', 'the orders they are told contradict each other'],
  ],
];

const PASSING: readonly (readonly [string, readonly Sent[]])[] = [
  ['the backer is told to go second', [END, { ...BACKER, ...order('second', 'RE') }]],
  ['the end is told to go first', [{ ...END, ...order('first', 'S') }, BACKER]],
  ['the backer goes off the end’s hip, which is behind him', [END, { ...BACKER, job: 'rush B-right inside-hip:@RE' }]],
  ['a lineman and a backer from depth through one gap', [{ role: 'M', at: [3.4, 4.5], job: 'rush C-right' }]],
  [
    'two men who drop through each other',
    [
      { role: 'M', at: [2, 4.5], job: 'drop seam-right' },
      { role: 'S', at: [5, 4.5], job: 'drop hook-right' },
    ],
  ],
  ['the base front', []],
];

describe(pathCrossing.id, () => {
  it.each(FAILING)('finds: %s', (_name, men, who, says) => {
    const found = judged(men);
    expect(found.map((finding) => [finding.who.join(' '), ...sayAll(finding.because)])).toEqual([[who, ...says]]);
    for (const { rule, severity, where } of found) {
      expect([rule, severity]).toEqual(['path.crossing', 'check']);
      expect(where).toHaveLength(2);
    }
  });

  it.each(PASSING)('leaves alone: %s', (_name, men) => {
    expect(judged(men)).toEqual([]);
  });

  it.each(Object.keys(LOOKS))('leaves a front alone that only plays base: %s', (name) => {
    const look = name in LOOKS ? { look: name as keyof typeof LOOKS } : {};
    expect(judged([], look)).toEqual([]);
  });

  it('says the same twice', () => {
    expect(JSON.stringify(judged([END, BACKER]))).toBe(JSON.stringify(judged([END, BACKER])));
  });
});
