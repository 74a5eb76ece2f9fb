import type { Check, Severity } from '../../../src/engine/index.ts';
import type { SetupParts } from '../book.ts';

/** A call in a look of the test book, with what makes it worth showing in a few words. */
export type Example = SetupParts & { readonly name: string };

/** What a check says: its sentence and the reasons right below it, and everybody and everything it is about. */
export interface Said {
  readonly says: readonly string[];
  readonly who?: string;
  readonly gaps?: string;
  readonly players?: string;
}

export type Failing = Example & {
  /** Severity only where it is not the check's own. */
  readonly finds: readonly (Said & { readonly severity?: Severity })[];
};

export type Unsure = Example & { readonly cannotTell: readonly Said[] };

/**
 * The examples of one check, read twice: by the tests, and by `npm run docs` for the check's page. The first one found and the
 * first one left alone are neighbours: what little must change.
 */
export interface CheckExamples {
  readonly check: Check;
  readonly found: readonly Failing[];
  readonly leftAlone: readonly Example[];
  readonly cannotTell: readonly Unsure[];
}
