import { ok, refused, type Result } from '../../base/index.ts';
import { fact } from '../because.ts';
import { signOf } from '../facts/surface.ts';
import { sidesOfRoles } from '../resolve/sides.ts';
import type { AlignRule, Because, LookFacts, LookTest, Point, Role, RoleId, Spot, Yards } from '../types/index.ts';
import type { BodyName, Side } from '../vocabulary.ts';
import { inBox, MIDDLE, techniqueAt } from './technique.ts';

const BODY_BY_INDEX: readonly BodyName[] = ['snapper', 'guard', 'tackle', 'end', 'wing'];

/** A cover man this close to a receiver, across the field, stands on him; closer than the second he is head up (ours). */
const ON_RECEIVER: Yards = 2.5;
const HEAD_UP: Yards = 0.5;

/** Beyond the last body a man up to this depth is on the edge; deeper he is told from the ball (ours). */
const EDGE_DEPTH: Yards = 6.5;

/** Offsets of a rule are kept to a twentieth of a yard, as spots are. */
const STEPS_A_YARD = 20;

/**
 * The alignment rule that puts a role where he stands in this look, for all looks with the same number of attached bodies on
 * his side (on both sides, for a man in the middle): the technique read back from the spot; wide of the box the receiver he
 * is on; else the distance from the ball. `roles` are all roles of the playbook. Refused when he has no side of his own and
 * does not stand over the ball, which no rule can say.
 */
export function ruleAt(role: RoleId, at: Point, roles: readonly Role[], facts: LookFacts): Result<AlignRule, Because> {
  const side = sidesOfRoles(roles, facts).get(role) ?? null;
  if (side !== null) return ok({ when: [surfaceOf('mine', side, facts)], spot: spotOnSide(at, side, facts) });
  if (Math.abs(at.x) > MIDDLE) {
    return refused(fact('he has no side of his own, so a rule can only put him over the ball'));
  }
  const spot: Spot = inBox(at, facts)
    ? { kind: 'technique', on: 'snapper', leverage: 'head', depth: at.y }
    : { kind: 'ball', offset: 0, depth: at.y };
  return ok({ when: [surfaceOf('left', 'left', facts), surfaceOf('right', 'right', facts)], spot });
}

function surfaceOf(said: 'mine' | Side, side: Side, facts: LookFacts): LookTest {
  return { kind: 'bodies', side: said, compare: 'exactly', count: facts.surface[side].length - 1 };
}

function spotOnSide(at: Point, side: Side, facts: LookFacts): Spot {
  const outward = at.x * signOf(side);
  const fromBall: Spot = { kind: 'ball', offset: kept(outward), depth: at.y };
  // Across the ball from his own side no body of his is near: only the distance can say it.
  if (outward < -MIDDLE) return fromBall;
  const last = facts.surface[side].at(-1);
  const beyond = last === undefined ? 0 : outward - last.x * signOf(side);
  const technique = techniqueAt(at, facts);
  const body = technique === null || technique.ghost ? undefined : BODY_BY_INDEX[technique.index];
  if (technique !== null && body !== undefined) {
    return { kind: 'technique', on: body, leverage: technique.leverage, depth: at.y };
  }
  const receiver = onReceiver(at, side, facts);
  if (technique === null && receiver !== null) return receiver;
  return beyond > 0 && at.y <= EDGE_DEPTH ? { kind: 'edge', offset: kept(beyond), depth: at.y } : fromBall;
}

/** The split receiver of his side he stands on: the nearest one; null when none is near. A man who may not catch has no number. */
function onReceiver(at: Point, side: Side, facts: LookFacts): Spot | null {
  let best: { readonly number: number; readonly out: Yards } | null = null;
  for (const receiver of facts.receivers) {
    const player = facts.players.get(receiver.player);
    if (receiver.side !== side || receiver.attached || !receiver.eligible || player === undefined) continue;
    const out = (at.x - player.x) * signOf(side);
    if (Math.abs(out) <= ON_RECEIVER && (best === null || Math.abs(out) < Math.abs(best.out))) {
      best = { number: receiver.number, out };
    }
  }
  if (best === null) return null;
  const leverage = best.out > HEAD_UP ? 'outside' : best.out < -HEAD_UP ? 'inside' : 'head';
  return { kind: 'receiver', number: best.number, leverage, depth: at.y };
}

function kept(value: Yards): Yards {
  return Math.round(value * STEPS_A_YARD) / STEPS_A_YARD + 0;
}
