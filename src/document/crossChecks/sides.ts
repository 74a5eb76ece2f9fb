import type { RoleId } from '../../engine/index.ts';
import type { Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

type Role = Playbook['roles'][number];

/** A role whose side rule does not decide in every look, and why. */
export interface SideFault {
  readonly role: Role;
  /** His place in the list. */
  readonly at: number;
  /** The rule comes back to him; or its last step may leave it open. */
  readonly kind: 'circle' | 'may-not-decide';
}

/**
 * A role's side rule must decide in every look. Only its last step can promise that: a fixed side, or the side of another
 * role whose own rule decides. And no rule may come back to the role it started from.
 */
export function sideFaults(roles: readonly Role[]): readonly SideFault[] {
  const byId = new Map(roles.map((role) => [role.id, role]));
  return roles.flatMap((role, at): readonly SideFault[] => {
    if (role.side.kind === 'middle') return [];
    if (leadsBack(role, byId)) return [{ role, at, kind: 'circle' }];
    const last = role.side.steps.at(-1);
    const ends = last?.kind === 'fixed' || (last?.kind === 'role' && byId.get(last.role)?.side.kind !== 'middle');
    return ends ? [] : [{ role, at, kind: 'may-not-decide' }];
  });
}

/** The same as problems of a file. */
export function undecidedSides({ roles }: Playbook): readonly Problem[] {
  return sideFaults(roles).map(({ role, at, kind }): Problem => {
    const path = ['roles', at, 'side', 'steps'];
    if (kind === 'circle') {
      return { path, found: 'a rule that comes back to this role', expected: 'a rule that ends at other roles' };
    }
    const last = role.side.kind === 'steps' ? role.side.steps.length - 1 : 0;
    const expected = 'a last step that always decides: a fixed side, or a role that has a side';
    return { path: [...path, last], found: 'a step that may not decide', expected };
  });
}

/** Whether following the roles a rule names leads to the role it belongs to. */
function leadsBack(start: Role, byId: ReadonlyMap<RoleId, Role>): boolean {
  const seen = new Set<RoleId>();
  const open = [...namedBy(start)];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (id === start.id) return true;
    const role = byId.get(id);
    if (role !== undefined && !seen.has(id)) open.push(...namedBy(role));
    seen.add(id);
  }
  return false;
}

function namedBy({ side }: Role): readonly RoleId[] {
  return side.kind === 'middle' ? [] : side.steps.flatMap((step) => (step.kind === 'role' ? [step.role] : []));
}
