import {
  manNames,
  sameWho,
  type Analysis,
  type Aligned,
  type PressureId,
  type RoleId,
  type Side,
  type Who,
} from '../../../engine/index.ts';

/** Where a pressure of the board goes in this look; null: it is a tie, or it is not on the board. */
export function callSideOf({ setup, first, second }: Analysis, pressure: PressureId): Side | null {
  const resolved = setup.first.id === pressure ? first : setup.second?.id === pressure ? second : null;
  return resolved?.side.kind === 'decided' ? resolved.side.side : null;
}

/** Where everybody stands. */
export function alignedOf(analysis: Analysis): ReadonlyMap<RoleId, Aligned> {
  return new Map(analysis.assignments.map(({ aligned }) => [aligned.role.id, aligned]));
}

/** Whom a name of a pressure's rule means in this look; null: nobody. */
export function roleNow(analysis: Analysis, pressure: PressureId, who: Who): RoleId | null {
  const aligned = alignedOf(analysis);
  const side = callSideOf(analysis, pressure);
  const found = [...aligned.keys()].find((role) => manNames(role, side, aligned).some((name) => sameWho(name, who)));
  return found ?? null;
}
