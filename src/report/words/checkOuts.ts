import { assertNever } from '../../base/index.ts';
import type { CallId, CheckOutAction, CheckOutRow, CoverageId } from '../../engine/index.ts';
import { FORMATION_WORDS } from './formations.ts';

/** The names a row of a check-out table speaks of. */
export interface CheckOutNames {
  /** The second pressure, which a turn turns; null: there is none. */
  readonly turned: string | null;
  /** The pressure that is the first once the two have changed places; null: there is only one. */
  readonly nowFirst: string | null;
  readonly coverage: (id: CoverageId) => string;
  readonly call: (id: CallId) => string;
}

/** What is done with a call against a class of formations: "check to Teasel". */
export function checkOutWords(action: CheckOutAction, names: CheckOutNames): string {
  const asCalled = 'run it as called';
  switch (action.kind) {
    case 'run':
      return asCalled;
    case 'turn':
      return names.turned === null ? asCalled : `${names.turned} is turned the other way`;
    case 'swap':
      return names.nowFirst === null ? asCalled : `the two change places, ${names.nowFirst} is now the first`;
    case 'coverage':
      return `change the coverage to ${names.coverage(action.coverage)}`;
    case 'check-to':
      return `check to ${names.call(action.call)}`;
    default:
      return assertNever(action);
  }
}

/** A row of a check-out table as a sentence: "against trips: check to Teasel". */
export function checkOutSentence({ formation, action }: CheckOutRow, names: CheckOutNames): string {
  return `against ${FORMATION_WORDS[formation]}: ${checkOutWords(action, names)}`;
}
