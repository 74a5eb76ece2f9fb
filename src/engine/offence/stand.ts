import { remembered } from '../../base/index.ts';
import type { Assignment, LookFacts } from '../types/index.ts';
import type { Threat } from './protections/types.ts';

/** A look with the defenders as the offence sees them before the snap: where they stand, and nothing of what they are told. */
export interface Stand {
  readonly facts: LookFacts;
  readonly men: readonly Threat[];
}

/** A man of whom it is only asked where he stands. */
type Standing = Pick<Assignment, 'aligned'>;

/**
 * Where the eleven stand in a look. It is the very same stand whenever they stand alike, so that what the offence plans against
 * it can be remembered, whatever the call.
 */
export function standOf(assignments: readonly Standing[], facts: LookFacts): Stand {
  const stands = standsIn(facts);
  const mark = markOf(assignments);
  const known = stands.get(mark);
  if (known !== undefined && isStand(known, assignments)) return known;
  if (stands.size >= MOST_STANDS) stands.clear();
  const men = assignments.map(({ aligned }): Threat => ({ role: aligned.role.id, x: aligned.x, y: aligned.y }));
  const stand = { facts, men };
  stands.set(mark, stand);
  return stand;
}

/** The stands that are known in one look, by their mark. So many are kept at most; then it begins again. */
const standsIn = remembered((_facts: LookFacts): Map<number, Stand> => new Map());
const MOST_STANDS = 100;

/** A number that is nearly always another where men stand elsewhere. */
function markOf(assignments: readonly Standing[]): number {
  let mark = 0;
  for (const { aligned } of assignments) mark = mark * 7 + aligned.x + 3 * aligned.y;
  return mark;
}

function isStand({ men }: Stand, assignments: readonly Standing[]): boolean {
  if (men.length !== assignments.length) return false;
  return men.every((man, index) => {
    const aligned = assignments[index]?.aligned;
    return man.role === aligned?.role.id && man.x === aligned.x && man.y === aligned.y;
  });
}
