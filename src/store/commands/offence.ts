import { ok, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import type { LookId, PlayerId, Point } from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';
import { withEntry } from './lists.ts';
import { keptPoint } from './points.ts';

/** Moves one man of an offensive look; for the man in motion that is where he is when the ball is snapped. */
export function moveOffence(
  playbook: Playbook,
  args: { readonly look: LookId; readonly player: PlayerId; readonly at: Point },
): Result<Playbook, CommandProblem> {
  const at = keptPoint(args.at);
  const looks = withEntry(
    playbook.looks,
    args.look,
    (look) => {
      if (look.motion?.player === args.player) return ok({ ...look, motion: { ...look.motion, to: at } });
      const players = withEntry(look.players, args.player, (player) => ok({ ...player, ...at }), {
        kind: 'not-there',
        what: 'player',
      });
      return players.ok ? ok({ ...look, players: players.value }) : players;
    },
    { kind: 'not-there', what: 'look' },
  );
  return looks.ok ? ok({ ...playbook, looks: looks.value }) : looks;
}
