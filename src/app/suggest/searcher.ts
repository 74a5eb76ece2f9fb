import type { Asked, Told } from './messages.ts';

/** The part of a worker that is needed here. */
export interface Searcher {
  readonly postMessage: (message: Asked) => void;
  readonly addEventListener: (type: 'message', listener: (event: { readonly data: Told }) => void) => void;
  readonly terminate: () => void;
}

/** Starts a search of its own, away from the screen. The program for it is loaded only now. */
export function startSearcher(): Searcher {
  return new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
}
