import type { FormationClass } from '../vocabulary.ts';
import type { CallId, CoverageId } from './ids.ts';

/** One entry of the staff dictionary: a word, and the one thing it means. */
export interface StaffWord {
  readonly word: string;
  readonly meaning: string;
}

/** What to do with a call against a class of formations. */
export type CheckOutAction =
  | { readonly kind: 'run' }
  /** The second pressure is turned to the other side of the first. */
  | { readonly kind: 'turn' }
  /** First and second change places. */
  | { readonly kind: 'swap' }
  | { readonly kind: 'coverage'; readonly coverage: CoverageId }
  | { readonly kind: 'check-to'; readonly call: CallId };

/** One row of a call's check-out table; the first row of a formation's classes that is in the table wins. */
export interface CheckOutRow {
  readonly formation: FormationClass;
  readonly action: CheckOutAction;
}

/** What a call checks to, class by class. */
export interface CheckOut {
  readonly call: CallId;
  readonly rows: readonly CheckOutRow[];
}
