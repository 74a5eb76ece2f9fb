import type { Finding, Verdict } from '../types/index.ts';

/** What a check found, without its words and without the places on the field. */
export type Spoken = Pick<Finding, 'rule' | 'severity' | 'who' | 'gaps' | 'players'>;

/** What checks could not judge, for one and the same reason: their ids. */
export type Doubt = readonly string[];

/** What some of the checks say, in their order. */
export interface Said {
  readonly found: readonly Spoken[];
  readonly doubts: readonly Doubt[];
}

/**
 * What all checks say of a call in a look, without a word of why: as much as a menu, or a search over many looks, asks. Findings
 * the coach has waived are not in it.
 */
export interface Brief {
  readonly verdict: Verdict;
  /** What is said of how it is played: the very same object for calls that are played the same. */
  readonly play: Said;
  /** What is said of what the men are told; the same object when it is nothing. */
  readonly telling: Said;
}
