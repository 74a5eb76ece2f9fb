import { describe, expect, it } from 'vitest';
import type { Side } from '../../../src/engine/index.ts';
import { RUN_CONCEPTS, runConcept, type RunConcept, type RunPicture } from '../../../src/engine/offence/index.ts';
import { factsOf, gapText, LOOKS, read, say, sayAll } from '../book.ts';

/*
 * The textbook of run concepts as a table: where it hits, who moves from where to where, what that does to the count of gaps.
 * Sides are the DEFENCE's; tight ends stand on its right in the looks below; the left guard and tackle are G1 and T1.
 *
 * Status: from memory, standard coaching knowledge to be held against a coach's own book, except where a source stands beside
 * a row. The arithmetic: gaps are blockers and one more ("Two Gap, One Gap Revisited", Football Is Life blog, 2015).
 */
const EMPTY = 'line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@18,-1.5 wr:S@9,-1.5 qb:Q@0,-5';
const WING_LEFT = 'line te:Y@4 te:U@-4,-1.5 wr:X@-18 wr:Z@18,-1.5 qb:Q@0,-5 rb:T@0,-7';
/** A man two yards deep behind the right guard: too near to be a back, off the line, inside the tackle. */
const HALF_BACK = 'line te:Y@1.5,-2 wr:X@-18 wr:H@-9,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@0,-7';
const LOOK = { ...LOOKS, empty: EMPTY, 'wing left': WING_LEFT, 'half back': HALF_BACK } as const;
type LookName = keyof typeof LOOK;

interface Row {
  readonly concept: RunConcept;
  readonly look: LookName;
  readonly to: Side;
  /** The point of attack, every gap of it; `>` bounce, `<` cutback. */
  readonly hits: string;
  /** `G1 A-left C-right` a puller with the gap he closes and the one he opens; `F C-right` a lead; the passer and the pitch. */
  readonly moves: string;
  readonly change: readonly [left: number, right: number];
}

function hits({ aims, bounce, cutback }: RunPicture): string {
  return [
    aims.map(gapText).join(' '),
    ...(bounce === null ? [] : [`> ${gapText(bounce)}`]),
    ...(cutback === null ? [] : [`< ${gapText(cutback)}`]),
  ].join(' ');
}

function moves({ pullers, leads, keeper, pitch }: RunPicture): string {
  return [
    ...pullers.map((each) => `${each.player} ${gapText(each.from)} ${gapText(each.to)}`),
    ...leads.map((each) => `${each.player} ${gapText(each.to)}`),
    ...(keeper === null ? [] : [`keep ${gapText(keeper.where)}`]),
    ...(pitch === null ? [] : [`pitch ${pitch.player} ${gapText(pitch.where)}`]),
  ].join(', ');
}

const row = (
  concept: RunConcept,
  look: LookName,
  to: Side,
  at: string,
  movers: string,
  ...change: readonly [number, number]
): Row => ({ concept, look, to, hits: at, moves: movers, change });

const ROWS: readonly Row[] = [
  // Zones: nobody pulls, nothing changes but the slice.
  row('inside-zone', '10 doubles', 'right', 'A-right B-right < A-left', '', 0, 0),
  row('inside-zone', '11 tight end', 'right', 'A-right B-right < A-left', '', 0, 0),
  row('inside-zone', '21 pro I', 'right', 'A-right B-right < A-left', 'F A-right', 0, 1),
  row('outside-zone', '11 tight end', 'right', 'D-right < B-right', '', 0, 0),
  row('outside-zone', '11 tight end', 'left', 'C-left < B-left', '', 0, 0),
  row('outside-zone', '12 wing', 'right', 'E-right < B-right', '', 0, 0),
  // One more on the side away.
  row('split-zone', '21 pro I', 'right', 'A-right B-right < A-left', 'F C-left', 1, 0),
  row('split-zone', '11 tight end', 'right', 'A-right B-right < A-left', 'Y C-right C-left', 1, -1),
  row('split-zone', '12 wing', 'right', 'A-right B-right < A-left', 'U D-right C-left', 1, -1),
  row('split-zone', 'half back', 'right', 'A-right B-right < A-left', 'Y C-left', 1, 0),
  row('duo', '11 tight end', 'right', 'A-right B-right > D-right', '', 0, 0),
  // Plus one where it goes, minus one away, and one for a back who kicks out: "3-4 Zone Pressure to Attack the Run",
  // Blitzology, 2016; "Teaching spill overlap technique", Coach Kou.
  row('power', '11 tight end', 'right', 'C-right', 'G1 A-left C-right', -1, 1),
  row('power', '21 pro I', 'right', 'C-right', 'G1 A-left C-right, F D-right', -1, 2),
  row('power', '21 pro I', 'left', 'B-left', 'G2 A-right B-left, F C-left', 2, -1),
  row('power', '20 split backs', 'right', 'B-right', 'G1 A-left B-right, T C-right', -1, 2),
  row('power', 'half back', 'left', 'B-left', 'G2 A-right B-left, Y C-left', 2, -1),
  row('counter', '10 doubles', 'right', 'C-right', 'G1 A-left C-right, T1 B-left C-right', -2, 2),
  row('counter', '11 tight end', 'right', 'C-right', 'G1 A-left D-right, T1 B-left C-right', -2, 2),
  row('counter', '21 pro I', 'right', 'C-right', 'G1 A-left D-right, T1 B-left C-right, F B-left', -1, 2),
  row('counter-with-back', '21 pro I', 'right', 'C-right', 'G1 A-left D-right, F C-right', -1, 2),
  row('counter-with-back', '20 split backs', 'left', 'C-left', 'G2 A-right C-left, F C-left', 2, -1),
  row('counter-with-back', '11 tight end', 'left', 'C-left', 'G2 A-right C-left, Y C-right C-left', 2, -2),
  // "Defending a Trap or Kick Block", Breakdown Sports, 2014.
  row('trap', '10 doubles', 'right', 'A-right B-right', 'G1 A-left A-right', -1, 1),
  row('iso', '21 pro I', 'right', 'B-right A-right', 'F B-right', 0, 1),
  row('iso', '20 split backs', 'left', 'B-left A-left', 'F B-left', 1, 0),
  row('toss', '11 tight end', 'right', 'D-right', 'G2 A-right D-right', 0, 0),
  row('toss', '21 pro I', 'right', 'D-right', 'G2 A-right D-right, F D-right', 0, 1),
  // "Using Edge Pressure to Attack Jet Sweep", Blitzology, 2020.
  row('jet-sweep', '11 tight end', 'right', 'D-right', 'T D-right', 0, 1),
  row('jet-sweep', '10 doubles', 'left', 'C-left', 'T C-left', 1, 0),
  // "Teaching Gap Exchanges & Defending the Zone Read", MatchQuarters.
  row('zone-read', '10 doubles', 'right', 'A-right B-right < A-left', 'keep C-left', 1, 0),
  row('zone-read', '11 tight end', 'right', 'A-right B-right < A-left', 'keep C-left', 1, 0),
  row('zone-read', '11 tight end', 'left', 'A-left B-left < A-right', 'keep C-right', 0, 1),
  row('power-read', '11 tight end', 'right', 'D-right', 'G1 A-left C-right, keep C-right', -1, 2),
  row('speed-option', '10 doubles', 'right', 'C-right', 'keep C-right, pitch T C-right', 0, 1),
  row('midline', '10 doubles', 'right', 'A-right', 'keep B-right', 0, 1),
  row('midline', '21 pro I', 'right', 'A-right', 'T B-right, keep B-right', 0, 2),
  row('inside-veer', '20 split backs', 'right', 'B-right', 'keep C-right, pitch F C-right', 0, 2),
  row('inside-veer', '21 pro I', 'right', 'B-right', 'keep C-right, pitch T D-right', 0, 2),
  row('inside-veer', 'wing left', 'right', 'B-right', 'keep C-right, pitch U D-right', -1, 2),
  row('quarterback-draw', '10 doubles', 'right', 'A-right B-right', 'T A-right, keep A-right', 0, 1),
  row('quarterback-draw', 'empty', 'right', 'A-right B-right', 'keep A-right', 0, 0),
];

it.each(ROWS)('$concept against $look, to the $to', ({ concept, look, to, ...expected }) => {
  const picture = read(runConcept(factsOf(LOOK[look]), concept, to));
  expect({
    hits: hits(picture),
    moves: moves(picture),
    change: [picture.gapChange.left, picture.gapChange.right],
  }).toEqual(expected);
});

it('has a row for every concept', () => {
  expect(RUN_CONCEPTS.filter((concept) => ROWS.every((each) => each.concept !== concept))).toEqual([]);
});

describe('a concept that needs somebody the look lacks', () => {
  it.each([
    ['power', '10 doubles', 'right', 'no second back, and no tight end on the right, can block the edge out'],
    ['power', '11 tight end', 'left', 'no second back, and no tight end on the left, can block the edge out'],
    ['iso', '11 tight end', 'right', 'there is no second back to lead'],
    ['split-zone', '10 doubles', 'right', 'no second back, and nobody attached on the right, can lead'],
    ['split-zone', '11 tight end', 'left', 'no second back, and nobody attached on the left, can lead'],
    ['counter-with-back', '11 tight end', 'right', 'no second back, and nobody attached on the left, can lead'],
    ['inside-veer', '10 doubles', 'right', 'there is no second back and no wing to pitch to'],
    ['inside-zone', 'empty', 'right', 'there is no back to carry the ball'],
    ['jet-sweep', '10 trips', 'right', 'nobody off the line can come in motion to the right'],
  ] as const)('%s against %s to the %s is refused', (concept, look, to, reason) => {
    const result = runConcept(factsOf(LOOK[look]), concept, to);
    expect(result.ok ? 'can be run' : say(result.problem)).toBe(reason);
  });

  it('counter is refused where the line has no tackle on the side he would pull from', () => {
    const tacklesOver =
      'sn:C@0 ol:G1@-1.33 te:Y@-2.67 ol:G2@1.33 ol:T1@2.67 ol:T2@4 wr:X@18 wr:H@9,-1.5 wr:Z@-14,-1.5 qb:Q@0,-5 rb:T@1.5,-5';
    const result = runConcept(factsOf(tacklesOver), 'counter', 'right');
    expect(result.ok ? 'can be run' : say(result.problem)).toBe('there is no tackle on the left to pull');
    expect(read(runConcept(factsOf(tacklesOver), 'power', 'right')).aim).toEqual({ side: 'right', letter: 'C' });
  });
});

describe('what floats in', () => {
  const floats = (concept: RunConcept, look: LookName, to: Side): readonly string[] =>
    read(runConcept(factsOf(LOOK[look]), concept, to)).floating.map((each) => `${each.id} ${gapText(each.near)}`);

  it.each([
    // The edge gets one more from the puller and another from a back who leads.
    ['toss', '11 tight end', ['puller G2 D-right']],
    ['toss', '21 pro I', ['puller G2 D-right', 'lead F D-right']],
    ['power', '21 pro I', ['puller G1 C-right', 'lead F D-right']],
    ['zone-read', '10 doubles', ['passer Q C-left']],
    ['inside-veer', '20 split backs', ['passer Q C-right', 'pitch F C-right']],
    // The passer takes the back's place as the runner; the back who leads for him makes the gap.
    ['quarterback-draw', '10 doubles', ['lead T A-right']],
  ] as const)('%s against %s', (concept, look, expected) => {
    expect(floats(concept, look, 'right')).toEqual(expected);
  });

  it('stands at the gap it opens beside, a pitch outside it', () => {
    const { floating } = read(runConcept(factsOf(LOOK['20 split backs']), 'inside-veer', 'left'));
    expect(floating.map((each) => [each.kind, each.side, Math.round(each.x * 100) / 100])).toEqual([
      ['passer', 'left', -3.67],
      ['pitch', 'left', -5.67],
    ]);
  });
});

it('says why', () => {
  expect(sayAll(read(runConcept(factsOf(LOOK['21 pro I']), 'power', 'right')).because)).toEqual([
    'by rule, power to the right hits C-right',
    'G1 pulls to C-right, so A-left closes behind him',
    'F leads to D-right, one gap more',
  ]);
});
