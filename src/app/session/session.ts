import { createContext, useCallback, useContext, useSyncExternalStore } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { Analyst, AppState, AppStore, Commit } from '../../store/index.ts';
import type { Kept } from '../files/keep.ts';
import type { Saved, Saver } from '../files/saver.ts';
import type { MenuBook } from '../menu/menuBook.ts';
import type { Suggester } from '../suggest/suggester.ts';
import type { Notice, Notices } from './notices.ts';
import { problemText } from './problemText.ts';
import type { Settled } from './settled.ts';

/** Remembers which playbook a file holds. */
export interface InFile {
  readonly is: (playbook: Playbook) => boolean;
  readonly mark: (playbook: Playbook) => void;
}

/** Everything that lives as long as the tab does. */
export interface Session {
  readonly store: AppStore;
  /** The state of the store, without every frame of a drag. */
  readonly settled: Settled;
  readonly analyst: Analyst;
  readonly suggester: Suggester;
  readonly menu: MenuBook;
  readonly saver: Saver<Kept>;
  readonly notices: Notices;
  /** The playbook as it last went to or came from a file; anything else is in no file. */
  readonly inFile: InFile;
  /** True: nothing was kept here, so whoever opened the page sees the demo, perhaps for the first time. */
  readonly firstVisit: boolean;
  /** The clock, which only the app may read. */
  readonly now: () => Date;
}

/** The session all components share. */
export const SessionContext = createContext<Session | null>(null);

/** The session; a component outside of one is a mistake in the program. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (session === null) throw new Error('There is no session here');
  return session;
}

/** A part of the state, followed. `select` must give the same object for the same state. */
export function useApp<Part>(select: (state: AppState) => Part): Part {
  const { store } = useSession();
  return useSyncExternalStore(store.subscribe, () => select(store.get()));
}

/** The whole state, followed; not through every frame of a drag. */
export function useSettledState(): AppState {
  const { settled } = useSession();
  return useSyncExternalStore(settled.subscribe, settled.get);
}

/** Whether the playbook is kept in this browser, followed. */
export function useSaved(): Saved {
  const { saver } = useSession();
  return useSyncExternalStore(saver.subscribe, saver.status);
}

/** The last notice, followed. */
export function useNotice(): Notice {
  const { notices } = useSession();
  return useSyncExternalStore(notices.subscribe, notices.last);
}

/** Makes a change and says so when it is refused; true when it was made. */
export function useCommit(): (commit: Commit) => boolean {
  const { store, notices } = useSession();
  return useCallback(
    (commit) => {
      const result = store.commit(commit);
      if (!result.ok) notices.say(problemText(result.problem));
      return result.ok;
    },
    [store, notices],
  );
}

/** Undo and redo, which say what they did. */
export function useTravel(): { readonly undo: () => void; readonly redo: () => void } {
  const { store, notices } = useSession();
  const undo = useCallback(() => {
    const change = store.undo();
    notices.say(change === null ? 'Nothing to undo' : `Undone: ${change.label}`);
  }, [store, notices]);
  const redo = useCallback(() => {
    const change = store.redo();
    notices.say(change === null ? 'Nothing to redo' : `Done again: ${change.label}`);
  }, [store, notices]);
  return { undo, redo };
}
