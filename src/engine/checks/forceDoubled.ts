import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { SIDES } from '../vocabulary.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { forceMen } from './edges.ts';

/** Two men think they are force on one side. */
export const forceDoubled = checkOfPlay({
  id: 'force.doubled',
  title: 'A side has two force men',
  severity: 'check',
  matters: 'Two men keep outside and nobody fills the alley inside them.',
  source:
    'force is defined by the coverage, one man a side: J. Daniel, "Force Player in Football", QC 227; two at once: from memory',
  needsSide: true,
  report: (draft) =>
    gather(SIDES, (side): readonly Report[] => {
      const men = forceMen(draft, side).sure;
      if (men.length < 2) return [];
      return [
        {
          because: because(
            '{who} are told force on one side, {side}',
            { who: datum.roles(men), side: datum.side(side) },
            fact('one of them is wanted inside, in the alley'),
          ),
          who: men,
        },
      ];
    }),
});
