import type { Call, Look, Place, Severity, Verdict } from '../engine/index.ts';

/** One call against one look at one ball spot. */
export interface MenuCase {
  readonly call: Call;
  readonly look: Look;
  readonly spot: Place;
}

/** How often one check spoke at one severity; what the coach lives with is not counted. */
export interface Found {
  /** Id of the check. */
  readonly rule: string;
  readonly severity: Severity;
  readonly count: number;
}

/** What the menu keeps of an analysis. Words, reasons and pictures are made again for the one case that is looked at. */
export interface Summary {
  readonly verdict: Verdict;
  /** In the order of the checks. */
  readonly found: readonly Found[];
  /** How many things could not be told. */
  readonly doubts: number;
}
