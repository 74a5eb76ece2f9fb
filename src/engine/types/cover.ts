import type { Side, Zone } from '../vocabulary.ts';
import type { Because } from './because.ts';
import type { PlayerId, RoleId } from './ids.ts';

/** A zone the shell needs in this look, and who drops to it: told to, or filled in because nobody was. Null: nobody. */
export interface FilledZone {
  readonly zone: Zone;
  readonly side: Side | 'middle';
  readonly by: RoleId | null;
  readonly how: 'told' | 'filled' | null;
  readonly because: Because;
  /** For an empty zone, the set that proves it: these zones can only be reached by these men. Null for a filled one. */
  readonly proof: { readonly zones: number; readonly reachable: readonly RoleId[] } | null;
}

/** Who answers an eligible receiver against the pass. */
export interface Answer {
  readonly player: PlayerId;
  /** "number 2 on the left", or the back. */
  readonly as: { readonly kind: 'number'; readonly side: Side; readonly number: number } | { readonly kind: 'back' };
  readonly by: RoleId | null;
  /** Told man to man, matched out of a zone, or a rusher who leaves with the back. Null: nobody. */
  readonly how: 'man' | 'zone' | 'peel' | null;
  readonly because: Because;
  /** For an unanswered receiver, the set that proves it. Null for an answered one. */
  readonly proof: { readonly players: readonly PlayerId[]; readonly reachable: readonly RoleId[] } | null;
}

/** How many do what against the pass. Together they are always eleven. */
export interface PassCount {
  readonly rush: number;
  readonly under: number;
  readonly deep: number;
  readonly man: number;
  /** A spy, and anybody without a pass job. */
  readonly free: number;
}
