import type { Refusal } from '../document/index.ts';
import type { OffenceKind } from '../engine/index.ts';

/** What a change may be about. */
export type Part = 'front' | 'look' | 'role' | 'player' | 'call' | 'pressure' | 'coverage' | 'reason';

/** What a command can refuse. Nothing has changed then. */
export type CommandProblem =
  /** The thing to change is not in the playbook. */
  | { readonly kind: 'not-there'; readonly what: Part }
  | { readonly kind: 'name-empty' }
  /** A look needs one man of this kind: give it to another man instead. */
  | { readonly kind: 'one-needed'; readonly what: OffenceKind }
  /** The list has it already. */
  | { readonly kind: 'twice' }
  /** Two of one name could not be told apart on a sheet. */
  | { readonly kind: 'name-taken'; readonly what: Part; readonly name: string }
  /** It cannot be deleted: these, by their names, cannot be without it. At least one. */
  | { readonly kind: 'in-use'; readonly by: readonly string[] }
  /** Another call checks to this one; `by` is its name. */
  | { readonly kind: 'checked-to'; readonly by: string }
  /** A call that checks to itself checks to nothing. */
  | { readonly kind: 'checks-to-itself' }
  /** Nobody could tell later why the coach lives with it. */
  | { readonly kind: 'reason-short'; readonly least: number }
  /** What was suggested fits no longer: something has changed since, or it is so already. */
  | { readonly kind: 'no-longer' }
  /** The call side needs at least one step. */
  | { readonly kind: 'last-step' }
  /** A file of the changed playbook would not open again: a limit is passed, say. */
  | { readonly kind: 'not-savable'; readonly refusals: readonly Refusal[] }
  /** A front has eleven men. */
  | { readonly kind: 'not-eleven'; readonly found: number }
  /** The man who is to come in is in the front already. */
  | { readonly kind: 'plays-already' }
  /** The last rule, step or case of a man cannot be taken away. */
  | { readonly kind: 'last-one'; readonly what: 'rule' | 'case' }
  | { readonly kind: 'two-gaps-needed' }
  /** A man without a side stands somewhere else than over the ball, which no rule can say. */
  | { readonly kind: 'not-over-ball' }
  /** The letter of a man is one or two characters. */
  | { readonly kind: 'letter-length' }
  /** These, by their names, tell a group in which nobody would be left. At least one. */
  | { readonly kind: 'group-told'; readonly by: readonly string[] }
  /** The role of that name would not know its side in some look. */
  | { readonly kind: 'side-undecided'; readonly whose: string }
  /** Following the roles his side goes by, one comes back to him. */
  | { readonly kind: 'side-circle'; readonly whose: string }
  /** Another tab writes. */
  | { readonly kind: 'read-only' };
