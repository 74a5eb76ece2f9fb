import type { Result } from '../../base/index.ts';
import type { KeepProblem } from './keep.ts';

/** Whether the present playbook is kept in this browser. `saved` is only said after the browser has said so. */
export type Saved =
  | { readonly kind: 'saving' }
  | { readonly kind: 'saved'; readonly at: Date }
  | { readonly kind: 'failed'; readonly reason: string }
  /** Nothing is kept here, on purpose: another tab writes, or there is no storage. */
  | { readonly kind: 'off'; readonly reason: string };

/** Keeps every change, one write at a time; changes made during a write are kept together by the next one. */
export interface Saver<Kept> {
  readonly status: () => Saved;
  readonly subscribe: (listener: () => void) => () => void;
  /** There is something new to keep. It is only asked for when it is written. */
  readonly changed: (kept: () => Kept) => void;
  /** Stops keeping. What is being written at this moment still is. */
  readonly turnOff: (reason: string) => void;
  /** Keeps again, and at once. */
  readonly turnOn: (kept: () => Kept) => void;
}

/** A saver that keeps by that door. `now` is the clock of the app. */
export function createSaver<Kept>(
  keeper: { readonly keep: (kept: Kept) => Promise<Result<null, KeepProblem>> },
  now: () => Date,
): Saver<Kept> {
  const state: { status: Saved; waiting: (() => Kept) | null; writing: boolean } = {
    status: { kind: 'saving' },
    waiting: null,
    writing: false,
  };
  const listeners = new Set<() => void>();

  const tell = (status: Saved): void => {
    state.status = status;
    for (const listener of listeners) listener();
  };

  const takeWaiting = (): (() => Kept) | null => {
    const kept = state.waiting;
    state.waiting = null;
    return kept;
  };

  const writeAll = async (): Promise<void> => {
    state.writing = true;
    for (let kept = takeWaiting(); kept !== null; kept = takeWaiting()) {
      const result = await keeper.keep(kept());
      // Something newer waits, or keeping was switched off meanwhile: this answer is no longer the news.
      if (state.waiting !== null || state.status.kind === 'off') continue;
      tell(result.ok ? { kind: 'saved', at: now() } : { kind: 'failed', reason: result.problem.reason });
    }
    state.writing = false;
  };

  const queue = (kept: () => Kept): void => {
    state.waiting = kept;
    tell({ kind: 'saving' });
    if (!state.writing) void writeAll();
  };

  return {
    status: () => state.status,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    changed: (kept) => {
      if (state.status.kind !== 'off') queue(kept);
    },
    turnOff: (reason) => {
      state.waiting = null;
      tell({ kind: 'off', reason });
    },
    turnOn: queue,
  };
}
