/** Three deep: each corner a third, a safety in the middle, and three under them. */
import type { GapRef, RunSupport, ZoneNeed } from '../../engine/index.ts';
import { aBack, awayMan, callMan, drop, edgeGap, gap, ifFree, man, slotOn, tightEnd, trips } from '../words.ts';
import { edgeForce, force, FORCE, hook, need, post, seam, shell, tells, tellsBy, THIRDS, type Told } from './parts.ts';

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

/** One overhang only: the fifth back has the seam of his side and the free safety the other, wherever the call goes. */
export const byRole = shell(
  'three-deep-fifth-back',
  'Three deep, fifth back and free safety in the seams',
  [
    need('third', 'call', callMan('corners')),
    need('third', 'away', awayMan('corners')),
    need('middle', 'middle', man('strong-safety')),
    need('seam', 'call', man('fifth-back'), man('free-safety')),
    need('seam', 'away', man('fifth-back'), man('free-safety')),
    HOOK,
  ],
  seamOf('fifth-back', ifFree('force', edgeGap('mine'), gap('D', 'mine'))),
  seamOf('free-safety', ifFree('force', edgeGap('mine'), gap('D', 'mine'), gap('C', 'mine'))),
  hook('call'),
  hook('away'),
  tellsBy(
    man('strong-safety'),
    [[tightEnd('mine')], drop('middle', 'middle', ifFree('alley', gap('D', 'mine'), edgeGap('mine')))],
    [[], drop('middle', 'middle')],
  ),
  ...THIRDS,
);

function seamOf(role: string, run: RunSupport<GapRef>): Told {
  return tellsBy(
    man(role),
    [slotOn('mine'), drop('seam', 'mine', FORCE)],
    [[trips('mine'), aBack], drop('seam', 'mine', FORCE)],
    [[], drop('seam', 'mine', run)],
  );
}
