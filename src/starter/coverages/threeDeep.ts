/** Three deep: each corner a third, a safety in the middle, and three under them. */
import type { ZoneNeed } from '../../engine/index.ts';
import { awayMan, callMan, drop, edgeGap, gap, ifFree } from '../words.ts';
import { edgeForce, force, hook, need, post, seam, shell, tells, THIRDS } from './parts.ts';

const DEEP: readonly ZoneNeed[] = [
  need('third', 'call', callMan('corners'), callMan('safeties')),
  need('third', 'away', awayMan('corners'), awayMan('safeties')),
  need('middle', 'middle', awayMan('safeties'), callMan('safeties')),
];
const SEAMS: readonly ZoneNeed[] = [
  need('seam', 'call', callMan('safeties'), callMan('outside-backers'), callMan('inside-backers')),
  need('seam', 'away', awayMan('outside-backers'), awayMan('inside-backers')),
];
/** Under them, in the middle. */
export const HOOK = need('hook', 'middle', awayMan('inside-backers'), callMan('inside-backers'), callMan('safeties'));
/** All a shell of three deep and three under cannot do without. */
export const THREE_UNDER = [...DEEP, ...SEAMS, HOOK];

/** The call-side safety comes down for whoever left that side, the other safety to the middle. */
export const rolled = shell(
  'three-deep-roll',
  'Three deep, call safety down',
  THREE_UNDER,
  seam(callMan('safeties'), 'call', force('call')),
  seam(awayMan('outside-backers'), 'away', edgeForce('away')),
  hook('call'),
  hook('away'),
  post('away'),
  ...THIRDS,
  tells(
    callMan('outside-backers'),
    drop('hook', 'middle', ifFree(null, edgeGap('call'), gap('D', 'call'), gap('C', 'call'))),
  ),
);
