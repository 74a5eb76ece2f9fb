import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import type { ByHand, FrontId, LookId, Point, RoleId } from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { withEntry } from './lists.ts';
import { keptPoint } from './points.ts';

/** A man of a front in one look. */
export interface HandSpot {
  readonly front: FrontId;
  readonly look: LookId;
  readonly role: RoleId;
}

/** Stands a defender somewhere by hand, for that look only; his rule holds in all others. */
export function moveDefender(
  playbook: Playbook,
  args: HandSpot & { readonly at: Point },
): Result<Playbook, CommandProblem> {
  if (!playbook.looks.some((look) => look.id === args.look)) return refused({ kind: 'not-there', what: 'look' });
  const entry: ByHand = { look: args.look, role: args.role, ...keptPoint(args.at) };
  return withHands(playbook, args, (others) => [...others, entry]);
}

/** Gives a defender back to his rule in that look. */
export function clearHand(playbook: Playbook, args: HandSpot): Result<Playbook, CommandProblem> {
  return withHands(playbook, args, (others) => others);
}

/** Gives several defenders back to their rules in that look, as one change. */
export function clearSomeHands(
  playbook: Playbook,
  { roles, ...spot }: Omit<HandSpot, 'role'> & { readonly roles: readonly RoleId[] },
): Result<Playbook, CommandProblem> {
  return roles.reduce<Result<Playbook, CommandProblem>>(
    (done, role) => (done.ok ? clearHand(done.value, { ...spot, role }) : done),
    ok(playbook),
  );
}

function withHands(
  playbook: Playbook,
  spot: HandSpot,
  change: (others: readonly ByHand[]) => readonly ByHand[],
): Result<Playbook, CommandProblem> {
  const fronts = withEntry(
    playbook.fronts,
    spot.front,
    (front) => {
      if (!front.roles.some(({ role }) => role === spot.role)) return refused({ kind: 'not-there', what: 'role' });
      const others = front.byHand.filter((hand) => hand.look !== spot.look || hand.role !== spot.role);
      return ok({ ...front, byHand: change(others) });
    },
    { kind: 'not-there', what: 'front' },
  );
  return fronts.ok ? ok({ ...playbook, fronts: fronts.value }) : fronts;
}
