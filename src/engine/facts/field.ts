import type { Place, RuleLevel } from '../vocabulary.ts';
import type { Yards } from '../types/index.ts';

/** Field width, sideline to sideline: 160 ft. Source: NFL Rule 1-1-1; NCAA Rule 1-2-1; NFHS Rule 1-2-1. */
export const FIELD_WIDTH: Yards = 160 / 3;

/**
 * Distance of a hash mark from the nearer sideline. Sources: high school 53 ft 4 in (NFHS Rule 1-2-3 and field diagram,
 * from memory); college 60 ft (NCAA Rule 1-2-1 and Appendix D); professional 70 ft 9 in (NFL Rule 1).
 */
const HASH_FROM_SIDELINE: Readonly<Record<RuleLevel, Yards>> = {
  'high-school': 160 / 9,
  college: 20,
  professional: 70.75 / 3,
};

/**
 * Field numbers, near and far edge from the sideline. Sources: college tops at 9 yd, 2 yd tall (NCAA Rule 1-2-1-i; high
 * school drawn alike); professional bottoms at 12 yd, 2 yd tall (NFL Rule 1).
 */
const NUMBERS_FROM_SIDELINE: Readonly<Record<RuleLevel, readonly [Yards, Yards]>> = {
  'high-school': [7, 9],
  college: [7, 9],
  professional: [12, 14],
};

/** Lengthwise lines of the field as x, in yards from the ball. Left is the defence's left. */
export interface FieldMarks {
  readonly leftSideline: Yards;
  readonly rightSideline: Yards;
  readonly leftHash: Yards;
  readonly rightHash: Yards;
  /** Centre of the painted numbers. */
  readonly leftNumbers: Yards;
  readonly rightNumbers: Yards;
}

/** Where the lines of the field lie when the ball is on that spot, at that rule level. */
export function fieldAt(level: RuleLevel, spot: Place): FieldMarks {
  const hash = HASH_FROM_SIDELINE[level];
  const ballFromLeft = spot === 'left' ? hash : spot === 'right' ? FIELD_WIDTH - hash : FIELD_WIDTH / 2;
  const [near, far] = NUMBERS_FROM_SIDELINE[level];
  const numbers = (near + far) / 2;
  return {
    leftSideline: -ballFromLeft,
    rightSideline: FIELD_WIDTH - ballFromLeft,
    leftHash: hash - ballFromLeft,
    rightHash: FIELD_WIDTH - hash - ballFromLeft,
    leftNumbers: numbers - ballFromLeft,
    rightNumbers: FIELD_WIDTH - numbers - ballFromLeft,
  };
}
