import type { Playbook } from '../../document/index.ts';
import type { GridKind, Summary } from '../../menu/index.ts';

/** What the menu's worker is asked. The number grows with every question; answers carry it. */
export type Asked =
  /** The whole grid of this version of the playbook; what was asked before is dropped. */
  | { readonly kind: 'grid'; readonly number: number; readonly playbook: Playbook; readonly grid: GridKind }
  /** These rows and columns of the grid that is being answered are in sight now. */
  | {
      readonly kind: 'sight';
      readonly number: number;
      readonly rows: readonly number[];
      readonly columns: readonly number[];
    }
  /** Drop what was asked. */
  | { readonly kind: 'cancel'; readonly number: number };

/** What it answers, as it works. */
export type Told =
  /** The answers to the cases `at`, by number of summary; and the summaries that no earlier message has brought. */
  | {
      readonly kind: 'answers';
      readonly number: number;
      readonly at: Int32Array;
      readonly answers: Int32Array;
      readonly summaries: readonly Summary[];
    }
  /** Everything is answered; `worked` of the cases had to be worked out, the others were known. */
  | { readonly kind: 'done'; readonly number: number; readonly worked: number }
  /** The program has a fault. */
  | { readonly kind: 'failed'; readonly number: number; readonly reason: string };

/** The part of a worker that is needed here. */
export interface GridWorker {
  readonly postMessage: (message: Asked) => void;
  readonly addEventListener: (type: 'message', listener: (event: { readonly data: Told }) => void) => void;
}
