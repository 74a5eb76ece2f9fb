import { temporal } from 'zundo';
import { createStore } from 'zustand/vanilla';
import { refused, type Result } from '../base/index.ts';
import { checkPlaybook, type Playbook } from '../document/index.ts';
import type { Edit, LookId } from '../engine/index.ts';
import { firstBoard, fitBoard, followCall } from './board.ts';
import type { CommandProblem } from './problems.ts';
import type { AppState, Board, Change, Preview, Step, Steps, View } from './types.ts';

/** How far back undo goes. Steps share everything they did not change, so they are cheap. */
const STEPS_KEPT = 500;

/** A change of the playbook, and what it is called in "Undone: …". */
export interface Commit {
  readonly label: string;
  /** The look it is made in; null when it has none. */
  readonly look: LookId | null;
  /** Changes with the same gesture, one after the other, are one step of the history. Null: a step of its own. */
  readonly gesture: string | null;
  readonly change: (playbook: Playbook) => Result<Playbook, CommandProblem>;
}

/** The one place that holds the state of the app. Everything that changes it is here; React is not. */
export interface AppStore {
  readonly get: () => AppState;
  readonly subscribe: (listener: (state: AppState, before: AppState) => void) => () => void;
  /** Changes the playbook, as one step that can be undone. A refusal changes nothing. */
  readonly commit: (commit: Commit) => Result<Playbook, CommandProblem>;
  /** Changes made while `act` runs are of that gesture, unless they say one of their own. */
  readonly inGesture: (gesture: string, act: () => void) => void;
  /** The next change starts a step of its own, whatever its gesture. */
  readonly endGesture: () => void;
  /** Goes one step back or forth; what was undone or done again, or null when there is nothing. */
  readonly undo: () => Change | null;
  readonly redo: () => Change | null;
  readonly steps: () => { readonly undo: number; readonly redo: number };
  /** The whole way back and forth, to be kept beside the playbook. */
  readonly history: () => Steps;
  /**
   * Puts steps of an earlier visit below those of this one. What could then be done again is only taken up while nothing
   * has been changed since the playbook was opened.
   */
  readonly recall: (steps: Steps) => void;
  readonly setBoard: (patch: Partial<Board>) => void;
  readonly setView: (patch: Partial<View>) => void;
  readonly setPreview: (preview: Preview | null) => void;
  /** Shows on the field what a suggestion would do; null: the call as it is. */
  readonly setTrial: (trial: Edit | null) => void;
  /** Puts another playbook on the board, as a step that can be undone. */
  readonly open: (playbook: Playbook, label: string) => Result<Playbook, CommandProblem>;
  /** Starts again with what another tab has kept; there is nothing to undo then. */
  readonly startOver: (playbook: Playbook, readOnly: boolean) => void;
}

const FIRST_VIEW: View = {
  turned: false,
  zoom: 'players',
  selection: [],
  snapping: true,
  several: false,
  clip: [],
  lit: null,
  overlay: null,
  answers: false,
  chosen: { pressures: null, coverages: null, roles: null },
  picking: null,
  opponent: null,
};

/** A store that opens on that playbook. */
export function createAppStore(playbook: Playbook, options: { readonly readOnly: boolean }): AppStore {
  const store = createHistoryStore(startState(playbook, options.readOnly));
  const get = (): AppState => store.getState();
  const history = () => store.temporal.getState();

  let running: string | null = null;

  const commit = ({ label, look, gesture: own, change }: Commit): Result<Playbook, CommandProblem> => {
    const gesture = own ?? running;
    const before = get();
    if (before.readOnly) return refused({ kind: 'read-only' });
    const changed = change(before.playbook);
    if (!changed.ok) return changed;
    const savable = checkPlaybook(changed.value);
    if (!savable.ok) return refused({ kind: 'not-savable', refusals: savable.problem });
    const joins = gesture !== null && gesture === before.gesture;
    // More of the same gesture: the step that is already in the history leads from before the gesture to here.
    if (joins) history().pause();
    store.setState({
      playbook: changed.value,
      change: { label, look },
      gesture,
      preview: null,
      trial: null,
      board: fitBoard(changed.value, followCall(before.board, before.playbook, changed.value)),
    });
    if (joins) history().resume();
    return changed;
  };

  const travel = (way: 'undo' | 'redo'): Change | null => {
    const { pastStates, futureStates } = history();
    const before = get();
    if (before.readOnly || (way === 'undo' ? pastStates : futureStates).length === 0) return null;
    history()[way]();
    const after = get();
    const change = way === 'undo' ? before.change : after.change;
    // Show where it happened, and nothing that is no longer there.
    const look = change?.look ?? after.board.look;
    const board = followCall({ ...after.board, look }, before.playbook, after.playbook);
    store.setState({ gesture: null, preview: null, trial: null, board: fitBoard(after.playbook, board) });
    return change;
  };

  return {
    get,
    subscribe: (listener) => store.subscribe(listener),
    commit,
    inGesture: (gesture, act) => {
      const outer = running;
      running = gesture;
      try {
        act();
      } finally {
        running = outer;
      }
    },
    endGesture: () => {
      if (get().gesture !== null) store.setState({ gesture: null });
    },
    undo: () => travel('undo'),
    redo: () => travel('redo'),
    steps: () => ({ undo: history().pastStates.length, redo: history().futureStates.length }),
    history: () => ({
      past: history().pastStates.flatMap(stepOf),
      change: get().change,
      future: history().futureStates.flatMap(stepOf),
    }),
    recall: ({ past, change, future }) => {
      const { pastStates, futureStates } = history();
      const [opened, ...since] = pastStates;
      const untouched = opened === undefined && futureStates.length === 0;
      const visit = opened === undefined ? [] : [{ ...opened, change }, ...since];
      store.temporal.setState({
        pastStates: [...past, ...visit].slice(-STEPS_KEPT),
        futureStates: untouched ? [...future] : futureStates,
      });
      // Nothing else changes, but those who show how many steps there are must look again.
      store.setState(untouched ? { change } : {});
    },
    setBoard: (patch) =>
      store.setState(({ playbook: now, board }) => ({ board: fitBoard(now, { ...board, ...patch }), trial: null })),
    setView: (patch) => store.setState(({ view }) => ({ view: { ...view, ...patch } })),
    setPreview: (preview) => {
      if (!get().readOnly && get().preview !== preview) store.setState({ preview });
    },
    setTrial: (trial) => {
      if (get().trial !== trial) store.setState({ trial });
    },
    open: (next, label) => {
      const opened = commit({ label, look: null, gesture: null, change: () => ({ ok: true, value: next }) });
      // How he looks at the field is the coach's; whom he had picked is not in this playbook.
      const { turned, zoom, snapping } = get().view;
      if (opened.ok) store.setState({ board: firstBoard(next), view: { ...FIRST_VIEW, turned, zoom, snapping } });
      return opened;
    },
    startOver: (next, readOnly) => {
      history().pause();
      const { board, view } = get();
      store.setState({ ...startState(next, readOnly), board: fitBoard(next, board), view });
      history().clear();
      history().resume();
    },
  };
}

/** zundo's own type lets a step lack either part; the ones written here never do. */
function stepOf({ playbook, change }: Partial<Step>): readonly Step[] {
  return playbook === undefined || change === undefined ? [] : [{ playbook, change }];
}

function startState(playbook: Playbook, readOnly: boolean): AppState {
  return {
    playbook,
    change: null,
    board: firstBoard(playbook),
    view: FIRST_VIEW,
    preview: null,
    trial: null,
    gesture: null,
    readOnly,
  };
}

/** Undo and redo reach the playbook and what its last step was called, nothing else. */
function createHistoryStore(start: AppState) {
  return createStore<AppState>()(
    temporal(() => start, {
      partialize: ({ playbook, change }) => ({ playbook, change }),
      equality: (before, after) => before.playbook === after.playbook,
      limit: STEPS_KEPT,
    }),
  );
}
