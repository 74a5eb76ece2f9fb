import { saveDocument } from '../../document/index.ts';
import type { AppStore } from '../../store/index.ts';
import type { Kept } from './keep.ts';
import { readSteps, stepsToKeep } from './steps.ts';

/** What is kept of a store, and how its steps of an earlier visit come back. */
export interface Keeping {
  readonly kept: () => Kept;
  /** Takes up kept steps, when the page has nothing better to do; until then they stay as they were written. */
  readonly recall: (steps: unknown) => Promise<void>;
}

/** The keeping of that store. `idle` resolves when there is time for a step. */
export function createKeeping(store: AppStore, idle: () => Promise<void>): Keeping {
  let unread: { readonly steps: unknown } | null = null;
  return {
    kept: () => {
      const { playbook } = store.get();
      return {
        text: saveDocument(playbook),
        steps: unread === null ? stepsToKeep(playbook, store.history()) : unread.steps,
      };
    },
    recall: async (steps) => {
      unread = { steps };
      const read = await readSteps(steps, store.get().playbook, idle);
      if (read !== null) store.recall(read);
      unread = null;
    },
  };
}

/** Resolves when the browser has time to spare. */
export function browserIdle(): Promise<void> {
  return new Promise((resolve) => {
    // Missing in some browsers, whatever the type says.
    if ('requestIdleCallback' in window) window.requestIdleCallback(() => resolve());
    else setTimeout(resolve);
  });
}
