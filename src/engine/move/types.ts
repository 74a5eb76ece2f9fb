import type { Job, Point, RoleId, Yards } from '../types/index.ts';
import type { Pace } from './speed.ts';

/** Where a man is, `t` seconds after the snap. */
export interface Stamp extends Point {
  readonly t: number;
}

/** What a man does on his way; `stand`: nobody told him anything, so he stays. */
export type Errand = Job['kind'] | 'stand';

/** One man's job as a timed path. Every time is an estimate. */
export interface Move {
  readonly role: RoleId;
  readonly errand: Errand;
  /** From where he stands at the snap (t = 0); times strictly grow. Between two stamps he runs straight. */
  readonly path: readonly Stamp[];
  /** Length of the way. */
  readonly length: Yards;
  /** Seconds after the snap when he takes his first step. */
  readonly starts: number;
  /** Seconds after the snap when he crosses the line in his gap; null for a man who does not. */
  readonly gapAt: number | null;
  /** How far he runs until then; null for a man who does not cross the line. */
  readonly toGap: Yards | null;
  /** He comes round the outside, where nobody runs the shortest way. */
  readonly edge: boolean;
  readonly pace: Pace;
  readonly estimate: true;
}

/** Who goes first of two whose paths meet, as one of them is told. */
export interface MoveOrder {
  readonly turn: 'first' | 'second';
  readonly neighbour: RoleId;
}
