import { because, datum, fact } from '../because.ts';
import type { PassColumn } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { whoDoes } from './outcomes.ts';

/** How much of the deep field a man closes, in quarters; the one in the middle closes it by himself. */
const QUARTERS_CLOSED: Readonly<Record<string, number>> = { middle: 4, half: 2, quarter: 1 };
const WHOLE_FIELD = 4;

function closes({ pass }: { readonly pass: PassColumn }): number {
  return pass.kind === 'zone' ? (QUARTERS_CLOSED[pass.zone] ?? 0) : 0;
}

/** Nobody is left in the deep middle: no man there, and no halves or quarters that share the deep field out. */
export const coverNoPost = checkOfPlay({
  id: 'cover.no-post',
  title: 'Nobody is left in the deep middle',
  severity: 'note',
  matters: 'A missed tackle or a ball over the top goes the whole way.',
  source: 'common practice, no source',
  needsSide: true,
  report: (draft): readonly Report[] => {
    const deep = whoDoes(draft, (outcome) => closes(outcome) > 0);
    const closed = draft.assignments
      .filter((man) => deep.sure.includes(man.aligned.role.id))
      .reduce((sum, man) => sum + closes(man), 0);
    if (closed >= WHOLE_FIELD) return [];
    if (deep.maybe.length === 0) return [{ because: fact('nobody has the deep middle') }];
    return [
      {
        undetermined: true,
        because: because(
          'whether anybody has the deep middle depends on {who}',
          { who: datum.roles(deep.maybe) },
          fact('of the two jobs told one is deep and the other is not'),
        ),
        who: deep.maybe,
      },
    ];
  },
});
