import type { RoleId } from '../../engine/index.ts';
import type { Picking, PickPlace } from '../../store/index.ts';

/** What a pointer on the field, or a list beside it, says while a job is picked. */
export type PickEvent =
  | { readonly kind: 'man'; readonly role: RoleId }
  | { readonly kind: 'place'; readonly place: PickPlace }
  /** Escape, or "back": one step back, and from the first one out. */
  | { readonly kind: 'back' };

/**
 * Picking a job on the field: first a man, then a place. It changes nothing itself; what is picked is confirmed in words. A
 * click on another man starts with him; a place before a man says nothing. Null: picking is over.
 */
export function pickStep(picking: Picking, event: PickEvent): Picking | null {
  switch (event.kind) {
    case 'man':
      return { ...picking, man: event.role, place: null };
    case 'place':
      return picking.man === null ? picking : { ...picking, place: event.place };
    case 'back':
      if (picking.place !== null) return { ...picking, place: null };
      return picking.man === null ? null : { ...picking, man: null };
  }
}
