import type { Analysis, CallId } from '../engine/index.ts';
import type { Report } from './types.ts';

/** One call in one look at one ball spot, worked through and in words: what the terminal and the JSON report are made of. */
export interface ReportEntry {
  readonly call: { readonly id: CallId; readonly name: string };
  readonly analysis: Analysis;
  /** Made from this analysis by `buildReport`. */
  readonly report: Report;
}
