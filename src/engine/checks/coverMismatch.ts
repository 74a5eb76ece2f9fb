import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Answer, Because, Played, PlayedMan } from '../types/index.ts';
import { coverInDoubt } from './coverDoubt.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/** Inside backers stand within this of the ball, in yards (convention of ours: a guard's and a tackle's width). */
const INSIDE = 3.5;

/**
 * A lineman left with anybody who is split wide, or a backer who starts inside the box left with a wide receiver outside the
 * third, or with the third across the ball. A backer on a back, on a tight end or in the hook on the third receiver of his
 * side does what he is there for; against three receivers the backers bump so that he is the one who has him.
 */
export const coverMismatch = checkOfPlay({
  id: 'cover.mismatch',
  title: 'A big man is left with a wide receiver',
  severity: 'check',
  matters: 'He has to run with somebody he cannot run with.',
  source:
    '"Adjusting Firezone Coverage", Blitzology, 25 Apr 2019 (a lock so that a big end need not chase a receiver into space); the bump: "3-4 Zone Pressure to Attack the Run", Blitzology, 17 May 2016; which backer: from memory',
  needsSide: true,
  report: (draft) => {
    const doubtful = coverInDoubt(draft);
    return gather(draft.answers, (answer): readonly Report[] => {
      const man = draft.assignments.find((each) => each.aligned.role.id === answer.by);
      if (man === undefined || doubtful.includes(man.aligned.role.id)) return [];
      const why = mismatch(man, answer, draft);
      if (why === null) return [];
      return [
        {
          because: because(
            '{who} is left with {receiver}',
            { who: datum.role(man.aligned.role.id), receiver: datum.player(answer.player) },
            answer.because,
            why,
          ),
          who: [man.aligned.role.id],
          players: [answer.player],
        },
      ];
    });
  },
});

/** Why he should not have that receiver; null: he may. */
function mismatch({ aligned }: PlayedMan, answer: Answer, { facts }: Played): Because | null {
  const receiver = facts.receivers.find((each) => each.player === answer.player);
  if (receiver === undefined || receiver.attached) return null;
  if (aligned.role.room === 'line') return fact('he is a lineman, the receiver is split wide');
  const inside = aligned.role.room === 'linebackers' && aligned.inBox && Math.abs(aligned.x) <= INSIDE;
  if (!inside || facts.players.get(answer.player)?.kind !== 'receiver') return null;
  if (receiver.number <= 2) return fact('he starts inside the box, the receiver is split wide');
  const across = aligned.place !== 'middle' && aligned.place !== receiver.side;
  return across ? fact('he starts inside the box on the other side of the ball') : null;
}
