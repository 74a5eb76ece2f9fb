import { describe, expect, it } from 'vitest';
import { readLook, type LookFacts } from '../../../src/engine/index.ts';
import { factsOf, look } from '../book.ts';

/** Gap letters across the line, `C B A | A B C`. */
function gaps(facts: LookFacts): string {
  const left = facts.gaps.filter(({ gap }) => gap.side === 'left').map(({ gap }) => gap.letter);
  const right = facts.gaps.filter(({ gap }) => gap.side === 'right').map(({ gap }) => gap.letter);
  return `${left.join(' ')} | ${right.join(' ')}`;
}

/** The bodies of both sides from the snapper outward, a wing in brackets: `C G1 T1 | C G2 T2 Y (U)`. */
function bodies(facts: LookFacts): string {
  const side = (which: 'left' | 'right'): string =>
    facts.surface[which].map(({ player, how }) => (how === 'wing' ? `(${player})` : player)).join(' ');
  return `${side('left')} | ${side('right')}`;
}

interface Row {
  readonly name: string;
  readonly look: string;
  readonly gaps: string;
  readonly count: number;
}

/*
 * Gaps to own = blockers in or attached to the box + 1: "Two Gap, One Gap Revisited", Football Is Life blog, 17 Aug 2015.
 * Letters from the snapper outward, D beside a tight end, E beside a second one or a wing: "Gaps of understanding",
 * Washington Post, 8 Oct 2020; "Gap (American football)", Wikipedia. Where nothing else is said, those are the sources.
 */
const ROWS: readonly Row[] = [
  {
    name: 'five linemen: six',
    look: 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    gaps: 'C B A | A B C',
    count: 6,
  },
  {
    name: 'a tight end adds one on his side',
    look: 'line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    gaps: 'C B A | A B C D',
    count: 7,
  },
  {
    name: 'a tight end on the left adds it there',
    look: 'line te:Y@-4 wr:X@14 wr:H@7,-1.5 wr:Z@-14,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    gaps: 'D C B A | A B C',
    count: 7,
  },
  {
    name: 'a tight end on each side: eight',
    look: 'line te:Y@4 te:U@-4 wr:X@-14,-1.5 wr:Z@14,-1.5 qb:Q@0,-4 rb:B@0,-7',
    gaps: 'D C B A | A B C D',
    count: 8,
  },
  {
    name: 'tight end and wing on one side: eight, E there',
    look: 'line te:Y@4 te:U@5.3,-1.5 wr:X@-14 wr:Z@-10,-1.5 qb:Q@0,-1.3 rb:B@0,-7',
    gaps: 'C B A | A B C D E',
    count: 8,
  },
  {
    name: 'two tight ends on the line on one side: eight, E there',
    look: 'line te:Y@4 te:U@5.333 wr:X@-14 wr:Z@-10,-1.5 qb:Q@0,-1.3 rb:B@0,-7',
    gaps: 'C B A | A B C D E',
    count: 8,
  },
  {
    name: 'two tight ends and a wing: nine',
    look: 'line te:Y@4 te:U@-4 te:W@5.3,-1.5 wr:Z@-14,-1.5 qb:Q@0,-1.3 rb:B@0,-7',
    gaps: 'D C B A | A B C D E',
    count: 9,
  },
  {
    // Common practice, no source: a wing beside the tackle makes the gap a tight end there would make.
    name: 'a wing with no tight end: seven',
    look: 'line te:Y@4.2,-1.6 wr:X@-14 wr:Z@14 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    gaps: 'C B A | A B C D',
    count: 7,
  },
  {
    // From memory: letters are counted from the new middle man, so four on one side and two on the other.
    name: 'tackles over: still six, A to D and A to B',
    look: 'ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 ol:T3@4 wr:X@-14 wr:H@-7,-1.5 wr:A@8,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    gaps: 'B A | A B C D',
    count: 6,
  },
  {
    // From memory, likewise.
    name: 'tackles over to the left',
    look: 'ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@-2.667 ol:T3@-4 wr:X@-14 wr:H@-7,-1.5 wr:A@8,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    gaps: 'D C B A | A B',
    count: 6,
  },
  {
    // From memory: the end man on the short side of an unbalanced line stands where a tackle would.
    name: 'tackles over, tight end on the short side: seven',
    look: 'te:Y@-2.667 ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 ol:T3@4 wr:H@-7,-1.5 wr:A@8,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    gaps: 'C B A | A B C D',
    count: 7,
  },
  {
    name: 'empty: six',
    look: 'line wr:X@-14 wr:H@-7,-1.5 wr:V@6,-1.5 wr:A@10,-1.5 wr:Z@14 qb:Q@0,-5',
    gaps: 'C B A | A B C',
    count: 6,
  },
  {
    name: 'empty with a tight end: seven',
    look: 'line te:Y@4 wr:X@-14 rb:B@-7,-1.5 wr:H@8,-1.5 wr:Z@14,-1.5 qb:Q@0,-5',
    gaps: 'C B A | A B C D',
    count: 7,
  },
  {
    // From memory: a fullback's gap moves with him; the standing ones are those of the line.
    name: 'I with a tight end: seven standing ones',
    look: 'line te:Y@4 wr:X@-14 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:B@0,-7',
    gaps: 'C B A | A B C D',
    count: 7,
  },
  {
    name: 'goal line, 23: nine',
    look: 'line te:Y@4 te:U@-4 te:W@5.3,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:B@0,-7',
    gaps: 'D C B A | A B C D E',
    count: 9,
  },
  {
    name: 'three backs, nobody attached: six',
    look: 'line wr:X@-14 wr:Z@14 qb:Q@0,-1.3 rb:F@0,-4 rb:A@-1.8,-5 rb:B@1.8,-5',
    gaps: 'C B A | A B C',
    count: 6,
  },
];

describe('gaps of a formation', () => {
  it.each(ROWS)('$name', (row) => {
    const facts = factsOf(row.look);
    expect(gaps(facts)).toBe(row.gaps);
    expect(facts.gaps).toHaveLength(row.count);
  });
});

/*
 * Attached or not. Splits run from toe-to-toe to 6 ft (smartfootball.blogspot.com, 15 Oct 2008); that a man farther than
 * 4 ft from his neighbour no longer belongs to the surface is a convention of this project.
 */
const ATTACHED: readonly (readonly [name: string, men: string, bodies: string])[] = [
  ['3 ft split: attached', 'te:Y@4.333 wr:H@7,-1.5', 'C G1 T1 | C G2 T2 Y'],
  ['4 ft split: just attached', 'te:Y@4.66 wr:H@7,-1.5', 'C G1 T1 | C G2 T2 Y'],
  ['beyond 4 ft: flexed', 'te:Y@4.7 wr:H@7,-1.5', 'C G1 T1 | C G2 T2'],
  ['flexed and off the line', 'te:Y@6.5,-1.5 wr:H@9,-1.5', 'C G1 T1 | C G2 T2'],
  ['a wing outside the tackle', 'te:Y@4.2,-1.6 wr:H@7,-1.5', 'C G1 T1 | C G2 T2 (Y)'],
  ['a wing outside the tight end', 'te:Y@4 te:H@5.3,-1.5', 'C G1 T1 | C G2 T2 Y (H)'],
  ['two wings outside one another', 'te:Y@4,-1.5 te:H@5.2,-1.8', 'C G1 T1 | C G2 T2 (Y) (H)'],
  ['stacked behind the tight end: no wing', 'te:Y@4 te:H@4.4,-1.5', 'C G1 T1 | C G2 T2 Y'],
  ['behind the tackle: no wing', 'te:Y@4 te:H@2.5,-1.8', 'C G1 T1 | C G2 T2 Y'],
  ['exactly 4 ft from the tight end, on the line: just attached', 'te:Y@4 te:H@6', 'C G1 T1 | C G2 T2 Y H'],
  ['exactly 4 ft from the tight end, off it: just a wing', 'te:Y@4 te:H@6,-1.5', 'C G1 T1 | C G2 T2 Y (H)'],
  ['two yards deep: just a wing', 'te:Y@4 te:H@5.3,-2', 'C G1 T1 | C G2 T2 Y (H)'],
  ['too deep for a wing', 'te:Y@4 te:H@5.3,-2.4', 'C G1 T1 | C G2 T2 Y'],
  ['too wide for a wing', 'te:Y@4 te:H@6.2,-1.5', 'C G1 T1 | C G2 T2 Y'],
  ['the passer is nobody’s wing', 'te:Y@4 wr:H@9,-1.5', 'C G1 T1 | C G2 T2 Y'],
];

describe('who belongs to the surface', () => {
  it.each(ATTACHED)('%s', (_name, men, expected) => {
    expect(bodies(factsOf(`line ${men} wr:X@-14 wr:Z@14,-1.5 qb:Q@3.5,-1.3 rb:B@0,-7`))).toBe(expected);
  });

  it('a lineman belongs to it however wide his split', () => {
    const facts = factsOf(
      'ol:T1@-2.667 ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@3.5 te:Y@5 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5',
    );
    expect(bodies(facts)).toBe('C G1 T1 | C G2 T2 Y');
    expect(facts.edge).toEqual({ left: 'C', right: 'D' });
  });
});

/** Where gaps lie: half way between two men; the outermost one yard outside the last (a convention of this project). */
const PLACES: readonly (readonly [gap: string, x: number, inside: string, outside: string | null])[] = [
  ['C-left', -3.667, 'T1', null],
  ['B-left', -2, 'G1', 'T1'],
  ['A-left', -0.667, 'C', 'G1'],
  ['A-right', 0.667, 'C', 'G2'],
  ['B-right', 2, 'G2', 'T2'],
  ['C-right', 3.333, 'T2', 'Y'],
  ['D-right', 5, 'Y', null],
];

describe('where the gaps lie', () => {
  const facts = factsOf('line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5');

  it('one row for every gap, from left to right', () => {
    expect(facts.gaps.map(({ gap }) => `${gap.letter}-${gap.side}`)).toEqual(PLACES.map(([gap]) => gap));
  });

  it.each(PLACES)('%s at %d, between %s and %s', (name, x, inside, outside) => {
    const found = facts.gaps.find(({ gap }) => `${gap.letter}-${gap.side}` === name);
    expect(found?.x).toBeCloseTo(x, 3);
    expect(found?.inside).toBe(inside);
    expect(found?.outside).toBe(outside);
  });
});

describe('reading a look', () => {
  const crowd =
    'sn:C@0 ol:G1@1.333 ol:G2@2.667 ol:T1@4 ol:T2@5.333 te:Y@6.667 te:U@8 te:V@9.333 te:W@10.667 qb:Q@0,-5 rb:B@0,-7';

  it('counts at most seven gaps on a side, however many men a drawing crowds there', () => {
    const facts = factsOf(crowd);
    expect(gaps(facts)).toBe('A | A B C D E F G');
    expect(facts.edge).toEqual({ left: 'A', right: 'G' });
  });

  it('the order of the players does not matter', () => {
    const drawn = look('line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5');
    const reversed = { ...drawn, players: [...drawn.players].reverse() };
    expect(readLook(reversed, 'college', 'left')).toEqual(readLook(drawn, 'college', 'left'));
  });

  it('nor where two men are drawn on one spot', () => {
    const drawn = look('line te:Y@4 te:U@4 wr:X@-14 wr:W@-14 qb:Q@0,-5 rb:B@-1.5,-5');
    const twoBacks = look('line te:Y@4 wr:X@-14 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5 rb:A@-1.5,-5');
    for (const one of [drawn, twoBacks]) {
      const reversed = { ...one, players: [...one.players].reverse() };
      expect(readLook(reversed, 'college', 'left')).toEqual(readLook(one, 'college', 'left'));
    }
    expect(bodies(readLook(drawn, 'college', 'left'))).toBe('C G1 T1 | C G2 T2 U Y');
    expect(readLook(twoBacks, 'college', 'left').backs.map(({ player }) => player)).toEqual(['A', 'B']);
  });

  it('knows who is on the line and who passes', () => {
    const facts = factsOf('line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5');
    expect(facts.onLine).toEqual(['X', 'T1', 'G1', 'C', 'G2', 'T2', 'Y']);
    expect(facts.passer).toBe('Q');
  });

  it('has no passer when none is drawn', () => {
    expect(factsOf('line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 rb:W@0,-5 rb:B@-1.5,-5').passer).toBeNull();
  });

  it('a look without a snapper is a broken promise', () => {
    const drawn = look('line te:Y@4 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@-1.5,-5');
    const headless = { ...drawn, players: drawn.players.filter(({ kind }) => kind !== 'snapper') };
    expect(() => readLook(headless, 'college', 'left')).toThrow('no snapper');
  });
});
