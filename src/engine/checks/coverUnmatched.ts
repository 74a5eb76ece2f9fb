import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Answer, Played, PlayerId, RoleId } from '../types/index.ts';
import { coverInDoubt, openReceivers } from './coverDoubt.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/**
 * An eligible receiver nobody answers, the back and the hot throw included. Cannot tell of receivers who are answered, or might
 * be, by a man who is told two things.
 */
export const coverUnmatched = checkOfPlay({
  id: 'cover.unmatched',
  title: 'An eligible receiver has nobody',
  severity: 'stop',
  matters: 'The passer throws to the man nobody has before the rush gets there.',
  source: '"a plan for all five eligibles": "Pressure Coverages 101", New Orleans Sports Today',
  needsSide: true,
  report: (draft) => {
    const inDoubt = coverInDoubt(draft);
    const { sure, maybe } = openReceivers(draft, inDoubt);
    return [...uncovered(draft, sure), ...doubtful(inDoubt, maybe)];
  },
});

/** One report for each set of receivers that is short of men for one reason; those nobody can take at all are one set. */
function uncovered(draft: Played, sure: readonly PlayerId[]): readonly Report[] {
  const open = draft.answers.filter((answer) => answer.proof !== null && sure.includes(answer.player));
  const keyOf = ({ proof }: Answer): string => (proof?.reachable.length === 0 ? '' : (proof?.players.join() ?? ''));
  return gather([...new Set(open.map(keyOf))], (key): readonly Report[] => {
    const set = open.filter((answer) => keyOf(answer) === key);
    const proof = set[0]?.proof;
    if (proof === null || proof === undefined) return [];
    const players = set.map((answer) => answer.player);
    const why =
      proof.reachable.length === 0
        ? fact('nobody drops to a zone that takes him, and nobody has him man to man')
        : because('{all} can only be taken by {who}', {
            all: datum.players(proof.players),
            who: datum.roles(proof.reachable),
          });
    return [
      {
        because: because('nobody has {open}', { open: datum.players(players) }, why),
        who: proof.reachable,
        players,
      },
    ];
  });
}

function doubtful(who: readonly RoleId[], players: readonly PlayerId[]): readonly Report[] {
  if (players.length === 0) return [];
  return [
    {
      undetermined: true,
      because: because(
        'whether anybody has {players} depends on {who}',
        { players: datum.players(players), who: datum.roles(who) },
        fact('he is told two things, and covers somebody by one of them only'),
      ),
      who,
      players,
    },
  ];
}
