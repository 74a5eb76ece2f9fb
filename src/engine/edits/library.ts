import type { Coverage } from '../types/index.ts';

/** What a suggestion may be made of besides the call itself: the shells of the playbook. */
export interface Library {
  readonly coverages: readonly Coverage[];
}
