import { remembered } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Side } from '../vocabulary.ts';
import type { Aligned, Because, Front, FrontRole, LookFacts, LookId, Point, Role, RoleId } from '../types/index.ts';
import { sidesOfRoles } from '../resolve/sides.ts';
import { allHold } from '../resolve/holds.ts';
import { placeSpot } from './spots.ts';
import { inBox, MIDDLE, techniqueAt } from './technique.ts';

/** Where a man stands when no rule of his can be placed: at linebacker depth on his side. It is reported. */
const LOST: Point = { x: 3, y: 5 };

/** Stands a defender on a spot: the side he is on, the technique he plays there, in the box or not. */
export function standAt(role: Role, at: Point, by: Aligned['by'], facts: LookFacts, why: Because): Aligned {
  const place: Aligned['place'] = Math.abs(at.x) <= MIDDLE ? 'middle' : at.x < 0 ? 'left' : 'right';
  return {
    role,
    x: at.x,
    y: at.y,
    place,
    by,
    technique: techniqueAt(at, facts),
    inBox: inBox(at, facts),
    because: why,
  };
}

/** Where the rules of a front put one man: the first rule that holds and can be placed. */
function byRule(entry: FrontRole, side: Side | null, facts: LookFacts): { readonly at: Point; readonly why: Because } {
  const context = { facts, callSide: null, mySide: side };
  const passed: Because[] = [];
  for (const [index, rule] of entry.rules.entries()) {
    if (!allHold(rule.when, context)) continue;
    const placed = placeSpot(rule.spot, side, facts);
    if (placed.ok) {
      const n = { n: datum.number(index + 1) };
      return { at: placed.value, why: because('alignment rule {n} of the front puts him there', n, ...passed) };
    }
    passed.push(placed.problem);
  }
  const at = { x: side === 'left' ? -LOST.x : side === 'right' ? LOST.x : 0, y: LOST.y };
  return { at, why: fact('no alignment rule of the front can be placed in this look', ...passed) };
}

/**
 * Stage 2: where the eleven of a front stand against a look. A spot set by hand for that look beats the rule.
 * `roles` are all roles of the playbook; a front role that is not among them is a broken promise.
 * Every call out of the front asks the same.
 */
export const align = remembered(alignOnce);

function alignOnce(front: Front, roles: readonly Role[], facts: LookFacts, look: LookId): ReadonlyMap<RoleId, Aligned> {
  const sides = sidesOfRoles(roles, facts);
  const byId = new Map(roles.map((role) => [role.id, role]));
  const aligned = new Map<RoleId, Aligned>();
  for (const entry of front.roles) {
    const role = byId.get(entry.role);
    if (role === undefined) throw new Error(`Front ${front.id} has an unknown role ${entry.role}`);
    const hand = front.byHand.find((each) => each.look === look && each.role === entry.role);
    const ruled = byRule(entry, sides.get(role.id) ?? null, facts);
    aligned.set(
      role.id,
      hand === undefined
        ? standAt(role, ruled.at, 'rule', facts, ruled.why)
        : standAt(role, hand, 'hand', facts, fact('the coach put him there by hand for this look')),
    );
  }
  return aligned;
}
