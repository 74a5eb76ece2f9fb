import { describe, expect, it } from 'vitest';
import type { LookFacts } from '../../../src/engine/index.ts';
import { factsOf } from '../book.ts';

/** `X1 H2 | Z1 Y2*`: left and right, from the sideline inward; * attached, 0 not eligible. */
function numbers(facts: LookFacts): string {
  const side = (which: 'left' | 'right'): string =>
    facts.receivers
      .filter((each) => each.side === which)
      .map(({ player, number, attached }) => `${player}${String(number)}${attached ? '*' : ''}`)
      .join(' ');
  return `${side('left')} | ${side('right')}`;
}

/*
 * Counted from each sideline inward, the tight end too (common practice, no source; used so in "Fire Zone Coverage",
 * scribd 228109213). A back in the backfield is no numbered receiver until he releases (a choice of this project).
 * Eligible by place: the end man of the line on each side, and every back: NCAA 7-3-3; NFL 7-5-1, 8-1-5; NFHS 7-5-6.
 */
const ROWS: readonly (readonly [name: string, look: string, numbers: string, eligible: number])[] = [
  ['two and two', 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5', 'X1 H2 | Z1 A2', 4],
  ['three and one', 'line wr:X@-14 wr:H@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5', 'X1 | Z1 A2 H3', 4],
  [
    'four and one, empty',
    'line wr:X@-14 wr:H@6,-1.5 wr:V@8,-1.5 wr:A@11,-1.5 wr:Z@15 qb:Q@0,-5',
    'X1 | Z1 A2 V3 H4',
    5,
  ],
  [
    'the attached tight end is number two inside a flanker',
    'line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    'X1 H2 | Z1 Y2*',
    4,
  ],
  [
    'the lone tight end is number one',
    'line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@-10,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    'X1 Z2 H3 | Y1*',
    4,
  ],
  [
    'tight end and wing: the wing is the outer one',
    'line te:Y@4 te:U@5.3,-1.5 wr:X@-14 wr:Z@-10,-1.5 qb:Q@0,-1.3 rb:B@0,-7',
    'X1 Z2 | U1* Y2*',
    4,
  ],
  [
    // "Covered tight end is legal, just ineligible": NFL 7-5-1 (2026 text). He still adds his gap, see below.
    'a tight end covered by a receiver on the line may not catch, and takes no number',
    'line te:Y@4 wr:Z@14 wr:X@-14,-1.5 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    'X1 H2 | Z1 Y0*',
    3,
  ],
  [
    'a covered slot on the line likewise',
    'line wr:X@-14 wr:H@-7 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    'X1 H0 | Z1 A2',
    3,
  ],
  [
    // There is no standard for the count of a stack; staffs differ. This project takes the man on the line as the outer one.
    'stacked on one width: the man on the line is number one',
    'line wr:X@-14 wr:H@-14,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    'X1 H2 | Z1 A2',
    4,
  ],
  [
    'bunch: counted by width, the point man in between',
    'line wr:X@-14 wr:H@7.5,-1.6 wr:A@8.7 wr:Z@9.9,-1.6 qb:Q@0,-5 rb:B@-1.5,-5',
    'X1 | Z1 A2 H3',
    4,
  ],
  [
    'a back split out is a receiver',
    'line te:Y@4 wr:X@-14 rb:B@-7,-1.5 wr:H@8,-1.5 wr:Z@14,-1.5 qb:Q@0,-5',
    'X1 B2 | Z1 H2 Y3*',
    5,
  ],
  [
    'a back wide of the backfield is a receiver however deep',
    'line te:Y@4 wr:X@-14 wr:H@8,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-6,-4',
    'X1 B2 | Z1 H2 Y3*',
    5,
  ],
  [
    'backs in the backfield are nobody’s number',
    'line wr:X@-14 wr:Z@14 qb:Q@0,-1.3 rb:F@0,-4 rb:A@-1.8,-5 rb:B@1.8,-5',
    'X1 | Z1',
    2,
  ],
  [
    'a tight end just behind the guard is a receiver, on no surface',
    'line te:Y@2,-2 wr:X@-14 wr:Z@14 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    'X1 H2 | Z1 Y2',
    4,
  ],
];

describe('receiver numbers', () => {
  it.each(ROWS)('%s', (_name, text, expected, eligible) => {
    const facts = factsOf(text);
    expect(numbers(facts)).toBe(expected);
    expect(facts.receivers.filter((each) => each.eligible)).toHaveLength(eligible);
  });

  it('the covered tight end adds his gap all the same, and the formation is legal at every level', () => {
    const text = 'line te:Y@4 wr:Z@14 wr:X@-14,-1.5 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5';
    expect(factsOf(text).edge).toEqual({ left: 'C', right: 'D' });
    expect(factsOf(text, 'middle', 'high-school').faults).toEqual([]);
    expect(factsOf(text, 'middle', 'college').faults).toEqual([]);
    expect(factsOf(text, 'middle', 'professional').faults).toEqual([]);
  });
});

/*
 * A back directly behind the ball belongs to neither side until he releases (common practice, no source); half a man off
 * the ball's line is still behind it (a convention of this project).
 */
const BACKS: readonly (readonly [name: string, backs: string, read: string])[] = [
  ['beside the passer', 'wr:H@-7,-1.5 qb:Q@0,-5 rb:B@1.5,-5', 'B:right'],
  ['the other side', 'wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5', 'B:left'],
  ['pistol', 'wr:H@-7,-1.5 qb:Q@0,-4 rb:B@0,-7', 'B:middle'],
  ['half a yard off is still behind the ball', 'wr:H@-7,-1.5 qb:Q@0,-4 rb:B@0.5,-7', 'B:middle'],
  ['three quarters of a yard is offset', 'wr:H@-7,-1.5 qb:Q@0,-4 rb:B@-0.75,-7', 'B:left'],
  ['I', 'qb:Q@0,-1.3 rb:F@0,-4.5 rb:B@0,-7', 'F:middle B:middle'],
  ['offset I', 'qb:Q@0,-1.3 rb:F@1.5,-4.5 rb:B@0,-7', 'B:middle F:right'],
  ['split backs', 'qb:Q@0,-5 rb:F@-1.5,-5 rb:B@1.5,-5', 'F:left B:right'],
  ['a receiver in the backfield is a back', 'rb:B@7,-1.5 qb:Q@0,-5 wr:H@1.5,-5', 'H:right'],
  ['an up-back straight behind the snapper is no receiver', 'qb:Q@0,-5 rb:F@0,-2 rb:B@1.5,-5', 'F:middle B:right'],
  ['nobody', 'wr:H@-7,-1.5 wr:A@7,-1.5 qb:Q@0,-5', ''],
];

/*
 * In the backfield: at least 2.5 yards deep and no more than 1.5 outside the tackles (conventions of this project). The line of
 * these rows has its tackles 2.5 yards from the ball.
 */
const BACKFIELD: readonly (readonly [name: string, at: string, back: boolean])[] = [
  ['just inside on the right', '4,-3', true],
  ['just inside on the left', '-4,-3', true],
  ['just outside on the right', '4.01,-3', false],
  ['just outside on the left', '-4.01,-3', false],
  ['just deep enough', '3,-2.5', true],
  ['not deep enough', '3,-2.49', false],
];

describe('in the backfield or not', () => {
  it.each(BACKFIELD)('%s', (_name, at, back) => {
    const facts = factsOf(
      `ol:T1@-2.5 ol:G1@-1.25 sn:C@0 ol:G2@1.25 ol:T2@2.5 te:Y@3.7 wr:X@-14 wr:Z@14,-1.5 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@${at}`,
    );
    expect(facts.backs.map(({ player }) => player)).toEqual(back ? ['B'] : []);
    expect(facts.receivers.some(({ player }) => player === 'B')).toBe(!back);
  });
});

describe('backs and their side', () => {
  it.each(BACKS)('%s', (_name, backs, read) => {
    const facts = factsOf(`line te:Y@4 wr:X@-14 wr:Z@14,-1.5 ${backs}`);
    expect(facts.backs.map(({ player, place }) => `${player}:${place}`).join(' ')).toBe(read);
  });
});
