import type { Edit, FrontId, LookId } from '../../engine/index.ts';
import { applySuggestions, editedParts, isCallEdit, partsOf, sameParts, type AppState } from '../../store/index.ts';
import { useCommit, useSession } from '../session/session.ts';

/** Suggested edits that are to be done, what they do in words, and where. */
interface Doing {
  readonly edits: readonly Edit[];
  readonly label: string;
  readonly look: LookId | null;
  readonly front: FrontId;
}

/**
 * Makes suggested edits and says so; true when they were made. What changes the playbook is one step of its history. A call
 * that is not kept the way it is called stands in no playbook: what the edits change of it is changed on the board.
 */
export function useApply({ board, playbook }: AppState): (doing: Doing) => boolean {
  const { store, notices } = useSession();
  const commit = useCommit();
  return ({ edits, label, look, front }) => {
    const kept = playbook.calls.find(({ id }) => id === board.call);
    const onBoard = kept !== undefined && sameParts(kept, board) ? [] : edits.filter(isCallEdit);
    const inPlaybook = edits.filter((edit) => onBoard.length === 0 || !isCallEdit(edit));
    if (inPlaybook.length > 0) {
      const change = { edits: inPlaybook, call: board.call, front };
      if (!commit({ label, look, gesture: null, change: (now) => applySuggestions(now, change) })) return false;
    }
    if (onBoard.length > 0) store.setBoard(onBoard.reduce(editedParts, partsOf(board)));
    notices.say(doneText(label, onBoard.length > 0, inPlaybook.length > 0));
    return true;
  };
}

function doneText(label: string, onBoard: boolean, inPlaybook: boolean): string {
  if (!onBoard) return `Done: ${label}. Undo takes it back.`;
  const undo = inPlaybook ? ' Undo takes back what changed in the playbook.' : '';
  return `Done on the board: ${label}. The call is not kept that way yet.${undo}`;
}
