import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { SIDES, type Side } from '../vocabulary.ts';
import type { Played, PlayedMan } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { inTheEdge, turnsBack } from './edges.ts';
import { outcomesOf } from './outcomes.ts';

/**
 * No man on a side turns the ball back in. A man who contains from the edge gap keeps the ball inside him as a rule, so if
 * nobody has told him to spill he only has to be told to box: that is for the coach to decide.
 */
export const forceMissing = checkOfPlay({
  id: 'force.missing',
  title: 'A side has no force',
  severity: 'stop',
  matters: 'If the ball bounces outside nobody turns it back to the others.',
  source:
    '"Force, Spill and Leverage", a staff handout; J. Daniel, "Force Player in Football", Football Coaching Podcast QC 227; a contain man in the edge gap without a word about force is only a check: from memory',
  needsSide: true,
  report: (draft) => gather(SIDES, (side): readonly Report[] => judgeSide(draft, side)),
});

function judgeSide(draft: Played, side: Side): readonly Report[] {
  const { sure, maybe } = turnsBack(draft, side);
  if (sure.length > 0) return [];
  const gaps = [{ side, letter: draft.facts.edge[side] }];
  const there = { side: datum.side(side) };
  if (maybe.length > 0) {
    return [
      {
        undetermined: true,
        because: because(
          'whether the {side} has a force depends on {who}',
          { ...there, who: datum.roles(maybe) },
          fact('of the two jobs told one turns the ball back there and the other does not'),
        ),
        who: maybe,
        gaps,
      },
    ];
  }
  const untold = edgeContain(draft, side);
  if (untold !== null) {
    const who = untold.aligned.role.id;
    return [
      {
        severity: 'check',
        because: because(
          '{who} contains in the edge gap on the {side}, but nobody is told force there',
          { ...there, who: datum.role(who) },
          fact('if he is to turn the ball back himself, tell him to box'),
        ),
        who: [who],
        gaps,
      },
    ];
  }
  return [
    {
      because: because(
        'nobody is force on the {side}',
        there,
        fact('no man is told force there, and nobody in the edge gap boxes'),
      ),
      gaps,
    },
  ];
}

/** A man who contains from the edge gap of a side and is not told how to take a block there. */
function edgeContain(draft: Played, side: Side): PlayedMan | null {
  const found = draft.assignments.find((man) =>
    outcomesOf(man, draft).every(
      (outcome) => outcome.pass.kind === 'contain' && outcome.edge === null && inTheEdge(outcome, draft, side),
    ),
  );
  return found ?? null;
}
