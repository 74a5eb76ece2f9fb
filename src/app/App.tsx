import { lazy, Suspense, useCallback, useState, type DragEvent, type ReactElement } from 'react';
import { ActionDialogs, useActionDialogs } from './actions/ActionDialogs.tsx';
import { Banners } from './Banners.tsx';
import { FileDialogs } from './dialogs/FileDialogs.tsx';
import { useFiles } from './files/useFiles.ts';
import { useGuide } from './guide/useGuide.ts';
import { Header } from './header/Header.tsx';
import type { Screen } from './header/screens.ts';
import { useNotice } from './session/session.ts';
import type { Started } from './session/start.ts';
import { Workspace } from './Workspace.tsx';

/** Loaded when it is first looked at. */
const MenuScreen = lazy(async () => ({ default: (await import('./menu/MenuScreen.tsx')).MenuScreen }));

/** Loaded when a room is first quizzed. */
const QuizScreen = lazy(async () => ({ default: (await import('./quiz/QuizScreen.tsx')).QuizScreen }));

/** Loaded on the first visit, and when it is asked for. */
const Guide = lazy(async () => ({ default: (await import('./guide/Guide.tsx')).Guide }));

/** Loaded when somebody prints. */
const PrintDialog = lazy(async () => ({ default: (await import('./print/PrintDialog.tsx')).PrintDialog }));

/** The whole screen. */
export function App({ damaged }: { readonly damaged: Started['damaged'] }): ReactElement {
  const files = useFiles();
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
        <Shown screen={screen} onStart={files.start} onScreen={setScreen} />
      </Suspense>
      <NoticeLine />
      <FileDialogs files={files} />
      <ActionDialogs {...actions} />
      {printing && (
        <Suspense fallback={null}>
          <PrintDialog onClose={() => setPrinting(false)} />
        </Suspense>
      )}
    </div>
  );
}

interface ShownProps {
  readonly screen: Screen;
  readonly onStart: () => void;
  readonly onScreen: (screen: Screen) => void;
}

function Shown({ screen, onStart, onScreen }: ShownProps): ReactElement {
  switch (screen) {
    case 'menu':
      return <MenuScreen onBoard={() => onScreen('board')} />;
    case 'quiz':
      return <QuizScreen />;
    case 'playbook':
    case 'board':
      return <Workspace editing={screen === 'playbook'} onStart={onStart} onScreen={onScreen} />;
  }
}

function NoticeLine(): ReactElement {
  const notice = useNotice();
  return (
    <p className="notice" role="status">
      {/* The line stays, for only what changes in it is read out; its words are new each time, or the same said twice would not be. */}
      <span key={notice.number}>{notice.text}</span>
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
