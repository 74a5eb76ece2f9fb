import { describe, expect, it } from 'vitest';
import { alignReach } from '../../../src/engine/checks/alignReach.ts';
import type { Finding } from '../../../src/engine/index.ts';
import { frozen, gapText, sayAll } from '../book.ts';
import { judgeWhole } from './judgeWhole.ts';
import { worked, type Scene, type Sent } from '../move/men.ts';

/** "Don't blitz from depth": "5 Tips for Developing a Blitz", MatchQuarters. The times are estimates of the project's own model. */
const judged = (men: readonly Sent[], more: Omit<Scene, 'men'> = {}): readonly Finding[] =>
  judgeWhole(alignReach, frozen(worked({ men, ...more }))).findings;

interface Failing {
  readonly name: string;
  readonly sent: Sent;
  readonly more?: Omit<Scene, 'men'>;
  readonly says: readonly string[];
  readonly about: string;
}

const BY_HAND = 'the coach put him there by hand for this look';
const FAILING: readonly Failing[] = [
  {
    name: 'a safety blitzes from 12 yd, in high school',
    sent: { role: 'SS', at: [6, 12], job: 'rush B-right' },
    says: [
      'SS has 13.2 yd to run before he crosses the line',
      'by estimate he is at the passer 3.1 s after the snap, and a five-step throw is gone after 2.4 s',
    ],
    about: 'B-right ',
  },
  {
    name: 'a safety blitzes from 12 yd, professional',
    sent: { role: 'SS', at: [6, 12], job: 'rush B-right' },
    more: { level: 'professional' },
    says: [
      'SS has 13.2 yd to run before he crosses the line',
      'by estimate he is at the passer 2.8 s after the snap, and a five-step throw is gone after 2.4 s',
    ],
    about: 'B-right ',
  },
  {
    name: 'a corner contains from the far side of the field',
    sent: { role: 'RC', at: [17, 5], job: 'contain C-right' },
    says: [
      'RC has 14.5 yd to run before he crosses the line',
      'by estimate he is at the passer 3.4 s after the snap, and a five-step throw is gone after 2.4 s',
    ],
    about: 'C-right ',
  },
  {
    name: 'the nose drops to a curl-flat',
    sent: { role: 'N', job: 'drop curl-flat-right' },
    says: [
      'N is 16.9 yd from the middle of his zone',
      'by estimate he is within 2 yd of it 3.2 s after the snap, and a throw to it after 2.8 s',
    ],
    about: ' ',
  },
  {
    name: 'an inside backer drops to the deep third on the wide side',
    sent: { role: 'M', job: 'drop third-right' },
    more: { spot: 'left' },
    says: [
      'M is 26.9 yd from the middle of his zone',
      'by estimate he is within 2 yd of it 4.4 s after the snap, and a throw to it after 3.9 s',
    ],
    about: ' ',
  },
  {
    name: 'the far inside backer has the widest receiver man to man',
    sent: { role: 'W', job: 'man #1-right' },
    says: [
      'W is 19.7 yd from where he meets Z',
      'by estimate he is there 3.2 s after the snap, and a quick throw after 2.8 s',
      'he covers the receiver man to man from the snap on',
    ],
    about: ' Z',
  },
];

const PASSING: readonly (readonly [string, readonly Sent[]])[] = [
  ['an inside backer blitzes from 4.5 yd', [{ role: 'M', job: 'rush B-right' }]],
  ['a safety who has crept up to 6 yd blitzes', [{ role: 'SS', at: [5, 6], job: 'rush B-right' }]],
  ['an end drops to the hook', [{ role: 'RE', job: 'drop hook-right' }]],
  ['the overhang drops to the flat', [{ role: 'S', job: 'drop flat-right' }]],
  ['a safety comes down to the seam', [{ role: 'SS', job: 'drop seam-right' }]],
  [
    'corner and safeties play three deep',
    [
      { role: 'RC', job: 'drop third-right' },
      { role: 'FS', job: 'drop middle' },
      { role: 'LC', job: 'drop third-left' },
    ],
  ],
  [
    'a corner has the man before him, an inside backer the back',
    [
      { role: 'RC', job: 'man #1-right' },
      { role: 'M', job: 'man back' },
    ],
  ],
  [
    'a spy, and a man who fits a gap',
    [
      { role: 'SS', job: 'spy' },
      { role: 'M', job: 'fit B-right' },
    ],
  ],
];

describe(alignReach.id, () => {
  it.each(FAILING)('finds: $name', ({ sent, more, says, about }) => {
    const found = judged([sent], more);
    expect(found.map(({ because }) => sayAll(because).filter((line) => !line.startsWith('alignment rule')))).toEqual([
      sent.at === undefined ? says : [...says, BY_HAND],
    ]);
    for (const { rule, severity, who, gaps, players, where } of found) {
      expect([rule, severity, who.join()]).toEqual(['align.reach', 'check', sent.role]);
      expect(`${gaps.map(gapText).join()} ${players.join()}`).toBe(about);
      expect(where).toHaveLength(who.length + gaps.length + players.length);
    }
  });

  it.each(PASSING)('leaves alone: %s', (_name, men) => {
    expect(judged(men)).toEqual([]);
  });

  it('has nothing to say when nobody passes', () => {
    const analysis = worked({ men: [{ role: 'SS', at: [6, 12], job: 'rush B-right' }] });
    const players = new Map([...analysis.facts.players].filter(([, { kind }]) => kind !== 'passer'));
    expect(judgeWhole(alignReach, { ...analysis, facts: { ...analysis.facts, players } })).toEqual({
      findings: [],
      undetermined: [],
    });
  });
});
