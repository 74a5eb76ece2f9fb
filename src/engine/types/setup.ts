import type { Place, RuleLevel, Turn } from '../vocabulary.ts';
import type { Front, Role } from './defence.ts';
import type { Look } from './look.ts';
import type { Coverage, Pressure } from './pressure.ts';

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
  /** The shell in force: the call's own, else the first pressure's. */
  readonly coverage: Coverage;
}
