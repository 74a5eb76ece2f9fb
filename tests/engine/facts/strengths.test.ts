import { describe, expect, it } from 'vitest';
import type { LookFacts, Place } from '../../../src/engine/index.ts';
import { factsOf, say } from '../book.ts';

/** Personnel: backs, then tight ends: "Offensive Personnel Groupings", Pigskin Ninja. The men count, not where they stand. */
const PERSONNEL: readonly (readonly [code: string, look: string])[] = [
  ['00', 'line wr:X@-14 wr:H@-7,-1.5 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-5'],
  ['01', 'line te:Y@4 wr:X@-14 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14,-1.5 qb:Q@0,-5'],
  ['02', 'line te:Y@4 te:U@-4 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14,-1.5 qb:Q@0,-5'],
  ['10', 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5'],
  ['11', 'line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5'],
  ['11', 'line te:Y@9,-1.5 wr:X@-14 wr:H@-7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@-5,-1.5'],
  ['12', 'line te:Y@4 te:U@-4 wr:X@-14,-1.5 wr:Z@14,-1.5 qb:Q@0,-4 rb:B@0,-7'],
  ['13', 'line te:Y@4 te:U@-4 te:W@5.3,-1.5 wr:Z@-14,-1.5 qb:Q@0,-1.3 rb:B@0,-7'],
  ['20', 'line wr:X@-14 wr:H@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:F@-1.5,-5 rb:B@1.5,-5'],
  ['21', 'line te:Y@4 wr:X@-14 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:B@0,-7'],
  ['22', 'line te:Y@4 te:U@-4 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:B@0,-7'],
  ['23', 'line te:Y@4 te:U@-4 te:W@5.3,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:B@0,-7'],
  ['30', 'line wr:X@-14 wr:Z@14 qb:Q@0,-1.3 rb:F@0,-4 rb:A@-1.8,-5 rb:B@1.8,-5'],
];

describe('personnel', () => {
  it.each(PERSONNEL)('%s', (code, text) => {
    expect(factsOf(text).personnel).toBe(code);
  });
});

type Sides = readonly [tightEnd: string, receivers: string, back: string, field: string];

function sides({ strengths }: LookFacts): Sides {
  const { 'tight-end': tightEnd, receivers, back, field } = strengths;
  return [tightEnd.side, receivers.side, back.side, field.side];
}

/*
 * Ways to set a strength (field, passing side, a player): "Setting a Strength", The Call Sheet newsletter no. 004. Run and
 * passing strength can be opposite: r/footballstrategy, "Setting Strength and Getting Lined Up".
 */
const ROWS: readonly (readonly [name: string, look: string, spot: Place, ...Sides])[] = [
  [
    'doubles, ball in the middle: only the back decides',
    'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    'middle',
    'even',
    'even',
    'right',
    'even',
  ],
  [
    'the same on the left hash: the field is to the right',
    'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@-1.5,-5',
    'left',
    'even',
    'even',
    'left',
    'right',
  ],
  [
    'on the right hash: the field is to the left',
    'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-4 rb:B@0,-7',
    'right',
    'even',
    'even',
    'even',
    'left',
  ],
  [
    'trips left: passing strength left',
    'line wr:X@-14 wr:H@-10,-1.5 wr:A@-6,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    'middle',
    'even',
    'left',
    'right',
    'even',
  ],
  [
    'tight end right, three receivers left: run and passing strength opposite',
    'line te:Y@4 wr:X@-14 wr:H@-10,-1.5 wr:Z@-6,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    'middle',
    'right',
    'left',
    'right',
    'even',
  ],
  [
    'a tight end on each side',
    'line te:Y@4 te:U@-4 wr:X@-14,-1.5 wr:Z@14,-1.5 qb:Q@0,-4 rb:B@0,-7',
    'middle',
    'even',
    'even',
    'even',
    'even',
  ],
  [
    'two tight ends, the wing breaks the tie',
    'line te:Y@4 te:U@-4 te:W@5.3,-1.5 wr:Z@-14,-1.5 qb:Q@0,-1.3 rb:B@0,-7',
    'middle',
    'right',
    'even',
    'even',
    'even',
  ],
  [
    'a flexed tight end is no longer part of the surface',
    'line te:Y@6.5,-1.5 wr:X@-14 wr:H@-7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    'middle',
    'even',
    'even',
    'right',
    'even',
  ],
  [
    'a covered tight end is strong to run, not to pass',
    'line te:Y@4 wr:Z@14 wr:X@-14,-1.5 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    'middle',
    'right',
    'left',
    'left',
    'even',
  ],
  [
    'tackles over: more bodies on that side',
    'ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 ol:T3@4 wr:X@-14 wr:H@-7,-1.5 wr:A@8,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    'middle',
    'right',
    'even',
    'right',
    'even',
  ],
  [
    'split backs: no side',
    'line wr:X@-14 wr:H@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:F@-1.5,-5 rb:B@1.5,-5',
    'middle',
    'even',
    'right',
    'even',
    'even',
  ],
  [
    'offset I: the offset back counts, the one behind the ball does not',
    'line te:Y@4 wr:X@-14 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@-1.5,-4.5 rb:B@0,-7',
    'middle',
    'right',
    'right',
    'left',
    'even',
  ],
  [
    'empty',
    'line wr:X@-14 wr:H@-7,-1.5 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-5',
    'middle',
    'even',
    'right',
    'even',
    'even',
  ],
];

describe('strengths', () => {
  it.each(ROWS)('%s', (_name, text, spot, ...expected) => {
    expect(sides(factsOf(text, spot))).toEqual(expected);
  });
});

const REASONS: readonly (readonly [look: string, spot: Place, said: readonly string[]])[] = [
  [
    'line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    'left',
    [
      'the surface is 2 men on the left and 3 on the right',
      'both sides have 2 receivers',
      'the back is offset to the left',
      'the wide side of the field is right',
    ],
  ],
  [
    'line wr:X@-14 wr:H@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-4 rb:B@0,-7',
    'middle',
    [
      'both sides have 2 attached men',
      'there are 1 receivers on the left and 3 on the right',
      'no back is offset more to one side than to the other',
      'the ball is in the middle of the field',
    ],
  ],
  [
    'line wr:X@-14 wr:H@-7,-1.5 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-5',
    'right',
    [
      'both sides have 2 attached men',
      'there are 2 receivers on the left and 3 on the right',
      'there is no back',
      'the wide side of the field is left',
    ],
  ],
];

describe('why a strength is what it is', () => {
  it.each(REASONS)('%s @%s', (text, spot, said) => {
    const { strengths } = factsOf(text, spot);
    expect(
      [strengths['tight-end'], strengths.receivers, strengths.back, strengths.field].map((each) => say(each.because)),
    ).toEqual(said);
  });
});
