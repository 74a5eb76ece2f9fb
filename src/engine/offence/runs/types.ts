import type { Gap, Point, RoleId } from '../../types/index.ts';

/** A defender in an option: where he stands, and the run gaps that are his. */
export interface OptionMan extends Point {
  readonly role: RoleId;
  readonly gaps: readonly Gap[];
}
