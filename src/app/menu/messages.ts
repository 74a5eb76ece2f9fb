import type { Playbook } from '../../document/index.ts';
import type { LookId } from '../../engine/index.ts';
import type { GridKind, Summary } from '../../menu/index.ts';

/** What whoever answers the menu is asked. The number grows with every question; answers carry it. */
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
  | { readonly kind: 'cancel' };

/** What one of several workers is asked: of a grid only the cases in its own looks, the others answer the rest. */
export type ShareAsked =
  | Exclude<Asked, { readonly kind: 'grid' }>
  | (Extract<Asked, { readonly kind: 'grid' }> & { readonly looks: readonly LookId[] });

/** What is answered, as the work goes on. */
export type Told =
  /** The answers to the cases `at`, by number of summary; and the summaries that no earlier message has brought. */
  | {
      readonly kind: 'answers';
      readonly number: number;
      readonly at: Int32Array;
      readonly answers: Int32Array;
      readonly summaries: readonly Summary[];
    }
  /** Everything that was asked is answered; `worked` of the cases had to be worked out, the others were known. */
  | { readonly kind: 'done'; readonly number: number; readonly worked: number }
  /** The program has a fault. */
  | { readonly kind: 'failed'; readonly number: number; readonly reason: string };

/** Who answers grids: the part of a worker that is needed here. */
export interface GridWorker<Question = Asked> {
  readonly postMessage: (message: Question) => void;
  readonly addEventListener: (type: 'message', listener: (event: { readonly data: Told }) => void) => void;
}
