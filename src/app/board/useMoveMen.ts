import { moveMen, type Standing } from '../../store/index.ts';
import { menName } from '../players/manName.ts';
import type { BoardModel } from '../session/model.ts';
import { useCommit, useSession } from '../session/session.ts';

/** Moves men of the board as one step of the history; steps of one gesture join. `verb` is what the history calls it. */
export function useMoveMen(
  model: BoardModel,
): (moves: readonly Standing[], gesture: string | null, verb?: string) => boolean {
  const { store } = useSession();
  const commit = useCommit();
  return (moves, gesture, verb = 'moved') =>
    commit({
      label: `${verb} ${menName(
        moves.map(({ man }) => man),
        model.lexicon,
      )}`,
      look: model.state.board.look,
      gesture,
      change: (playbook) => moveMen(playbook, store.get().board, moves),
    });
}
