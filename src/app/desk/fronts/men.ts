import type { Front, FrontRole, Role } from '../../../engine/index.ts';

/** A role of the playbook and what the front says of him. */
export interface FrontManOf {
  readonly role: Role;
  readonly entry: FrontRole;
}

/** The eleven in the order of the playbook's roles, so that a man is found in the same place in every front. */
export function menOf(front: Front, roles: readonly Role[]): readonly FrontManOf[] {
  return roles.flatMap((role) => {
    const entry = front.roles.find((each) => each.role === role.id);
    return entry === undefined ? [] : [{ role, entry }];
  });
}
