import type { CallId, Gap, LookId, Place, PlayerId, RoleId, Side, Zone } from '../engine/index.ts';

/** The two columns of a job a player can be asked for. */
export const ASKED = ['run', 'pass'] as const;
export type Asked = (typeof ASKED)[number];

/** Something on the field a player can point at as his answer. */
export type Spotted =
  | { readonly kind: 'gap'; readonly gap: Gap }
  | { readonly kind: 'zone'; readonly zone: Zone; readonly side: Side | 'middle' }
  | { readonly kind: 'receiver'; readonly player: PlayerId }
  /** The passer: he rushes, contains or spies. */
  | { readonly kind: 'passer' };

/** One question: what does this man have, in this call, against this look, with the ball there? */
export interface Question {
  readonly call: CallId;
  readonly look: LookId;
  readonly spot: Place;
  readonly role: RoleId;
  readonly asked: Asked;
}
