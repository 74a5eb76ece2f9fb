import { compareBy, firstInOrder } from '../../../base/index.ts';
import { signOf } from '../../facts/surface.ts';
import type { ManRule, RoleId, RunPicture, Yards } from '../../types/index.ts';
import { isAtLine, LINEBACKER_DEPTH, thousandths } from '../row.ts';
import type { Threat } from '../protections/types.ts';

/** Within half a foot of a body's middle a man is head up on it. */
const HEAD_UP: Yards = 1 / 6;

/**
 * The defender a rule points at: the first (or next) at the line from that body outward; where the line has none left, the
 * nearest off it who is no deeper than a linebacker. Null: nobody is there. Known by where he stands, never by a name.
 */
export function findMan(rule: ManRule, defenders: readonly Threat[]): RoleId | null {
  const outward = (man: Threat): Yards => man.x * signOf(rule.side);
  const near = rule.headUp ? rule.from - HEAD_UP : rule.from + HEAD_UP;
  const atLine = (man: Threat): boolean => isAtLine(man) && outward(man) <= rule.reach;
  const counted = defenders
    .filter((man) => thousandths(outward(man)) >= thousandths(near) && man.y <= LINEBACKER_DEPTH)
    .filter((man) => (isAtLine(man) ? atLine(man) : !rule.atLineOnly));
  const order = compareBy<Threat>(
    (man) => (atLine(man) ? 0 : 1),
    (man) => thousandths(outward(man)),
    (man) => thousandths(man.y),
    (man) => man.role,
  );
  const first = firstInOrder(counted, order);
  const found =
    rule.which === 'first'
      ? first
      : firstInOrder(
          counted.filter((man) => man !== first),
          order,
        );
  return found?.role ?? null;
}

/** The defender who is read in this run, by where the defence stands; null where the run reads nobody or nobody is there. */
export function readMan(picture: Pick<RunPicture, 'read'>, defenders: readonly Threat[]): RoleId | null {
  return picture.read === null ? null : findMan(picture.read, defenders);
}
