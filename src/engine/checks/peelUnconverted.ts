import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Played, PlayedMan } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { containMen } from './edges.ts';
import { inConflict } from './outcomes.ts';

/** An edge rusher may leave with the back, and no man inside him becomes contain. */
export const peelUnconverted = checkOfPlay({
  id: 'peel.unconverted',
  title: 'The edge may leave and nobody becomes contain',
  severity: 'stop',
  matters: 'When the edge rusher runs with the back the passer walks out where he was.',
  source: '"Coaching Stress Areas: Double A Gap Mug Cover 1 Peel Blitz", Blitzology, 21 Aug 2020',
  needsSide: true,
  report: (draft) => gather(draft.assignments, (man) => judgeMan(man, draft)),
});

function judgeMan(man: PlayedMan, draft: Played): readonly Report[] {
  const { job } = man.combined;
  if (inConflict(man) || (job?.kind !== 'rush' && job?.kind !== 'contain') || !job.peel) return [];
  const [gap] = job.gaps;
  if (gap === undefined) return [];
  const who = man.aligned.role.id;
  const { sure, maybe } = containMen(draft, gap.side);
  if (sure.some((role) => role !== who)) return [];
  const there = { who: datum.role(who), side: datum.side(gap.side) };
  if (maybe.length > 0) {
    return [
      {
        undetermined: true,
        because: because(
          'whether anybody contains on the {side} when {who} leaves with the back depends on {other}',
          { ...there, other: datum.roles(maybe) },
          fact('of the two jobs told one contains there and the other does not'),
        ),
        who: [who, ...maybe],
        gaps: [gap],
      },
    ];
  }
  return [
    {
      because: because(
        '{who} leaves with the back and nobody else contains on the {side}',
        there,
        man.combined.because,
        fact('no other rusher of that side is told to contain'),
      ),
      who: [who],
      gaps: [gap],
    },
  ];
}
