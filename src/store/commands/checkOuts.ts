import { ok, refused, type Result } from '../../base/index.ts';
import type { Playbook } from '../../document/index.ts';
import type { CallId, CheckOutAction, CheckOutRow } from '../../engine/index.ts';
import type { CommandProblem } from '../problems.ts';

/**
 * The check-out table of a kept call, whole: what it becomes against each class of formations, a class at most once.
 * Without rows it has none. A call does not check to itself; what another one checks to is run as drawn, so longer circles
 * cannot be.
 */
export function setCheckOuts(
  playbook: Playbook,
  { call, rows }: { readonly call: CallId; readonly rows: readonly CheckOutRow[] },
): Result<Playbook, CommandProblem> {
  if (!playbook.calls.some(({ id }) => id === call)) return refused({ kind: 'not-there', what: 'call' });
  if (new Set(rows.map(({ formation }) => formation)).size < rows.length) return refused({ kind: 'twice' });
  const problem = rows.map(({ action }) => wrongWith(playbook, call, action)).find((each) => each !== null);
  if (problem !== undefined) return refused(problem);
  const { checkOuts } = playbook;
  const table = { call, rows };
  if (rows.length === 0) return ok({ ...playbook, checkOuts: checkOuts.filter((each) => each.call !== call) });
  return ok({
    ...playbook,
    checkOuts: checkOuts.some((each) => each.call === call)
      ? checkOuts.map((each) => (each.call === call ? table : each))
      : [...checkOuts, table],
  });
}

function wrongWith({ calls, coverages }: Playbook, from: CallId, action: CheckOutAction): CommandProblem | null {
  if (action.kind === 'coverage' && !coverages.some(({ id }) => id === action.coverage))
    return { kind: 'not-there', what: 'coverage' };
  if (action.kind !== 'check-to') return null;
  if (action.call === from) return { kind: 'checks-to-itself' };
  return calls.some(({ id }) => id === action.call) ? null : { kind: 'not-there', what: 'call' };
}
