import { gather } from '../../base/index.ts';
import type { Played } from '../types/index.ts';
import { because, datum, fact } from '../because.ts';
import { SIDES, type Side } from '../vocabulary.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { containMen, edgeRusher } from './edges.ts';

/**
 * The passer can walk out on a side: nobody there is told to contain, and nobody spies him. A man who rushes the edge gap is in
 * the outermost lane all the same, so he only has to be told: that is for the coach to decide.
 */
export const containMissing = checkOfPlay({
  id: 'contain.missing',
  title: 'Nobody contains the passer on a side',
  severity: 'stop',
  matters: 'The passer walks out of the pocket on that side and the rush was for nothing.',
  source:
    'contain against the pass, the outermost rush lane: "Defensive terminology", r/footballstrategy wiki; a rusher of the edge gap who is not told to contain is only a check: from memory',
  needsSide: true,
  report: (draft) => gather(SIDES, (side): readonly Report[] => judgeSide(draft, side)),
});

function judgeSide(draft: Played, side: Side): readonly Report[] {
  const { sure, maybe } = containMen(draft, side);
  if (sure.length > 0) return [];
  const gaps = [{ side, letter: draft.facts.edge[side] }];
  const there = { side: datum.side(side) };
  if (maybe.length > 0) {
    return [
      {
        undetermined: true,
        because: because(
          'whether anybody contains on the {side} depends on {who}',
          { ...there, who: datum.roles(maybe) },
          fact('of the two jobs told one contains there and the other does not'),
        ),
        who: maybe,
        gaps,
      },
    ];
  }
  const rusher = edgeRusher(draft, side);
  if (rusher !== null) {
    const who = rusher.aligned.role.id;
    return [
      {
        severity: 'check',
        because: because(
          '{who} rushes the edge on the {side} and is not told to contain',
          { ...there, who: datum.role(who) },
          fact('nobody else contains there, and nobody spies the passer'),
        ),
        who: [who],
        gaps,
      },
    ];
  }
  return [
    {
      because: because(
        'nobody contains on the {side}',
        there,
        fact('no rusher is told to contain there, and nobody spies the passer'),
      ),
      gaps,
    },
  ];
}
