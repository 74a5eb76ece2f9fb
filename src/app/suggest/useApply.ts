import type { Edit, FrontId, LookId } from '../../engine/index.ts';
import { applySuggestions, shareEdits, type AppState } from '../../store/index.ts';
import { useCommit, useSession } from '../session/session.ts';

/** Suggested edits that are to be done, what they do in words, and where. */
interface Doing {
  readonly edits: readonly Edit[];
  readonly label: string;
  readonly look: LookId | null;
  readonly front: FrontId;
}

/** Makes suggested edits and says so; true when they were made. What changes the playbook is one step of its history. */
export function useApply(state: AppState): (doing: Doing) => boolean {
  const { store, notices } = useSession();
  const commit = useCommit();
  return ({ edits, label, look, front }) => {
    const { parts, rest } = shareEdits(state, edits);
    if (rest.length > 0) {
      const change = { edits: rest, call: state.board.call, front };
      if (!commit({ label, look, gesture: null, change: (now) => applySuggestions(now, change) })) return false;
    }
    if (parts !== null) store.setBoard(parts);
    notices.say(doneText(label, parts !== null, rest.length > 0));
    return true;
  };
}

function doneText(label: string, onBoard: boolean, inPlaybook: boolean): string {
  if (!onBoard) return `Done: ${label}. Undo takes it back.`;
  const undo = inPlaybook ? ' Undo takes back what changed in the playbook.' : '';
  return `Done on the board: ${label}. The call is not kept that way yet.${undo}`;
}
