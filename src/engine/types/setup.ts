import type { Place, RuleLevel, Turn } from '../vocabulary.ts';
import type { Front, Role } from './defence.ts';
import type { Look } from './look.ts';
import type { CheckOutRow, StaffWord } from './staff.ts';
import type { Combination, Coverage, Pressure, Waiver } from './pressure.ts';

/** Everything one check of one call in one look needs, however unsound: what was drawn, before any rule has judged it. */
export interface Setup {
  readonly level: RuleLevel;
  /** Where the ball lies across the field: on the defence's left hash, in the middle, on its right hash. */
  readonly spot: Place;
  readonly roles: readonly Role[];
  readonly front: Front;
  readonly look: Look;
  readonly first: Pressure;
  /** Null: the first pressure alone. */
  readonly second: Pressure | null;
  readonly turn: Turn;
  /** How the two make one call; of no account without a second. */
  readonly combination: Combination;
  /** The shell in force: the call's own, else the first pressure's. */
  readonly coverage: Coverage;
  /** The shell of the second pressure, for an either-or call that runs it: the call's own, else the second's. */
  readonly secondCoverage: Coverage | null;
  readonly waivers: readonly Waiver[];
  readonly dictionary: readonly StaffWord[];
  /** The row of the call's check-out table that made it what it is here; null: it is run as called. */
  readonly checkOut: CheckOutRow | null;
  /** How many the coach says come; null: he does not say. */
  readonly rushers: number | null;
}
