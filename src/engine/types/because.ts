import type { GapLetter, Side, Zone } from '../vocabulary.ts';
import type { PlayerId, RoleId } from './ids.ts';
import type { Gap, Job, Who } from './job.ts';

/** One value inside a sentence. The engine keeps facts; words are made from them in one place, at the edge. */
export type Datum =
  | { readonly kind: 'role'; readonly role: RoleId }
  | { readonly kind: 'roles'; readonly roles: readonly RoleId[] }
  | { readonly kind: 'gap'; readonly gap: Gap }
  | { readonly kind: 'gaps'; readonly gaps: readonly Gap[] }
  | { readonly kind: 'letter'; readonly letter: GapLetter }
  | { readonly kind: 'side'; readonly side: Side }
  | { readonly kind: 'player'; readonly player: PlayerId }
  | { readonly kind: 'players'; readonly players: readonly PlayerId[] }
  | { readonly kind: 'job'; readonly job: Job }
  | { readonly kind: 'zone'; readonly zone: Zone; readonly side: Side | 'middle' }
  /** A man as a rule names him, found or not. */
  | { readonly kind: 'who'; readonly who: Who }
  | { readonly kind: 'pressure'; readonly which: 'first' | 'second' }
  | { readonly kind: 'number'; readonly value: number }
  /** A word of the trade, ready to print. */
  | { readonly kind: 'word'; readonly word: string };

/** The names between braces in a sentence template. */
export type Blanks<Template extends string> = Template extends `${string}{${infer Blank}}${infer Rest}`
  ? Blank | Blanks<Rest>
  : never;

/** The data a template needs: leaving one out is a compile error. */
export type DataFor<Template extends string> = { readonly [Blank in Blanks<Template>]: Datum };

/** A fact with the facts it follows from: a tree, the conclusion first. */
export interface Because {
  /** The sentence, with blanks. */
  readonly template: string;
  readonly data: Readonly<Record<string, Datum>>;
  readonly because: readonly Because[];
}
