import { lazy, Suspense, useState, type DragEvent, type ReactElement } from 'react';
import { Banners } from './Banners.tsx';
import { BoardPanel } from './board/BoardPanel.tsx';
import { CallPanel } from './call/CallPanel.tsx';
import { FileDialogs } from './dialogs/FileDialogs.tsx';
import { useFiles } from './files/useFiles.ts';
import { Header, type Screen } from './header/Header.tsx';
import { PlayersPanel } from './players/PlayersPanel.tsx';
import { PrintDialog } from './print/PrintDialog.tsx';
import { ReportPanel } from './report/ReportPanel.tsx';
import { useBoardModel, type BoardModel } from './session/model.ts';
import { useNotice } from './session/session.ts';
import type { Started } from './session/start.ts';
import { useShortcuts } from './shortcuts.ts';

/** Loaded when it is first looked at. */
const MenuScreen = lazy(async () => ({ default: (await import('./menu/MenuScreen.tsx')).MenuScreen }));

/** The whole screen. */
export function App({ damaged }: { readonly damaged: Started['damaged'] }): ReactElement {
  const files = useFiles();
  const model = useBoardModel();
  const [printing, setPrinting] = useState(false);
  const [screen, setScreen] = useState<Screen>('board');
  useShortcuts();
  return (
    <div className="app" onDragOver={allowFiles} onDrop={(event) => dropFile(event, files.choose)}>
      <Header files={files} screen={screen} onScreen={setScreen} onPrint={() => setPrinting(true)} />
      <Banners damaged={damaged} />
      {screen === 'menu' ? (
        <Suspense fallback={<main className="workspace-empty" aria-busy="true" />}>
          <MenuScreen onBoard={() => setScreen('board')} />
        </Suspense>
      ) : 'missing' in model ? (
        <Lacking missing={model.missing} />
      ) : (
        <Workspace model={model} />
      )}
      <NoticeLine />
      <FileDialogs files={files} />
      {printing && <PrintDialog onClose={() => setPrinting(false)} />}
    </div>
  );
}

function Workspace({ model }: { readonly model: BoardModel }): ReactElement {
  const [placing, setPlacing] = useState(false);
  const mayPlace = placing && model.state.view.selected !== null && !model.state.readOnly;
  return (
    <main className="workspace">
      <div className="left-column">
        <CallPanel />
        <PlayersPanel model={model} placing={mayPlace} onPlacing={setPlacing} />
      </div>
      <BoardPanel model={model} placing={mayPlace} onPlaced={() => setPlacing(false)} />
      <ReportPanel model={model} />
    </main>
  );
}

const LACKING_WORDS = {
  look: 'no looks: there is nothing to line up against',
  front: 'no fronts: nobody knows where to stand',
  pressure: 'no pressures: there is nothing to call',
  coverage: 'no coverage behind this pressure',
} as const;

function Lacking({ missing }: { readonly missing: keyof typeof LACKING_WORDS }): ReactElement {
  return (
    <main className="workspace-empty">
      <p>This playbook has {LACKING_WORDS[missing]}.</p>
      <p>Open another file, or undo the last step.</p>
    </main>
  );
}

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
