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
