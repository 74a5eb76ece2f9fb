import { gather } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import { gapsEqual } from '../gaps.ts';
import { gapsThatExist } from '../resolve/names.ts';
import type { Gap, Played, PlayedMan } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { inConflict } from './outcomes.ts';

/** The line moves out of a gap and nobody takes it. */
export const frontUnreplaced = checkOfPlay({
  id: 'front.unreplaced',
  title: 'The line leaves a gap and nobody replaces it',
  severity: 'stop',
  matters: 'Movement up front only works if somebody comes behind it.',
  source: '"if you rock the front you have to roll the coverage": "Basics of pass protection", BuckeyePlanet',
  needsSide: true,
  report: (draft) =>
    gather(draft.assignments, (man): readonly Report[] => {
      if (man.aligned.role.room !== 'line' || inConflict(man)) return [];
      const left = leftGaps(man, draft).filter((gap) => isOpen(gap, draft));
      if (left.length === 0) return [];
      return [
        {
          because: because(
            '{who} leaves the {gaps} and nobody takes his place',
            { who: datum.role(man.aligned.role.id), gaps: datum.gaps(left) },
            man.combined.because,
          ),
          who: [man.aligned.role.id],
          gaps: left,
        },
      ];
    }),
});

/** The gaps of his base job he is not in any more because a pressure moves him. */
function leftGaps(man: PlayedMan, draft: Played): readonly Gap[] {
  if (man.combined.job === null) return [];
  const base = draft.setup.front.roles.find((entry) => entry.role === man.aligned.role.id)?.base;
  const mySide = man.aligned.place === 'middle' ? null : man.aligned.place;
  const own = gapsThatExist(base?.gaps ?? [], { facts: draft.facts, callSide: null, mySide });
  const kept = base?.style === 'two-gap' ? own.slice(0, 2) : own.slice(0, 1);
  return kept.filter((gap) => !man.run.gaps.some((each) => gapsEqual(each, gap)));
}

function isOpen(gap: Gap, draft: Played): boolean {
  return draft.gaps.some((owned) => gapsEqual(owned.gap, gap) && owned.owners.length === 0);
}
