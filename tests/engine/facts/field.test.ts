import { describe, expect, it } from 'vitest';
import { fieldAt, type Place, type RuleLevel } from '../../../src/engine/index.ts';
import { FIELD_WIDTH } from '../../../src/engine/facts/field.ts';
import { factsOf, LOOKS } from '../book.ts';

/*
 * Yards from the ball. Sources: field 160 ft wide, NFL Rule 1-1-1 and NCAA Rule 1-2-1 (NFHS 1-2-1 from memory).
 * Hash to the nearer sideline: NFHS 53 ft 4 in, from memory (as recalled: NFHS Rule 1-2-3 and field diagram); NCAA 60 ft,
 * NCAA Rule 1-2-1 and Appendix D; NFL 70 ft 9 in, NFL Rule 1 and the league's operations glossary, "Hashmarks".
 * Numbers, their middle: NCAA tops at 9 yd, 2 yd tall, Rule 1-2-1-i (8 yd; high school drawn alike); NFL bottoms at 12 yd,
 * 2 yd tall, Rule 1 (13 yd).
 */
type Row = readonly [
  level: RuleLevel,
  spot: Place,
  leftSideline: number,
  leftNumbers: number,
  leftHash: number,
  rightHash: number,
  rightNumbers: number,
  rightSideline: number,
];
const ROWS: readonly Row[] = [
  ['high-school', 'left', -17.778, -9.778, 0, 17.778, 27.556, 35.556],
  ['high-school', 'middle', -26.667, -18.667, -8.889, 8.889, 18.667, 26.667],
  ['high-school', 'right', -35.556, -27.556, -17.778, 0, 9.778, 17.778],
  ['college', 'left', -20, -12, 0, 13.333, 25.333, 33.333],
  ['college', 'middle', -26.667, -18.667, -6.667, 6.667, 18.667, 26.667],
  ['college', 'right', -33.333, -25.333, -13.333, 0, 12, 20],
  ['professional', 'left', -23.583, -10.583, 0, 6.167, 16.75, 29.75],
  ['professional', 'middle', -26.667, -13.667, -3.083, 3.083, 13.667, 26.667],
  ['professional', 'right', -29.75, -16.75, -6.167, 0, 10.583, 23.583],
];

const within = (found: number, wanted: number): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(0.01);
};

describe('the field around the ball', () => {
  it('is 53 1/3 yards wide', () => {
    within(FIELD_WIDTH, 53.333);
  });

  it.each(ROWS)(
    '%s, %s',
    (level, spot, leftSideline, leftNumbers, leftHash, rightHash, rightNumbers, rightSideline) => {
      const marks = fieldAt(level, spot);
      within(marks.leftSideline, leftSideline);
      within(marks.leftNumbers, leftNumbers);
      within(marks.leftHash, leftHash);
      within(marks.rightHash, rightHash);
      within(marks.rightNumbers, rightNumbers);
      within(marks.rightSideline, rightSideline);
    },
  );

  it.each(ROWS)('%s, %s: the look is read between those sidelines', (level, spot, left, _ln, _lh, _rh, _rn, right) => {
    const { sidelines } = factsOf(LOOKS['10 doubles'], spot, level);
    within(sidelines.left, left);
    within(sidelines.right, right);
  });
});
