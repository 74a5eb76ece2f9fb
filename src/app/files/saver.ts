import type { Keeper } from './keep.ts';

/** Whether the present playbook is kept in this browser. `saved` is only said after the browser has said so. */
export type Saved =
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved'; readonly at: Date }
  | { readonly kind: 'failed'; readonly reason: string }
  /** Nothing is kept here, on purpose: another tab writes, or there is no storage. */
  | { readonly kind: 'off'; readonly reason: string };

/** Keeps every change, one write at a time; changes made during a write are kept together by the next one. */
export interface Saver {
  readonly status: () => Saved;
  readonly subscribe: (listener: () => void) => () => void;
  /** There is something new to keep. `text` is only asked for when it is written. */
  readonly changed: (text: () => string) => void;
  /** Stops keeping. What is being written at this moment still is. */
  readonly turnOff: (reason: string) => void;
  /** Keeps again, and at once. */
  readonly turnOn: (text: () => string) => void;
}

/** A saver over that keeper. `now` is the clock of the app. */
export function createSaver(keeper: Keeper, now: () => Date): Saver {
  const state: { status: Saved; waiting: (() => string) | null; writing: boolean } = {
    status: { kind: 'saving' },
    waiting: null,
    writing: false,
  };
  const listeners = new Set<() => void>();

  const tell = (status: Saved): void => {
    state.status = status;
    for (const listener of listeners) listener();
  };

  const takeWaiting = (): (() => string) | null => {
    const text = state.waiting;
    state.waiting = null;
    return text;
  };

  const writeAll = async (): Promise<void> => {
    state.writing = true;
    for (let text = takeWaiting(); text !== null; text = takeWaiting()) {
      const result = await keeper.keep(text());
      // Something newer waits, or keeping was switched off meanwhile: this answer is no longer the news.
      if (state.waiting !== null || state.status.kind === 'off') continue;
      tell(result.ok ? { kind: 'saved', at: now() } : { kind: 'failed', reason: result.problem.reason });
    }
    state.writing = false;
  };

  const queue = (text: () => string): void => {
    state.waiting = text;
    tell({ kind: 'saving' });
    if (!state.writing) void writeAll();
  };

  return {
    status: () => state.status,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    changed: (text) => {
      if (state.status.kind !== 'off') queue(text);
    },
    turnOff: (reason) => {
      state.waiting = null;
      tell({ kind: 'off', reason });
    },
    turnOn: queue,
  };
}
