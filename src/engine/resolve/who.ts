import { compareBy, ok, refused } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import type { Side } from '../vocabulary.ts';
import type { Aligned, RoleId, Who } from '../types/index.ts';
import { signOf } from '../facts/surface.ts';
import type { Found } from './names.ts';

/**
 * The man a rule speaks to. "The end on the call side" is the man of that group who stands farthest to that side, so a
 * drag across the ball changes who is meant; with one man in the group he is meant on both sides, and of two who stand one
 * behind the other each side means one.
 */
export function findWho(who: Who, callSide: Side, aligned: ReadonlyMap<RoleId, Aligned>): Found<RoleId> {
  if (who.kind === 'role') {
    if (aligned.has(who.role)) return ok(who.role);
    return refused(because('{who} is not in this front', { who: datum.who(who) }));
  }
  const fromCallSide = [...aligned.values()]
    .filter((each) => each.role.group === who.group)
    .sort(
      compareBy(
        (each) => -each.x * signOf(callSide),
        (each) => each.y,
        (each) => each.role.id,
      ),
    );
  const man = fromCallSide[who.side === 'call' ? 0 : fromCallSide.length - 1];
  if (man !== undefined) return ok(man.role.id);
  return refused(because('{who} is not in this front', { who: datum.who(who) }));
}
