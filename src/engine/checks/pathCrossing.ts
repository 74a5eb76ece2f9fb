import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { crossings, goesAfter, movesOfDraft, tenth, turnsOf } from '../move/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/**
 * Two men whose paths are at one place at one time, and nothing told says which of them goes first. Where something does, the
 * second waits for the first to pass, and how long is his own to see; only orders that contradict each other are found.
 */
export const pathCrossing = checkOfPlay({
  id: 'path.crossing',
  title: 'Two paths meet at the same time',
  severity: 'check',
  matters: 'Two men who run into each other block themselves, and both come late.',
  source:
    'first and second, never a single wave: K. Bowers, "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O Labs, 2022; penetrator first, looper second: "Line Games Series: Twist Stunt", Inside the Pylon, 2016; the times are estimates',
  needsSide: true,
  report: (draft) => {
    const turns = turnsOf(draft.assignments);
    return gather(crossings(movesOfDraft(draft)), ({ a, b, t }): readonly Report[] => {
      const waits = [goesAfter(turns, a, b), goesAfter(turns, b, a)].filter(Boolean).length;
      if (waits === 1) return [];
      return [
        {
          because: because(
            '{who} run into each other, by estimate {time} s after the snap',
            { who: datum.roles([a, b]), time: datum.number(tenth(t)) },
            waits === 2 ? fact('the orders they are told contradict each other') : fact('neither is told to go first'),
          ),
          who: [a, b],
        },
      ];
    });
  },
});
