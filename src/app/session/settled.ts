import type { AppState, AppStore } from '../../store/index.ts';

/** How long a hand that drags men must rest before all that follows from where they are is worked out, in milliseconds. */
const REST = 150;

/** How far that may fall behind a hand that does not rest, in milliseconds. */
const LATEST = 2000;

/** Does something later, unless it is called off. In milliseconds. */
export type Later = (act: () => void, after: number) => () => void;

/** The later of the browser. */
export const BROWSER_LATER: Later = (act, after) => {
  const timer = setTimeout(act, after);
  return () => clearTimeout(timer);
};

/**
 * The state as everything but the field follows it. Each frame of a drag moves men on the field and nothing else; here they
 * are moved once the hand rests, or every two seconds if it does not. Any other change, their being let go too, is here at once.
 */
export interface Settled {
  readonly get: () => AppState;
  readonly subscribe: (listener: () => void) => () => void;
}

/** Follows that store. */
export function createSettled(store: Pick<AppStore, 'get' | 'subscribe'>, later: Later): Settled {
  const listeners = new Set<() => void>();
  let settled = store.get();
  let rest: (() => void) | null = null;
  let latest: (() => void) | null = null;
  const settle = (): void => {
    rest?.();
    latest?.();
    [rest, latest] = [null, null];
    settled = store.get();
    for (const listener of listeners) listener();
  };
  store.subscribe((state, before) => {
    if (state.preview === null || !differsInPreviewOnly(state, before)) {
      settle();
      return;
    }
    rest?.();
    rest = later(settle, REST);
    latest ??= later(settle, LATEST);
  });
  return {
    get: () => settled,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

function differsInPreviewOnly(state: AppState, before: AppState): boolean {
  const rest = Object.values({ ...before, preview: null });
  return Object.values({ ...state, preview: null }).every((part, index) => part === rest[index]);
}
