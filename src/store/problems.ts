import type { Refusal } from '../document/index.ts';

/** What a change may be about. */
export type Part = 'front' | 'look' | 'role' | 'player' | 'call' | 'pressure' | 'coverage' | 'reason';

/** What a command can refuse. Nothing has changed then. */
export type CommandProblem =
  /** The thing to change is not in the playbook. */
  | { readonly kind: 'not-there'; readonly what: Part }
  | { readonly kind: 'name-empty' }
  /** Two of one name could not be told apart on a sheet. */
  | { readonly kind: 'name-taken'; readonly what: Part; readonly name: string }
  /** It cannot be deleted: these, by their names, cannot be without it. At least one. */
  | { readonly kind: 'in-use'; readonly by: readonly string[] }
  /** Another call checks to this one; `by` is its name. */
  | { readonly kind: 'checked-to'; readonly by: string }
  /** Nobody could tell later why the coach lives with it. */
  | { readonly kind: 'reason-short'; readonly least: number }
  /** What was suggested fits no longer: something has changed since, or it is so already. */
  | { readonly kind: 'no-longer' }
  /** A file of the changed playbook would not open again: a limit is passed, say. */
  | { readonly kind: 'not-savable'; readonly refusals: readonly Refusal[] }
  /** Another tab writes. */
  | { readonly kind: 'read-only' };
