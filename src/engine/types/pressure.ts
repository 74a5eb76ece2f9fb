import type { ToldBasis, Turn, Zone } from '../vocabulary.ts';
import type { LookTest, SideRef, SideStep } from './defence.ts';
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

/** A zone the shell cannot do without, and who may take it when nobody is told to, the most natural first. */
export interface ZoneNeed {
  readonly when: readonly LookTest[];
  readonly zone: Zone;
  readonly side: SideRef | 'middle';
  readonly takers: readonly Who[];
}

/** The zones or men of a shell, told relative to the call side. It tells only men whom the rush leaves free. */
export interface Coverage {
  readonly id: CoverageId;
  readonly name: string;
  /** Zones that must be filled; empty for a shell of men only. */
  readonly needs: readonly ZoneNeed[];
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
  /** How many the coach says come; null: he does not say. */
  readonly rushers: number | null;
  /** Looks it is not run against. */
  readonly notAgainst: readonly LookId[];
  /** The day of camp it is put in, 1 the first; null: he does not say. */
  readonly installDay: number | null;
}

/**
 * How two pressures make one call. Together: both run at once, nobody can do two things. Either-or: one of the two, the
 * first if all of `key` hold and else the second; jobs may differ, and everybody whose job differs must hear the check.
 */
export type Combination =
  { readonly kind: 'together' } | { readonly kind: 'either-or'; readonly key: readonly LookTest[] };

/** A finding the coach has decided to live with, and why. It lapses when the evidence changes. */
export interface Waiver {
  readonly rule: string;
  readonly look: LookId;
  /** What the finding was about when it was waived, as `evidenceOf` writes it. */
  readonly evidence: string;
  readonly reason: string;
}

/** Two pressures as one call. */
export interface Call {
  readonly id: CallId;
  readonly name: string;
  readonly combination: Combination;
  readonly front: FrontId;
  readonly first: PressureId;
  /** Null: the first pressure alone. */
  readonly second: PressureId | null;
  readonly turn: Turn;
  /** Null: the coverage of the first pressure. */
  readonly coverage: CoverageId | null;
  readonly waivers: readonly Waiver[];
  /** How many come; null: he does not say, or the first pressure alone says it. */
  readonly rushers: number | null;
  /** Tags of the coach's own; they only help to find it. */
  readonly tags: readonly string[];
  /** The day of camp it is put in, 1 the first; null: he does not say. */
  readonly installDay: number | null;
}
