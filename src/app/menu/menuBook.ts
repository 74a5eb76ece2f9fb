import type { Playbook } from '../../document/index.ts';
import {
  countCases,
  gridOf,
  unanswered,
  type Answers,
  type Grid,
  type GridKind,
  type Summary,
} from '../../menu/index.ts';
import type { GridWorker, Told } from './messages.ts';

/** A grid and what is known of it. A new object whenever more is known. */
export interface MenuState {
  readonly grid: Grid;
  /** The same object while one question is answered: it fills. */
  readonly answers: Answers;
  readonly kind: GridKind;
  readonly playbook: Playbook;
  /** Cases answered so far, of how many. */
  readonly done: number;
  readonly total: number;
  readonly progress:
    | { readonly kind: 'working' }
    | { readonly kind: 'done'; readonly worked: number }
    | { readonly kind: 'stopped' }
    | { readonly kind: 'failed'; readonly reason: string };
}

/** Asks for one grid at a time, and gathers what comes in. */
export interface MenuBook {
  /** Asks for that grid of that version, unless it is the one at hand. */
  readonly ask: (playbook: Playbook, kind: GridKind) => void;
  /** Tells which rows and columns of the grid are in sight, so that they are answered first. */
  readonly see: (rows: readonly number[], columns: readonly number[]) => void;
  readonly stop: () => void;
  /** Asks again for what was stopped; what was answered is known. */
  readonly goOn: () => void;
  /** Null: nothing was asked yet. */
  readonly state: () => MenuState | null;
  readonly subscribe: (listener: () => void) => () => void;
}

/** A menu book over a worker that is only started when something is asked. */
export function createMenuBook(start: () => GridWorker): MenuBook {
  const listeners = new Set<() => void>();
  const summaries: Summary[] = [];
  let worker: GridWorker | null = null;
  let number = 0;
  let state: MenuState | null = null;

  const set = (next: MenuState): void => {
    state = next;
    for (const listener of listeners) listener();
  };

  const hear = (told: Told): void => {
    if (told.kind === 'answers') summaries.push(...told.summaries);
    // What was dropped may still say something; its summaries are kept, for nobody tells them again.
    if (state === null || told.number !== number) return;
    switch (told.kind) {
      case 'answers':
        for (const [index, at] of told.at.entries()) state.answers.numbers[at] = told.answers[index] ?? 0;
        set({ ...state, done: state.done + told.at.length });
        break;
      case 'done':
        set({ ...state, progress: { kind: 'done', worked: told.worked } });
        break;
      case 'failed':
        set({ ...state, progress: { kind: 'failed', reason: told.reason } });
        break;
    }
  };

  const started = (): GridWorker => {
    if (worker === null) {
      worker = start();
      worker.addEventListener('message', ({ data }) => hear(data));
    }
    return worker;
  };

  const request = (playbook: Playbook, kind: GridKind): void => {
    const grid = gridOf(playbook, kind);
    const numbers = unanswered(grid);
    number += 1;
    set({
      grid,
      kind,
      playbook,
      answers: { summaries, numbers },
      done: 0,
      total: countCases(numbers),
      progress: { kind: 'working' },
    });
    started().postMessage({ kind: 'grid', number, playbook, grid: kind });
  };

  return {
    ask: (playbook, kind) => {
      const same = state !== null && state.playbook === playbook && sameKind(state.kind, kind);
      if (!same) request(playbook, kind);
    },
    see: (rows, columns) => {
      if (state?.progress.kind === 'working') started().postMessage({ kind: 'sight', number, rows, columns });
    },
    stop: () => {
      if (state?.progress.kind !== 'working') return;
      number += 1;
      started().postMessage({ kind: 'cancel' });
      set({ ...state, progress: { kind: 'stopped' } });
    },
    goOn: () => {
      if (state?.progress.kind === 'stopped') request(state.playbook, state.kind);
    },
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** Whether the two ask for the same grid. */
export function sameKind(a: GridKind, b: GridKind): boolean {
  if (a.kind === 'pairs') return b.kind === 'pairs' && a.front === b.front && a.turn === b.turn;
  if (a.kind === 'partners') return b.kind === 'partners' && a.front === b.front && a.first === b.first;
  return b.kind === 'calls';
}
