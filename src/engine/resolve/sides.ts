import { because, datum, fact } from '../because.ts';
import type { Direction, Side } from '../vocabulary.ts';
import type { Because, LookFacts, Role, RoleId, SideDecision, SideStep } from '../types/index.ts';

/** The other side. */
export function opposite(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}

function turned(side: Side, toward: Direction): Side {
  return toward === 'to' ? side : opposite(side);
}

/** What a side rule can look at: the look, and where a role stands (null: in the middle, or not in this front). */
export interface SideContext {
  readonly facts: LookFacts;
  readonly sideOfRole: (role: RoleId) => Side | null;
}

const STRENGTH_WORDS = {
  'tight-end': 'tight-end strength',
  receivers: 'passing strength',
  back: 'the back',
  field: 'the field',
} as const;

/** What one step says: a side, or that it cannot decide; both with the reason. */
function tryStep(step: SideStep, context: SideContext): { readonly side: Side | null; readonly because: Because } {
  switch (step.kind) {
    case 'fixed':
      return {
        side: step.side,
        because: because('the rule says {side}', { side: datum.side(step.side) }),
      };
    case 'strength': {
      const strength = context.facts.strengths[step.by];
      const data = { what: datum.word(STRENGTH_WORDS[step.by]) };
      if (strength.side === 'even') {
        return { side: null, because: because('{what} does not decide', data, strength.because) };
      }
      const side = turned(strength.side, step.toward);
      const words =
        step.toward === 'to'
          ? because('it goes to {what}, {side}', { ...data, side: datum.side(side) }, strength.because)
          : because('it goes away from {what}, {side}', { ...data, side: datum.side(side) }, strength.because);
      return { side, because: words };
    }
    case 'role': {
      const standing = context.sideOfRole(step.role);
      const who = datum.role(step.role);
      if (standing === null) return { side: null, because: because('{who} has no side here', { who }) };
      const side = turned(standing, step.toward);
      return {
        side,
        because:
          step.toward === 'to'
            ? because('it goes to the side of {who}, {side}', { who, side: datum.side(side) })
            : because('it goes away from {who}, {side}', { who, side: datum.side(side) }),
      };
    }
  }
}

/** Stage 3: the first step that decides picks the side. When none does it is a tie: told, never guessed. */
export function decideSide(steps: readonly SideStep[], context: SideContext): SideDecision {
  const passed: Because[] = [];
  for (const step of steps) {
    const said = tryStep(step, context);
    if (said.side !== null) {
      return {
        kind: 'decided',
        side: said.side,
        because: because('the side is {side}', { side: datum.side(said.side) }, ...passed, said.because),
      };
    }
    passed.push(said.because);
  }
  return { kind: 'tie', because: fact('no step of the rule decides a side', ...passed) };
}

/**
 * The side each role of a playbook chooses in this look; null for a man in the middle. Roles may refer to each other; a
 * circle of references, or a rule that does not decide, is refused by the document and so a broken promise here.
 */
export function sidesOfRoles(roles: readonly Role[], facts: LookFacts): ReadonlyMap<RoleId, Side | null> {
  const byId = new Map(roles.map((role) => [role.id, role]));
  const sides = new Map<RoleId, Side | null>();
  const sideOf = (id: RoleId, above: readonly RoleId[]): Side | null => {
    const known = sides.get(id);
    if (known !== undefined) return known;
    const role = byId.get(id);
    if (role === undefined || role.side.kind === 'middle') return null;
    if (above.includes(id)) throw new Error(`Roles refer to each other in a circle: ${[...above, id].join(' > ')}`);
    const decision = decideSide(role.side.steps, { facts, sideOfRole: (other) => sideOf(other, [...above, id]) });
    if (decision.kind === 'tie') throw new Error(`The side rule of role ${id} does not decide`);
    sides.set(id, decision.side);
    return decision.side;
  };
  for (const role of roles) sides.set(role.id, sideOf(role.id, []));
  return sides;
}
