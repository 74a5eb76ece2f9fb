import { ok, type Result } from '../../base/index.ts';
import type { Refusal } from '../refusal.ts';
import { VERSION } from '../schema/playbook.ts';
import { secondHalf } from './0001-second-half.ts';
import { installDays } from './0002-install-days.ts';
import type { Migration, RawPlaybook } from './migration.ts';

export type { Migration, RawPlaybook } from './migration.ts';

/** Every step since version 1, in order. */
export const MIGRATIONS: readonly Migration[] = Object.freeze([secondHalf, installDays]);

/** Brings a playbook from the version it was written in to `to`, step by step; a step that cannot refuses. */
export function migrate(
  playbook: RawPlaybook,
  from: number,
  steps: readonly Migration[] = MIGRATIONS,
  to: number = VERSION,
): Result<RawPlaybook, Refusal> {
  let current = playbook;
  for (let version = from; version < to; version += 1) {
    const step = steps.find((each) => each.from === version);
    // A hole in the list is a mistake in this program, not in the file.
    if (step === undefined) throw new Error(`No migration from version ${version}`);
    const next = step.up(current);
    if (!next.ok) return next;
    current = { ...next.value, version: version + 1 };
  }
  return ok(current);
}
