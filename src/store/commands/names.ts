import { ok, refused, type Result } from '../../base/index.ts';
import type { CommandProblem } from '../problems.ts';

/** A name as it is kept: no blanks around it, and not empty. */
export function keptName(name: string): Result<string, CommandProblem> {
  const kept = name.trim();
  return kept === '' ? refused({ kind: 'name-empty' }) : ok(kept);
}
