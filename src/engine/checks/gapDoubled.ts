import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { OwnedGap } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/** Two men sent to one gap while another gap has nobody of its own. Two in one gap with all others full is a choice. */
export const gapDoubled = checkOfPlay({
  id: 'gap.doubled',
  title: 'Two men in one gap, another gap thin',
  severity: 'check',
  matters: 'One of the two is wasted, and somewhere else one man short.',
  source: '"Two Gap, One Gap Revisited", Football Is Life blog, 17 Aug 2015',
  needsSide: true,
  report: (draft) => {
    const thin = draft.gaps.filter(isThin);
    if (thin.length === 0) return [];
    return gather(draft.gaps, (owned): readonly Report[] => {
      const whole = owned.owners.filter((owner) => owner.sure && !owner.shared);
      if (whole.length < 2) return [];
      return [
        {
          because: because(
            '{who} are sent into one gap, the {gap}, which leaves too little for the {thin}',
            {
              who: datum.roles(whole.map((owner) => owner.role)),
              gap: datum.gap(owned.gap),
              thin: datum.gaps(thin.map((each) => each.gap)),
            },
            ...whole.map((owner) => owner.because),
            fact('a gap is thin when nobody has it, or only half of a man who plays two'),
          ),
          who: whole.map((owner) => owner.role),
          gaps: [owned.gap, ...thin.map((each) => each.gap)],
        },
      ];
    });
  },
});

function isThin(owned: OwnedGap): boolean {
  return owned.owners.every((owner) => owner.sure && owner.shared);
}
