import { lazy, memo, Suspense, useCallback, useState, type ReactElement } from 'react';
import { BoardPanel } from './board/BoardPanel.tsx';
import { CallPanel } from './call/CallPanel.tsx';
import type { Screen } from './header/screens.ts';
import { PlayersPanel } from './players/PlayersPanel.tsx';
import { ReportPanel } from './report/ReportPanel.tsx';
import { useBoardModel } from './session/model.ts';

/** Loaded when the playbook is first worked on. */
const Desk = lazy(async () => ({ default: (await import('./desk/Desk.tsx')).Desk }));

/** Each part is made again only for what it shows. */
const CalmBoard = memo(BoardPanel);
const CalmCall = memo(CallPanel);
const CalmDesk = memo(Desk);
const CalmPlayers = memo(PlayersPanel);
const CalmReport = memo(ReportPanel);

interface WorkspaceProps {
  /** True: the playbook is worked on beside the board; false: a call is put together. */
  readonly editing: boolean;
  /** Starts a playbook of one's own. */
  readonly onStart: () => void;
  readonly onScreen: (screen: Screen) => void;
}

/** The board with what stands beside it: the call or the playbook on the one side, the report on the other. */
export function Workspace({ editing, onStart, onScreen }: WorkspaceProps): ReactElement {
  const model = useBoardModel();
  const [placing, setPlacing] = useState(false);
  const onPlaced = useCallback(() => setPlacing(false), []);
  if ('missing' in model && !editing) {
    return (
      <main className="workspace-empty">
        <Lacking missing={model.missing} onStart={onStart} onPlaybook={() => onScreen('playbook')} />
      </main>
    );
  }
  const shown = 'missing' in model ? null : model;
  const mayPlace = placing && shown !== null && shown.state.view.selection.length === 1 && !shown.state.readOnly;
  return (
    <main className={editing ? 'workspace is-editing' : 'workspace'}>
      <div className="left-column">
        {editing ? (
          <Suspense fallback={<section className="panel desk" aria-busy="true" />}>
            <CalmDesk onStart={onStart} />
          </Suspense>
        ) : (
          <CalmCall />
        )}
        {shown !== null && <CalmPlayers model={shown} placing={mayPlace} onPlacing={setPlacing} />}
      </div>
      {'missing' in model ? (
        <Lacking missing={model.missing} onStart={onStart} onPlaybook={null} />
      ) : (
        <>
          <CalmBoard model={model} placing={mayPlace} onPlaced={onPlaced} />
          <CalmReport model={model} />
        </>
      )}
    </main>
  );
}

const LACKING_WORDS = {
  look: 'no looks: there is nothing to line up against',
  front: 'no fronts: nobody knows where to stand',
  pressure: 'no pressures: there is nothing to call',
  coverage: 'no coverage behind this pressure',
} as const;

interface LackingProps {
  readonly missing: keyof typeof LACKING_WORDS;
  readonly onStart: () => void;
  /** Goes where the parts of a playbook are made; null: he is there. */
  readonly onPlaybook: (() => void) | null;
}

/** What the playbook lacks for a board, and what to do about it. */
function Lacking({ missing, onStart, onPlaybook }: LackingProps): ReactElement {
  return (
    <section className="workspace-empty" aria-label="The board">
      <p>This playbook has {LACKING_WORDS[missing]}.</p>
      <p>
        {onPlaybook === null ? `Make one on the left, under ${LACKING_TABS[missing]}.` : 'Make one, or start afresh.'}{' '}
        You can also open a file, or undo the last step.
      </p>
      <div className="button-row">
        {onPlaybook !== null && (
          <button type="button" className="is-main" onClick={onPlaybook}>
            Go to the playbook
          </button>
        )}
        <button type="button" onClick={onStart}>
          Start my own playbook…
        </button>
      </div>
    </section>
  );
}

const LACKING_TABS = { look: 'Looks', front: 'Fronts', pressure: 'Pressures', coverage: 'Coverages' } as const;
