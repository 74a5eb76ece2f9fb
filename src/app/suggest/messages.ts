import type { Library, Mending, Setup, Suggestions } from '../../engine/index.ts';

/** What the searcher is asked. */
export type Asked =
  /** What would mend each finding of one look. The number grows with every question; answers carry it. */
  | { readonly kind: 'look'; readonly number: number; readonly setup: Setup; readonly library: Library }
  /** What would mend one call in all these looks. */
  | { readonly kind: 'call'; readonly number: number; readonly setups: readonly Setup[]; readonly library: Library };

/** What it answers. */
export type Told =
  /** For one finding, by its place in the analysis. */
  | { readonly kind: 'found'; readonly number: number; readonly index: number; readonly suggestions: Suggestions }
  | { readonly kind: 'mended'; readonly number: number; readonly mending: Mending }
  /** The program has a fault. */
  | { readonly kind: 'failed'; readonly number: number; readonly reason: string };

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
