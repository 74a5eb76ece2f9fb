import { describe, expect, test } from 'vitest';
import { analyse, type Gap, type Job, type PassColumn, type RunColumn, type Zone } from '../../src/engine/index.ts';
import { COMMON_WORDS, makeLexicon } from '../../src/report/index.ts';
import { LEFT_END, NOSE, playerOf, setupOf } from './fixtures.ts';

/** How a coach says a job: common practice, no source, unless a line says otherwise. */
const lexicon = makeLexicon(setupOf(), COMMON_WORDS);
const gap = (letter: Gap['letter'], side: Gap['side']): Gap => ({ letter, side });
const straight = { kind: 'straight' } as const;
const PLAIN = { peel: false, order: null } as const;
const noRun = { fits: [], firm: false, support: null } as const;

describe('a job as a sentence', () => {
  test.each<[string, Job]>([
    [
      'Rush the B gap right off the inside hip of the E (left end)',
      {
        kind: 'rush',
        gaps: [gap('B', 'right')],
        manner: 'penetrate',
        track: { kind: 'past', how: 'inside-hip', neighbour: LEFT_END },
        edge: null,
        ...PLAIN,
      },
    ],
    [
      'Slant to the A gap left under the N',
      {
        kind: 'rush',
        gaps: [gap('A', 'left')],
        manner: 'slant',
        track: { kind: 'past', how: 'under', neighbour: NOSE },
        edge: null,
        ...PLAIN,
      },
    ],
    [
      'Loop to the C gap left over the N, box',
      {
        kind: 'rush',
        gaps: [gap('C', 'left')],
        manner: 'loop',
        track: { kind: 'past', how: 'over', neighbour: NOSE },
        edge: 'box',
        ...PLAIN,
      },
    ],
    [
      'Rush the B gap left, on the read',
      { kind: 'rush', gaps: [gap('B', 'left')], manner: 'read', track: straight, edge: null, ...PLAIN },
    ],
    [
      'Two-gap: A gap left and A gap right',
      {
        kind: 'rush',
        gaps: [gap('A', 'left'), gap('A', 'right')],
        manner: 'two-gap',
        track: straight,
        edge: null,
        ...PLAIN,
      },
    ],
    ['Rush the passer', { kind: 'rush', gaps: [], manner: 'penetrate', track: straight, edge: null, ...PLAIN }],
    [
      'Rush the C gap left; contain on a pass',
      { kind: 'contain', gaps: [gap('C', 'left')], manner: 'penetrate', track: straight, edge: null, ...PLAIN },
    ],
    [
      'Loop to the D gap right off the outside hip of the N, spill; contain on a pass',
      {
        kind: 'contain',
        gaps: [gap('D', 'right')],
        manner: 'loop',
        track: { kind: 'past', how: 'outside-hip', neighbour: NOSE },
        edge: 'spill',
        ...PLAIN,
      },
    ],
    ['Contain', { kind: 'contain', gaps: [], manner: 'penetrate', track: straight, edge: null, ...PLAIN }],
    ['Fit the B gap right', { kind: 'fit', gaps: [gap('B', 'right')], manner: 'read', support: null }],
    ['Fit the C gap left; force', { kind: 'fit', gaps: [gap('C', 'left')], manner: 'read', support: 'force' }],
    ['Fit the C gap left, on the slant', { kind: 'fit', gaps: [gap('C', 'left')], manner: 'slant', support: null }],
    [
      'Fit both, two-gap: B gap left and C gap left',
      { kind: 'fit', gaps: [gap('B', 'left'), gap('C', 'left')], manner: 'two-gap', support: null },
    ],
    ['Fit the run; alley', { kind: 'fit', gaps: [], manner: 'read', support: 'alley' }],
    [
      'Drop to the seam left; force',
      { kind: 'drop', zone: 'seam', side: 'left', run: { fits: [], firm: false, support: 'force' } },
    ],
    [
      'Drop to the seam right; force; D gap right if nobody has it',
      { kind: 'drop', zone: 'seam', side: 'right', run: { fits: [gap('D', 'right')], firm: false, support: 'force' } },
    ],
    [
      'Drop to the middle hook; B, then A gap left if nobody has them',
      {
        kind: 'drop',
        zone: 'hook',
        side: 'middle',
        run: { fits: [gap('B', 'left'), gap('A', 'left')], firm: false, support: null },
      },
    ],
    ['Man on Z', { kind: 'man', receiver: playerOf('z'), run: noRun }],
    [
      'Man on B; fold; C gap left against the run',
      { kind: 'man', receiver: playerOf('b'), run: { fits: [gap('C', 'left')], firm: true, support: 'fold' } },
    ],
    ['Spy the passer', { kind: 'spy', run: noRun }],
    ['Spy the passer; cutback', { kind: 'spy', run: { fits: [], firm: false, support: 'cutback' } }],
  ])('%s', (sentence, job) => {
    expect(lexicon.job(job)).toBe(sentence);
  });
});

describe('the run column', () => {
  const none: RunColumn = { gaps: [], twoGaps: false, edge: null, ...PLAIN, support: null };
  test.each<[string, RunColumn, readonly Gap[]]>([
    ['—', none, []],
    ['B gap right', { ...none, gaps: [gap('B', 'right')] }, []],
    ['B gap right, spill', { ...none, gaps: [gap('B', 'right')], edge: 'spill', ...PLAIN }, []],
    [
      'A gap left and A gap right, two-gap',
      { ...none, gaps: [gap('A', 'left'), gap('A', 'right')], twoGaps: true },
      [],
    ],
    ['force', { ...none, support: 'force' }, []],
    ['C gap left; force', { ...none, gaps: [gap('C', 'left')], support: 'force' }, []],
    ['force; D gap right if nobody has it', { ...none, support: 'force' }, [gap('D', 'right')]],
    ['C, then B gap left if nobody has them', none, [gap('C', 'left'), gap('B', 'left')]],
    [
      'A, B gap left, then A gap right if nobody has them',
      none,
      [gap('A', 'left'), gap('B', 'left'), gap('A', 'right')],
    ],
    // Where the edge is the D gap, a rule that says "the edge, else D" says it once.
    ['D gap right if nobody has it', none, [gap('D', 'right'), gap('D', 'right')]],
  ])('%s', (cell, run, loose) => {
    expect(lexicon.run(run, loose)).toBe(cell);
  });
});

describe('the pass column', () => {
  const facts = analyse(setupOf()).facts;
  test.each<[string, PassColumn]>([
    ['rush lane', { kind: 'rush' }],
    ['contain right', { kind: 'contain', side: 'right' }],
    ['seam left', { kind: 'zone', zone: 'seam', side: 'left' }],
    // Receivers count from the sideline inward, the tight end counts: common practice, no source.
    ['man on #1 right', { kind: 'man', receiver: playerOf('z') }],
    ['man on #2 right', { kind: 'man', receiver: playerOf('y') }],
    ['man on the back B', { kind: 'man', receiver: playerOf('b') }],
    ['man on Q', { kind: 'man', receiver: playerOf('q') }],
    ['spy', { kind: 'spy' }],
    ['—', { kind: 'none' }],
  ])('%s', (cell, pass) => {
    expect(lexicon.pass(pass, facts)).toBe(cell);
  });

  test.each<[Zone, string, string]>([
    ['seam', 'seam right', 'middle seam'],
    ['hook', 'hook right', 'middle hook'],
    ['hole', 'hole right', 'hole'],
    ['curl-flat', 'curl-flat right', 'middle curl-flat'],
    ['flat', 'flat right', 'middle flat'],
    ['hot', 'hot zone right', 'middle hot zone'],
    ['middle', 'deep middle right', 'deep middle'],
    ['third', 'deep third right', 'deep middle third'],
    ['half', 'deep half right', 'deep middle half'],
    ['quarter', 'deep quarter right', 'deep middle quarter'],
  ])('zone %s: %s, %s', (zone, onTheRight, inTheMiddle) => {
    expect(lexicon.pass({ kind: 'zone', zone, side: 'right' }, facts)).toBe(onTheRight);
    expect(lexicon.pass({ kind: 'zone', zone, side: 'middle' }, facts)).toBe(inTheMiddle);
  });
});
