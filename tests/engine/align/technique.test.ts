import { describe, expect, it } from 'vitest';
import { inBox, techniqueAt } from '../../../src/engine/align/technique.ts';
import type { Leverage } from '../../../src/engine/index.ts';
import { factsOf } from '../book.ts';

/** A tight end on each side with a 3 ft split, as in the published numbering; and nobody outside the tackles. */
const CLOSED = factsOf('line te:Y@4.3333 te:U@-4.3333 wr:X@-14,-1.5 wr:Z@14,-1.5 qb:Q@0,-4 rb:B@0,-7');
const OPEN = factsOf('line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5');
/** Tackles 2.5 yards from the ball, so that edges fall on round numbers. */
const HALVES = factsOf(
  'ol:T1@-2.5 ol:G1@-1.25 sn:C@0 ol:G2@1.25 ol:T2@2.5 wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
);

interface Row {
  /** The number most staffs use for it. */
  readonly number: string;
  /** Feet from the ball. */
  readonly feet: number;
  /** Snapper 0, guard 1, tackle 2, end 3. */
  readonly body: number;
  readonly leverage: Leverage;
}

/*
 * Even = head up, odd = outside shoulder, i = inside shoulder: "Defensive Numbering & Defensive Line", Garnet and Black
 * Attack, 27 Jul 2016; "Defensive Line Technique Numbering", Coach Z; "Gap (American football)", Wikipedia, which calls 7
 * and 9 not universal. 8, about two yards outside the end: P. W. Bryant, Building a Championship Football Team. The feet
 * are derived from 2 ft bodies and 2 ft splits, 3 ft to the tight end.
 */
const ROWS: readonly Row[] = [
  { number: 'shade on the centre', feet: 1, body: 0, leverage: 'outside-foot' },
  { number: '1', feet: 2, body: 0, leverage: 'outside' },
  { number: '2i', feet: 3, body: 1, leverage: 'inside-foot' },
  { number: '2', feet: 4, body: 1, leverage: 'head' },
  { number: '3', feet: 5, body: 1, leverage: 'outside-foot' },
  { number: '4i', feet: 7, body: 2, leverage: 'inside-foot' },
  { number: '4', feet: 8, body: 2, leverage: 'head' },
  { number: '5', feet: 9, body: 2, leverage: 'outside-foot' },
  { number: '7, also 6i', feet: 12, body: 3, leverage: 'inside-foot' },
  { number: '6', feet: 13, body: 3, leverage: 'head' },
  { number: '9', feet: 14, body: 3, leverage: 'outside-foot' },
  { number: '8', feet: 20, body: 3, leverage: 'outside' },
];

describe('from a spot to the technique, tight end on both sides', () => {
  it('0 is nose to nose with the centre, on no side', () => {
    expect(techniqueAt({ x: 0, y: 0.8 }, CLOSED)).toEqual({ side: 'middle', index: 0, leverage: 'head', ghost: false });
  });

  it('half a foot off the ball is still on no side, a hair more is shaded', () => {
    expect(techniqueAt({ x: 1 / 6, y: 0.8 }, CLOSED)?.side).toBe('middle');
    expect(techniqueAt({ x: -1 / 6, y: 0.8 }, CLOSED)?.side).toBe('middle');
    expect(techniqueAt({ x: 0.17, y: 0.8 }, CLOSED)?.side).toBe('right');
    expect(techniqueAt({ x: -0.17, y: 0.8 }, CLOSED)?.side).toBe('left');
  });

  it.each(ROWS)('$number', ({ feet, body, leverage }) => {
    const expected = { index: body, leverage, ghost: false };
    expect(techniqueAt({ x: feet / 3, y: 0.8 }, CLOSED)).toEqual({ side: 'right', ...expected });
    expect(techniqueAt({ x: -feet / 3, y: 0.8 }, CLOSED)).toEqual({ side: 'left', ...expected });
  });

  // "Linebackers: add a zero": the same shade at linebacker depth. J. T. Reed, "Terms of Football".
  it.each(ROWS)('$number, at linebacker depth', ({ feet, body, leverage }) => {
    expect(techniqueAt({ x: feet / 3, y: 4.5 }, CLOSED)).toMatchObject({ index: body, leverage });
  });
});

/*
 * With nobody outside the tackle a wide man has the number of the man who is not there (common practice, no source). The
 * ghost stands at this project's own default split, 2 ft: 12 ft from the ball.
 */
const GHOSTS: readonly (Row & { readonly ghost: boolean })[] = [
  { number: '5', feet: 9, body: 2, leverage: 'outside-foot', ghost: false },
  { number: 'wide 5', feet: 10, body: 2, leverage: 'outside', ghost: false },
  { number: 'ghost 7', feet: 11, body: 3, leverage: 'inside-foot', ghost: true },
  { number: 'ghost 6', feet: 12, body: 3, leverage: 'head', ghost: true },
  { number: 'ghost 9', feet: 13, body: 3, leverage: 'outside-foot', ghost: true },
  { number: 'wide ghost 9', feet: 14, body: 3, leverage: 'outside', ghost: true },
];

describe('from a spot to the technique, nobody outside the tackles', () => {
  it.each(GHOSTS)('$number', ({ feet, body, leverage, ghost }) => {
    const expected = { index: body, leverage, ghost };
    expect(techniqueAt({ x: feet / 3, y: 0.8 }, OPEN)).toEqual({ side: 'right', ...expected });
    expect(techniqueAt({ x: -feet / 3, y: 0.8 }, OPEN)).toEqual({ side: 'left', ...expected });
  });
});

/** Where one technique ends and the next begins: half a foot between two shades, half way between two men. */
const EDGES: readonly (readonly [name: string, x: number, body: number, leverage: Leverage])[] = [
  ['still head up on the centre', 0.16, 0, 'head'],
  ['shaded on him', 0.18, 0, 'outside-foot'],
  ['the last shade of the tackle', 3.16, 2, 'outside-foot'],
  ['a whole man outside him', 3.18, 2, 'outside'],
  ['half way between guard and tackle is the guard’s', 2, 1, 'outside'],
  ['a hair farther is the tackle’s', 2.01, 2, 'inside'],
  ['half way between centre and guard is the centre’s', 2 / 3, 0, 'outside'],
];

describe('between two techniques', () => {
  it.each(EDGES)('%s', (_name, x, body, leverage) => {
    expect(techniqueAt({ x, y: 0.8 }, OPEN)).toMatchObject({ index: body, leverage });
    expect(techniqueAt({ x: -x, y: 0.8 }, OPEN)).toMatchObject({ index: body, leverage });
  });
});

/** The box: no deeper than 6.5 yards, no wider than 2.5 outside the last man (conventions of this project). */
const BOX: readonly (readonly [name: string, facts: typeof OPEN, x: number, y: number, inside: boolean])[] = [
  ['a linebacker', OPEN, 1.6, 4.5, true],
  ['at its depth', OPEN, 0, 6.5, true],
  ['deeper', OPEN, 0, 6.6, false],
  ['at its width', OPEN, 5.16, 4, true],
  ['wider', OPEN, 5.17, 4, false],
  ['at its very edge', HALVES, 5, 4, true],
  ['over its very edge', HALVES, 5.001, 4, false],
  ['the tight end makes it wider', CLOSED, 5.17, 4, true],
  ['wide of the tight end', CLOSED, 6.84, 4, false],
  ['an apex', OPEN, 6, 4.5, false],
  ['a safety', OPEN, 4, 11, false],
];

describe('in the box', () => {
  it.each(BOX)('%s', (_name, facts, x, y, inside) => {
    expect(inBox({ x, y }, facts)).toBe(inside);
    expect(inBox({ x: -x, y }, facts)).toBe(inside);
    expect(techniqueAt({ x, y }, facts) === null).toBe(!inside);
  });
});

const BODIES: readonly (readonly [name: string, look: string, x: number, body: number, leverage: Leverage])[] = [
  ['on a wing', 'line te:Y@4 te:U@5.3,-1.5 wr:X@-14 wr:Z@-10,-1.5 qb:Q@0,-1.3 rb:B@0,-7', 5.3, 4, 'head'],
  ['outside a wing', 'line te:Y@4 te:U@5.3,-1.5 wr:X@-14 wr:Z@-10,-1.5 qb:Q@0,-1.3 rb:B@0,-7', 5.9, 4, 'outside'],
  [
    'on the second tackle of an unbalanced line',
    'ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 ol:T3@4 wr:X@-14 wr:H@-7,-1.5 wr:A@8,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    4,
    3,
    'head',
  ],
  [
    'on the guard who is the last man of its short side',
    'ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 ol:T3@4 wr:X@-14 wr:H@-7,-1.5 wr:A@8,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    -2.4,
    1,
    'outside',
  ],
];

describe('bodies are counted outward from the snapper', () => {
  it.each(BODIES)('%s', (_name, text, x, body, leverage) => {
    expect(techniqueAt({ x, y: 0.8 }, factsOf(text))).toMatchObject({ index: body, leverage, ghost: false });
  });
});
