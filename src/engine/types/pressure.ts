import type { ToldBasis, Turn } from '../vocabulary.ts';
import type { LookTest, SideStep } from './defence.ts';
import type { CallId, CoverageId, FrontId, LookId, PressureId } from './ids.ts';
import type { PreSnap, RuleJob, Who } from './job.ts';

/** If all of `when` hold, this is his job. */
export interface TellCase {
  readonly when: readonly LookTest[];
  readonly basis: ToldBasis;
  readonly job: RuleJob;
  readonly preSnap: PreSnap | null;
}

/** What a pressure tells one man: the first case that holds. If none holds he is told nothing. */
export interface Tell {
  readonly who: Who;
  readonly cases: readonly TellCase[];
}

/** What a shell tells one man. */
export interface CoverageCase {
  readonly when: readonly LookTest[];
  readonly job: RuleJob;
}

/** The zones or men of a shell, told relative to the call side. It tells only men whom the rush leaves free. */
export interface Coverage {
  readonly id: CoverageId;
  readonly name: string;
  readonly tells: readonly { readonly who: Who; readonly cases: readonly CoverageCase[] }[];
}

/** A pressure: the rush (who goes where, what the line does) and the coverage behind it, changed apart. */
export interface Pressure {
  readonly id: PressureId;
  readonly name: string;
  /** Tags of the coach's own; they only help to find it. */
  readonly tags: readonly string[];
  /** The rule of the call side, tie-breaks in order. */
  readonly callSide: readonly SideStep[];
  readonly tells: readonly Tell[];
  readonly coverage: CoverageId;
  /** Looks it is not run against. */
  readonly notAgainst: readonly LookId[];
}

/** Two pressures that run at once. */
export interface Call {
  readonly id: CallId;
  readonly name: string;
  readonly kind: 'together';
  readonly front: FrontId;
  readonly first: PressureId;
  /** Null: the first pressure alone. */
  readonly second: PressureId | null;
  readonly turn: Turn;
  /** Null: the coverage of the first pressure. */
  readonly coverage: CoverageId | null;
}
