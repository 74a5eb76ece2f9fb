import type { Refusal } from '../document/index.ts';

/** What a command can refuse. Nothing has changed then. */
export type CommandProblem =
  /** The thing to change is not in the playbook. */
  | {
      readonly kind: 'not-there';
      readonly what: 'front' | 'look' | 'role' | 'player' | 'call' | 'pressure' | 'coverage' | 'reason';
    }
  | { readonly kind: 'name-empty' }
  /** Two calls of one name could not be told apart on a sheet. */
  | { readonly kind: 'name-taken'; readonly name: string }
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
