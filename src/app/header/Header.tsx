import { useRef, type ReactElement } from 'react';
import type { Files } from '../files/useFiles.ts';
import { useApp, useSession, useTravel } from '../session/session.ts';
import { PlaybookName } from './PlaybookName.tsx';
import { SavedState } from './SavedState.tsx';
import { ThemeSelect } from '../theme/ThemeSelect.tsx';
import { SCREENS, type Screen } from './screens.ts';

interface Props {
  readonly files: Files;
  readonly screen: Screen;
  readonly onScreen: (screen: Screen) => void;
  readonly onPrint: () => void;
  readonly onMore: () => void;
}

/** The name of the app and of the playbook, and what concerns the playbook as a whole. */
export function Header({ files, screen, onScreen, onPrint, onMore }: Props): ReactElement {
  const { store } = useSession();
  const readOnly = useApp((state) => state.readOnly);
  const { undo, redo } = useTravel();
  const undoable = useApp(() => store.steps().undo > 0);
  const redoable = useApp(() => store.steps().redo > 0);
  const input = useRef<HTMLInputElement>(null);
  return (
    <header className="app-header">
      <h1>Gapwright</h1>
      <nav className="screens" aria-label="Screens">
        {SCREENS.map(({ id, name }) => (
          <button key={id} type="button" aria-current={id === screen ? 'page' : undefined} onClick={() => onScreen(id)}>
            {name}
          </button>
        ))}
      </nav>
      <PlaybookName />
      <SavedState onSave={files.save} />
      <div className="header-buttons">
        <ThemeSelect />
        <button type="button" disabled={readOnly || !undoable} onClick={undo}>
          Undo
        </button>
        <button type="button" disabled={readOnly || !redoable} onClick={redo}>
          Redo
        </button>
        <button type="button" disabled={readOnly} onClick={() => input.current?.click()}>
          Open file…
        </button>
        <input
          ref={input}
          type="file"
          className="unseen"
          tabIndex={-1}
          aria-hidden="true"
          accept=".json,application/json"
          onChange={(event) => {
            const file = event.target.files?.[0];
            // The same file, mended and chosen again, must count as a choice.
            event.target.value = '';
            if (file !== undefined) files.choose(file);
          }}
        />
        <button type="button" onClick={files.save}>
          Save file
        </button>
        <button type="button" onClick={onMore}>
          More…
        </button>
        <button type="button" className="is-main" onClick={onPrint}>
          Print…
        </button>
      </div>
    </header>
  );
}
