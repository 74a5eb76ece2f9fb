import { because, datum, fact } from '../because.ts';
import { crossings, movesOfDraft, orderedBetween, tenth } from '../move/index.ts';
import { defineCheck, type Report } from './defineCheck.ts';

/** Two men whose paths are at one place at one time, and no order told that keeps them apart. */
export const pathCrossing = defineCheck({
  id: 'path.crossing',
  title: 'Two paths meet at the same time',
  severity: 'check',
  matters: 'Two men who run into each other block themselves, and both come late.',
  source:
    'first and second, never a single wave: K. Bowers, "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O Labs, 2022; penetrator first, looper second: "Line Games Series: Twist Stunt", Inside the Pylon, 2016; the times are estimates',
  needsSide: true,
  judge: (draft) =>
    crossings(movesOfDraft(draft)).map(({ a, b, t }): Report => {
      const [one, other] = [a, b].map((id) => draft.assignments.find(({ aligned }) => aligned.role.id === id));
      const ordered = one !== undefined && other !== undefined && orderedBetween(one, other);
      return {
        because: because(
          '{who} run into each other, by estimate {time} s after the snap',
          { who: datum.roles([a, b]), time: datum.number(tenth(t)) },
          ordered ? fact('the order they are told does not keep them apart') : fact('neither is told to go first'),
        ),
        who: [a, b],
      };
    }),
});
