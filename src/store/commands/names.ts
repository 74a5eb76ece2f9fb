import { ok, refused, type Result } from '../../base/index.ts';
import type { CommandProblem, Part } from '../problems.ts';

/** A name as it is kept: no blanks around it, and not empty. */
export function keptName(name: string): Result<string, CommandProblem> {
  const kept = name.trim();
  return kept === '' ? refused({ kind: 'name-empty' }) : ok(kept);
}

/** A name as it is kept, which nothing else of the list has; `own` may have it already. */
export function freeName(
  list: readonly { readonly id: string; readonly name: string }[],
  name: string,
  own: string | null,
  what: Part,
): Result<string, CommandProblem> {
  const kept = keptName(name);
  if (!kept.ok) return kept;
  const taken = list.some((entry) => entry.id !== own && entry.name === kept.value);
  return taken ? refused({ kind: 'name-taken', what, name: kept.value }) : kept;
}

/** One or two letters, as drawn on the board. */
export function keptLetter(text: string): Result<string, CommandProblem> {
  const kept = text.trim();
  const { length } = Array.from(kept);
  return length === 1 || length === 2 ? ok(kept) : refused({ kind: 'letter-length' });
}
