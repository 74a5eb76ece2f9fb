import { describe, expect, it } from 'vitest';
import {
  asPlayerId,
  defenceLandmarks,
  fieldAt,
  offenceLandmarks,
  type Landmark,
  type OffenceKind,
  type OffencePlayer,
} from '../../../src/engine/index.ts';
import { factsOf } from '../book.ts';

const TIGHT = factsOf('line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5');
const MARKS = fieldAt('high-school', 'middle');
const defence = defenceLandmarks(TIGHT, MARKS, []);

/** The lines of that kind, in yards, sorted. */
function linesOf(lines: readonly Landmark[], axis: 'x' | 'y', kind: Landmark['what']['kind']): readonly number[] {
  return lines
    .filter((line) => line.axis === axis && line.what.kind === kind)
    .map(({ at }) => Math.round(at * 100) / 100)
    .sort((a, b) => a - b);
}

function man(letter: string): OffencePlayer {
  const found = [...TIGHT.players.values()].find((player) => player.letter === letter);
  if (found === undefined) throw new Error(`There is no ${letter}`);
  return found;
}

describe('lines for a defender', () => {
  it('has every shade of the surface once: feet from the ball, 2 ft bodies on 2 ft splits', () => {
    const feet = (from: number, to: number): readonly number[] =>
      Array.from({ length: to - from + 1 }, (_, index) => Math.round(((from + index) / 3) * 100) / 100);
    // The tight end's outside is 14 ft out, the bare tackle's on the other side 10.
    expect(linesOf(defence, 'x', 'shade')).toStrictEqual([...feet(-10, 14)]);
  });

  it('has the spots on receivers split from the line, by side and number', () => {
    const on = defence.flatMap(({ at, what }) => (what.kind === 'receiver' ? [{ ...what, at }] : []));
    expect(on.map(({ side, number, leverage, at }) => `${leverage} ${number} ${side} ${at}`)).toStrictEqual([
      'head 1 left -18',
      'inside 1 left -17',
      'outside 1 left -19',
      'head 2 left -9',
      'inside 2 left -8',
      'outside 2 left -10',
      'head 1 right 16',
      'inside 1 right 15',
      'outside 1 right 17',
    ]);
  });

  it('has the place half way between a receiver and the line', () => {
    // The tackle stands 2 2/3 yd out, the tight end 4.
    expect(linesOf(defence, 'x', 'apex')).toStrictEqual([-10.33, -5.83, 10]);
  });

  // Hash 53 ft 4 in from the sideline (NFHS 1-2-3, from memory), 60 ft (NCAA 1-2-1), 70 ft 9 in (NFL Rule 1); numbers 7 to
  // 9 yd (NCAA 1-2-1-i), 12 to 14 yd (NFL Rule 1); the field 53 1/3 yd wide.
  it.each([
    ['high-school', 'middle', [-8.89, 8.89], [-18.67, 18.67]],
    ['college', 'middle', [-6.67, 6.67], [-18.67, 18.67]],
    ['professional', 'middle', [-3.08, 3.08], [-13.67, 13.67]],
    ['college', 'left', [0, 13.33], [-12, 25.33]],
  ] as const)('has hash and numbers: %s, ball %s', (level, spot, hash, numbers) => {
    const lines = defenceLandmarks(TIGHT, fieldAt(level, spot), []);
    expect(linesOf(lines, 'x', 'hash')).toStrictEqual(hash);
    expect(linesOf(lines, 'x', 'numbers')).toStrictEqual(numbers);
  });

  it('has the depths a defence is taught, and those of his mates', () => {
    // Common practice, no source.
    expect(linesOf(defence, 'y', 'depth')).toStrictEqual([1, 4.5, 7, 12]);
    const mate = { kind: 'offence', player: asPlayerId('mate') } as const;
    const lines = defenceLandmarks(TIGHT, MARKS, [{ mate, at: { x: 3, y: 5.25 } }]);
    expect(linesOf(lines, 'y', 'level')).toStrictEqual([5.25]);
  });
});

describe('lines for a man of the offence', () => {
  it.each<[OffenceKind, readonly number[]]>([
    ['lineman', [-0.6]],
    ['tight-end', [-4.5, -1.5, -0.6]],
    ['receiver', [-5, -1.5, -0.6]],
    ['back', [-7, -5, -4.5, -1.5, -0.6]],
    ['passer', [-7, -5, -4.2, -1.3]],
  ])('has the usual depths of a %s', (kind, depths) => {
    const lines = offenceLandmarks({ ...man('H'), kind }, TIGHT, MARKS, []);
    expect(linesOf(lines, 'y', 'place')).toStrictEqual(depths);
  });

  it('has one split outside the last man, himself left out of the line', () => {
    expect(linesOf(offenceLandmarks(man('Y'), TIGHT, MARKS, []), 'x', 'split')).toContain(4);
    expect(linesOf(offenceLandmarks(man('H'), TIGHT, MARKS, []), 'x', 'split')).toContain(5.33);
  });

  it('has the middle between two men who leave room for one', () => {
    const open = factsOf('line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5');
    const guard = [...open.players.values()].find(({ kind, x }) => kind === 'lineman' && x > 0 && x < 2);
    if (guard === undefined) throw new Error('There is no guard');
    expect(linesOf(offenceLandmarks(guard, open, MARKS, []), 'x', 'between')).toStrictEqual([1.33]);
  });

  it('has the width of a mate on the other side', () => {
    const lines = offenceLandmarks(man('Z'), TIGHT, MARKS, [
      { mate: { kind: 'offence', player: man('X').id }, at: { x: -18, y: -0.6 } },
    ]);
    expect(linesOf(lines, 'x', 'as-wide')).toStrictEqual([18]);
  });
});
