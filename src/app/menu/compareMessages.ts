import type { Playbook } from '../../document/index.ts';
import type { CallId, Place } from '../../engine/index.ts';
import type { Comparison } from '../../report/index.ts';

/** A call of one version of a playbook. */
export interface CallOf {
  readonly playbook: Playbook;
  readonly call: CallId;
}

/** What the comparing worker is asked: two calls in every look both playbooks have, at one ball spot. */
export interface CompareAsked {
  readonly before: CallOf;
  readonly after: CallOf;
  readonly spot: Place;
}

/** What it answers. */
export type CompareTold =
  { readonly kind: 'compared'; readonly comparison: Comparison } | { readonly kind: 'failed'; readonly reason: string };
