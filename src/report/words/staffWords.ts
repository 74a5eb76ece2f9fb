import type { BodyName, Leverage } from '../../engine/index.ts';

/** One entry of a staff's own technique table: what they call a man who stands there, at the line. */
export interface TechniqueLabel {
  readonly on: BodyName;
  readonly leverage: Leverage;
  /** The number or word, as it is to be printed: "6i". */
  readonly label: string;
}

/**
 * What a staff says its own way. The playbook stores facts; these words are put on at the edge, so two staffs who number
 * techniques differently can still read one file. An entry for a named body beats one for `last`.
 */
export interface StaffWords {
  readonly techniques: readonly TechniqueLabel[];
}

/** No words of their own: everything is said the common way. */
export const COMMON_WORDS: StaffWords = { techniques: [] };
