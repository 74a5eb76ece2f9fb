import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  analyse,
  asFrontId,
  asPressureId,
  parseCallLine,
  PLACES,
  printAssignment,
  printCallLine,
  printEleven,
  TURNS,
  type CallLine,
  type Tell,
} from '../../../src/engine/index.ts';
import { frozen, LOOKS, pressure, setup, tell } from '../book.ts';

const line = (parts: Partial<CallLine>): CallLine => ({
  front: asFrontId('odd'),
  first: asPressureId('weir'),
  second: asPressureId('osier'),
  turn: 'own',
  spot: 'middle',
  ...parts,
});

const LINES: readonly (readonly [text: string, line: CallLine])[] = [
  ['odd: weir @middle', line({ second: null })],
  ['odd: weir @left', line({ second: null, spot: 'left' })],
  ['odd: weir + osier own @middle', line({})],
  ['odd: weir + osier same @right', line({ turn: 'same', spot: 'right' })],
  ['tite-2: weir + osier opposite @left', line({ front: asFrontId('tite-2'), turn: 'opposite', spot: 'left' })],
];

const LINE = 'front: first + second turn @spot';
const BAD: readonly (readonly [text: string, found: string, expected: string])[] = [
  ['', '', LINE],
  ['odd weir @left', 'odd weir @left', LINE],
  ['odd: weir', 'odd: weir', LINE],
  ['odd: weir left', 'odd: weir left', LINE],
  ['odd: weir + osier @left', 'odd: weir + osier @left', LINE],
  ['odd: weir + @left', 'odd: weir + @left', LINE],
  ['odd: weir  @left', 'odd: weir  @left', LINE],
  ['odd: weir @up', 'up', 'left, middle, right'],
  ['odd: weir + osier across @left', 'across', 'own, same, opposite'],
  ['odd: weir + osier across @up', 'up', 'left, middle, right'],
];

describe('a call in one line', () => {
  it.each(LINES)('%s', (text, call) => {
    expect(parseCallLine(text)).toEqual({ ok: true, value: call });
    expect(printCallLine(call)).toBe(text);
  });

  it.each(BAD)('%s is none', (text, found, expected) => {
    expect(parseCallLine(text)).toEqual({ ok: false, problem: { found, expected } });
  });

  it('printed and read back is the same; a pressure alone is turned by its own rule', () => {
    const id = fc.stringMatching(/^[A-Za-z0-9_-]{1,12}$/);
    const anyLine: fc.Arbitrary<CallLine> = fc
      .record({
        front: id.map(asFrontId),
        first: id.map(asPressureId),
        second: fc.option(id.map(asPressureId), { nil: null }),
        turn: fc.constantFrom(...TURNS),
        spot: fc.constantFrom(...PLACES),
      })
      .map((each) => (each.second === null ? { ...each, turn: 'own' } : each));
    fc.assert(
      fc.property(anyLine, (call) => {
        expect(parseCallLine(printCallLine(call))).toEqual({ ok: true, value: call });
      }),
      { numRuns: 500 },
    );
  });
});

/** Against a tight end on the right, called there, the shell behind: one man, his two columns. */
const MEN: readonly (readonly [name: string, tells: readonly Tell[], man: string, printed: string])[] = [
  ['rush', [tell('end-call', 'movement', 'rush B-call')], 'RE', 'RE=B-right/rush'],
  ['contain', [tell('end-away', 'movement', 'contain C-away')], 'LE', 'LE=C-left/contain-left'],
  ['two gaps', [], 'N', 'N=A-left+A-right/rush'],
  ['a zone and a gap', [tell('outside-call', 'path', 'rush B-call')], 'SS', 'SS=D-right+force/seam-right'],
  ['a zone and no gap', [], 'LC', 'LC=-/third-left'],
  ['a zone in the middle', [], 'FS', 'FS=-/middle'],
  ['man', [tell('inside-call', 'path', 'man back')], 'M', 'M=-/man:T'],
  ['spy', [tell('inside-call', 'path', 'spy alley')], 'M', 'M=alley/spy'],
  ['a fit', [tell('inside-call', 'consequence', 'fit B-call fold')], 'M', 'M=B-right+fold/-'],
];

describe('one man in one word', () => {
  it.each(MEN)('%s', (_name, tells, letter, printed) => {
    const first = pressure('p', tells);
    const analysis = analyse(frozen(setup({ look: LOOKS['11 tight end'], first })));
    const man = analysis.assignments.find(({ aligned }) => aligned.role.letter === letter);
    expect(man === undefined ? '' : printAssignment(man)).toBe(printed);
    expect(printEleven(analysis).split(' ')).toContain(printed);
  });

  it('the eleven: line, linebackers, secondary, each from left to right', () => {
    const analysis = analyse(frozen(setup({ look: LOOKS['11 tight end'], first: pressure('p', []) })));
    const letters = printEleven(analysis)
      .split(' ')
      .map((man) => man.split('=')[0]);
    expect(letters).toEqual(['LE', 'N', 'RE', 'J', 'W', 'M', 'S', 'LC', 'FS', 'SS', 'RC']);
  });
});
