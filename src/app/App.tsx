import {
  lazy,
  memo,
  Suspense,
  useCallback,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
  type DragEvent,
  type ReactElement,
} from 'react';
import { ActionDialogs, useActionDialogs } from './actions/ActionDialogs.tsx';
import { Banners } from './Banners.tsx';
import { BoardPanel } from './board/BoardPanel.tsx';
import { CallPanel } from './call/CallPanel.tsx';
import { FileDialogs } from './dialogs/FileDialogs.tsx';
import { useFiles } from './files/useFiles.ts';
import { useGuide } from './guide/useGuide.ts';
import { Header } from './header/Header.tsx';
import type { Screen } from './header/screens.ts';
import { PlayersPanel } from './players/PlayersPanel.tsx';
import { PrintDialog } from './print/PrintDialog.tsx';
import { ReportPanel } from './report/ReportPanel.tsx';
import { useBoardModel, type BoardModel } from './session/model.ts';
import { useNotice } from './session/session.ts';
import type { NothingToShow } from '../store/index.ts';
import type { Started } from './session/start.ts';

/** Loaded when it is first looked at. */
const MenuScreen = lazy(async () => ({ default: (await import('./menu/MenuScreen.tsx')).MenuScreen }));

/** Loaded when the playbook is first worked on. */
const Desk = lazy(async () => ({ default: (await import('./desk/Desk.tsx')).Desk }));

/** Loaded when a room is first quizzed. */
const QuizScreen = lazy(async () => ({ default: (await import('./quiz/QuizScreen.tsx')).QuizScreen }));

/** Loaded on the first visit, and when it is asked for. */
const Guide = lazy(async () => ({ default: (await import('./guide/Guide.tsx')).Guide }));

/** The whole screen. */
export function App({ damaged }: { readonly damaged: Started['damaged'] }): ReactElement {
  const files = useFiles();
  const model = useBoardModel();
  const [printing, setPrinting] = useState(false);
  const [screen, setScreen] = useState<Screen>('board');
  const guide = useGuide();
  const onPrint = useCallback(() => setPrinting(true), []);
  const onBoard = useCallback(() => setScreen('board'), []);
  const actions = useActionDialogs({ files, screen, onScreen: setScreen, onPrint, onGuide: guide.begin });
  return (
    <div className="app" onDragOver={allowFiles} onDrop={(event) => dropFile(event, files.choose)}>
      <Header files={files} screen={screen} onScreen={setScreen} onPrint={onPrint} onMore={actions.onMore} />
      <Banners damaged={damaged} />
      {guide.shown && (
        <Suspense fallback={null}>
          <Guide screen={screen} printing={printing} onBoard={onBoard} onEnd={guide.end} />
        </Suspense>
      )}
      <Suspense fallback={<main className="workspace-empty" aria-busy="true" />}>
        <Shown screen={screen} model={model} onStart={files.start} onScreen={setScreen} />
      </Suspense>
      <NoticeLine />
      <FileDialogs files={files} />
      <ActionDialogs {...actions} />
      {printing && <PrintDialog onClose={() => setPrinting(false)} />}
    </div>
  );
}

interface ShownProps {
  readonly screen: Screen;
  readonly model: BoardModel | NothingToShow;
  readonly onStart: () => void;
  readonly onScreen: (screen: Screen) => void;
}

function Shown({ screen, model, onStart, onScreen }: ShownProps): ReactElement {
  switch (screen) {
    case 'menu':
      return <MenuScreen onBoard={() => onScreen('board')} />;
    case 'quiz':
      return <QuizScreen />;
    case 'playbook':
      return <Workspace model={model} editing onStart={onStart} />;
    case 'board':
      return 'missing' in model ? (
        <main className="workspace-empty">
          <Lacking missing={model.missing} onStart={onStart} onPlaybook={() => onScreen('playbook')} />
        </main>
      ) : (
        <Workspace model={model} editing={false} onStart={onStart} />
      );
  }
}

/** How often what stands beside the field follows a hand that drags men, in milliseconds. */
const FOLLOWS = 150;

/**
 * The board as what stands beside the field shows it: the hand and the field go first, and while men are dragged the rest
 * follows a few times a second. Once they are let go it is the same at once.
 */
function useBeside(model: BoardModel | null): BoardModel | null {
  const held = model !== null && model.state.preview !== null;
  const [followed, setFollowed] = useState(model);
  if (!held && followed !== model) setFollowed(model);
  const latest = useRef(model);
  useLayoutEffect(() => {
    latest.current = model;
  });
  useEffect(() => {
    if (!held) return undefined;
    const timer = setInterval(() => setFollowed(latest.current), FOLLOWS);
    return () => clearInterval(timer);
  }, [held]);
  return held ? followed : model;
}

/** What stands beside the field is made again only for what it shows. */
const CalmCall = memo(CallPanel);
const CalmDesk = memo(Desk);
const CalmPlayers = memo(PlayersPanel);
const CalmReport = memo(ReportPanel);

interface WorkspaceProps {
  readonly model: BoardModel | NothingToShow;
  /** True: the playbook is worked on beside the board; false: a call is put together. */
  readonly editing: boolean;
  /** Starts a playbook of one's own. */
  readonly onStart: () => void;
}

function Workspace({ model, editing, onStart }: WorkspaceProps): ReactElement {
  const [placing, setPlacing] = useState(false);
  const shown = 'missing' in model ? null : model;
  const beside = useBeside(shown);
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
        {beside !== null && <CalmPlayers model={beside} placing={mayPlace} onPlacing={setPlacing} />}
      </div>
      {'missing' in model || beside === null ? (
        'missing' in model && <Lacking missing={model.missing} onStart={onStart} onPlaybook={null} />
      ) : (
        <>
          <BoardPanel model={model} beside={beside} placing={mayPlace} onPlaced={() => setPlacing(false)} />
          <CalmReport model={beside} />
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

function NoticeLine(): ReactElement {
  const notice = useNotice();
  return (
    <p className="notice" role="status" key={notice.number}>
      {notice.text}
    </p>
  );
}

function allowFiles(event: DragEvent): void {
  if (event.dataTransfer.types.includes('Files')) event.preventDefault();
}

function dropFile(event: DragEvent, choose: (file: File) => void): void {
  const [file] = event.dataTransfer.files;
  if (file === undefined) return;
  event.preventDefault();
  choose(file);
}
