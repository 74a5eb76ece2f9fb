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

/** An id nobody in the list has: the kind of thing and the first free number. The same list always gives the same one. */
export function freshId(list: readonly { readonly id: string }[], kind: string): string {
  const taken = new Set<string>(list.map(({ id }) => id));
  let number = list.length + 1;
  while (taken.has(`${kind}-${number}`)) number += 1;
  return `${kind}-${number}`;
}
