import { useState, type ReactElement } from 'react';
import type { Call } from '../../engine/index.ts';
import {
  deleteCall,
  keepCall,
  nextCallId,
  partsOf,
  renameCall,
  sameParts,
  updateCall,
  type Board,
} from '../../store/index.ts';
import { NameDialog } from '../dialogs/NameDialog.tsx';
import { useApp, useCommit, useSession } from '../session/session.ts';

/** Keeping what is called under a name, and what can be done to a kept call. */
export function CallButtons(): ReactElement {
  const playbook = useApp((state) => state.playbook);
  const board = useApp((state) => state.board);
  const readOnly = useApp((state) => state.readOnly);
  const [asking, setAsking] = useState<'keep' | 'rename' | null>(null);
  const commit = useCommit();
  const call = playbook.calls.find(({ id }) => id === board.call) ?? null;
  const actions = useCallActions(board, call);
  return (
    <div className="button-row">
      <button type="button" disabled={readOnly} onClick={() => setAsking('keep')}>
        Keep as call…
      </button>
      {call !== null && !sameParts(call, board) && (
        <button
          type="button"
          disabled={readOnly}
          onClick={() =>
            commit({
              label: `changed the call ${call.name}`,
              look: null,
              gesture: null,
              change: (now) => updateCall(now, { call: call.id, parts: partsOf(board) }),
            })
          }
        >
          Keep the change
        </button>
      )}
      {call !== null && (
        <>
          <button type="button" disabled={readOnly} onClick={() => setAsking('rename')}>
            Rename…<span className="unseen"> the call</span>
          </button>
          <button type="button" disabled={readOnly} onClick={actions.remove}>
            Delete<span className="unseen"> the call</span>
          </button>
        </>
      )}
      {asking === 'keep' && (
        <NameDialog
          title="Keep as call"
          label="Name of the call"
          start=""
          action="Keep"
          onName={actions.keep}
          onClose={() => setAsking(null)}
        />
      )}
      {asking === 'rename' && call !== null && (
        <NameDialog
          title="Rename the call"
          label="New name"
          start={call.name}
          action="Rename"
          onName={actions.rename}
          onClose={() => setAsking(null)}
        />
      )}
    </div>
  );
}

interface CallActions {
  readonly keep: (name: string) => boolean;
  readonly rename: (name: string) => boolean;
  readonly remove: () => void;
}

function useCallActions(board: Board, call: Call | null): CallActions {
  const { store } = useSession();
  const commit = useCommit();
  const inNoLook = { look: null, gesture: null };
  return {
    keep: (name) => {
      const id = nextCallId(store.get().playbook);
      const parts = partsOf(board);
      const done = commit({
        ...inNoLook,
        label: `kept the call ${name.trim()}`,
        change: (playbook) => keepCall(playbook, { id, name, parts, from: board.call }),
      });
      if (done) store.setBoard({ call: id });
      return done;
    },
    rename: (name) =>
      call !== null &&
      commit({
        ...inNoLook,
        label: `renamed the call ${call.name}`,
        change: (playbook) => renameCall(playbook, { call: call.id, name }),
      }),
    remove: () => {
      if (call === null) return;
      commit({
        ...inNoLook,
        label: `deleted the call ${call.name}`,
        change: (playbook) => deleteCall(playbook, { call: call.id }),
      });
    },
  };
}
