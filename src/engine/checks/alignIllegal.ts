import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/** Half the length of the ball, 11 in, in yards: the defence's edge of the neutral zone. */
const NEUTRAL_ZONE_HALF = 0.155;

/** A defender stands where he may not at the snap: in the neutral zone, or off the field. */
export const alignIllegal = checkOfPlay({
  id: 'align.illegal',
  title: 'A defender stands where he may not',
  severity: 'stop',
  matters: 'It is a foul before the ball is even gone.',
  source:
    'neutral zone: NFHS 7-1-5, NCAA 2-18-2-a, NFL 7-4-5; its depth is the length of the ball: NFL 3-18, NCAA 2-17',
  needsSide: false,
  report: (draft) =>
    gather(draft.assignments, ({ aligned }): readonly Report[] => {
      const who = aligned.role.id;
      const said = { who: datum.role(who) };
      if (aligned.y < NEUTRAL_ZONE_HALF) {
        return [{ because: because('{who} is in or beyond the neutral zone', said, aligned.because), who: [who] }];
      }
      if (aligned.x < draft.facts.sidelines.left || aligned.x > draft.facts.sidelines.right) {
        return [
          {
            because: because('{who} is off the field', said, aligned.because, fact('the sideline is closer than that')),
            who: [who],
          },
        ];
      }
      return [];
    }),
});
