import { ok, refused, type Result } from '../../base/index.ts';
import type { CommandProblem } from '../problems.ts';

/**
 * The list with one entry replaced, all others the very same objects (so that what was computed from them stays good);
 * refused with `missing` when nothing has that id.
 */
export function withEntry<Entry extends { readonly id: string }>(
  list: readonly Entry[],
  id: Entry['id'],
  change: (entry: Entry) => Result<Entry, CommandProblem>,
  missing: CommandProblem,
): Result<readonly Entry[], CommandProblem> {
  const entry = list.find((candidate) => candidate.id === id);
  if (entry === undefined) return refused(missing);
  const changed = change(entry);
  if (!changed.ok) return changed;
  return ok(list.map((candidate) => (candidate === entry ? changed.value : candidate)));
}
