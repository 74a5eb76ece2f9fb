/** What a call becomes against formations it is not meant for. A call checks only to one of the same front: nobody can come in. */
import {
  asCallId,
  asCoverageId,
  type CheckOut,
  type CheckOutAction,
  type CheckOutRow,
  type FormationClass,
} from '../../src/engine/index.ts';

const against = (formation: FormationClass, action: CheckOutAction): CheckOutRow => ({ formation, action });
const checkTo = (call: string): CheckOutAction => ({ kind: 'check-to', call: asCallId(call) });
const changeTo = (coverage: string): CheckOutAction => ({ kind: 'coverage', coverage: asCoverageId(coverage) });

const table = (call: string, ...rows: CheckOutRow[]): CheckOut => ({ call: asCallId(call), rows });

export const checkOuts: readonly CheckOut[] = [
  // The safety who comes stands too wide against empty; the edge is there in any look.
  table(
    'culvert-weir',
    against('empty-three-by-two', checkTo('osier')),
    against('empty-four-by-one', checkTo('osier')),
  ),
  // Six do not come where five can go out at once, nor man to man into a bunch.
  table(
    'tussock-weir',
    against('empty-three-by-two', checkTo('weir')),
    against('empty-four-by-one', checkTo('weir')),
    against('bunch', checkTo('tussock')),
  ),
  // Men who start bunched are not taken man to man.
  table('millrace', against('bunch', changeTo('four-deep-two-under')), against('unbalanced', { kind: 'run' })),
  // The exchange is not run into a wing, who blocks down on the first of the two.
  table('sedge', against('unbalanced', checkTo('lapwing')), against('wing', checkTo('lapwing'))),
  // Tackles over: no edge into three men on one side of the snapper; the inside backers cross instead.
  table('weir-osier', against('unbalanced', checkTo('coppice'))),
];
