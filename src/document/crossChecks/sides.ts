import type { RoleId } from '../../engine/index.ts';
import type { Problem } from '../refusal.ts';
import type { Playbook } from '../schema/playbook.ts';

type Role = Playbook['roles'][number];

/**
 * A role's side rule must decide in every look. Only its last step can promise that: a fixed side, or the side of another
 * role whose own rule decides. And no rule may come back to the role it started from.
 */
export function undecidedSides({ roles }: Playbook): readonly Problem[] {
  const byId = new Map(roles.map((role) => [role.id, role]));
  return roles.flatMap((role, index): readonly Problem[] => {
    if (role.side.kind === 'middle') return [];
    const path = ['roles', index, 'side', 'steps'];
    if (leadsBack(role, byId)) {
      return [{ path, found: 'a rule that comes back to this role', expected: 'a rule that ends at other roles' }];
    }
    const last = role.side.steps.at(-1);
    const ends = last?.kind === 'fixed' || (last?.kind === 'role' && byId.get(last.role)?.side.kind !== 'middle');
    if (ends) return [];
    const at = role.side.steps.length - 1;
    const expected = 'a last step that always decides: a fixed side, or a role that has a side';
    return [{ path: [...path, at], found: 'a step that may not decide', expected }];
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
