import type { Result } from '../../base/index.ts';
import type { Refusal } from '../refusal.ts';

/** A playbook of some version, before the schema has judged it. */
export type RawPlaybook = Readonly<Record<string, unknown>>;

/** One step between two versions. A released step is never edited: files of its version are out there. */
export interface Migration {
  /** It reads this version and writes the next. */
  readonly from: number;
  /** What changed, in a few words. */
  readonly name: string;
  readonly up: (playbook: RawPlaybook) => Result<RawPlaybook, Refusal>;
}
