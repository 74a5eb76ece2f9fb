import type { Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';
import { duplicates } from './duplicates.ts';
import { snappers } from './snappers.ts';
import { gapCounts } from './gapCounts.ts';
import { strangersInMotion } from './motions.ts';
import { missing } from './references.ts';
import { undecidedSides } from './sides.ts';

const CHECKS: readonly ((playbook: Playbook) => readonly Problem[])[] = [
  duplicates,
  missing,
  snappers,
  strangersInMotion,
  undecidedSides,
  gapCounts,
];

/** What must hold between the parts of a playbook, beyond the shape of each. None: the playbook is sound. */
export function crossChecks(playbook: Playbook): readonly Problem[] {
  return CHECKS.flatMap((check) => check(playbook));
}
