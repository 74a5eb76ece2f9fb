/** Three deep: each corner a third, a safety in the middle, and who is under them. */
import type { Coverage, GapRef, RunSupport, Who } from '../../../src/engine/index.ts';
import {
  aBack,
  awayMan,
  callMan,
  drop,
  edgeGap,
  gap,
  ifFree,
  man,
  noBack,
  cover,
  receiver,
  receivers,
  single,
  slotOn,
  tightEnd,
  trips,
  two,
  type CallSide,
  deepCorner,
  edgeForce,
  force,
  FORCE,
  hook,
  need,
  needIf,
  post,
  seam,
  shell,
  tells,
  tellsBy,
  THIRDS,
  type Told,
  rolled,
  HOOK,
  THREE_UNDER,
} from '../../../src/starter/index.ts';

/** Both outside backers have the seams, a safety takes the hook that two inside backers left. */
const robbed = shell(
  'three-deep-hook',
  'Three deep, call safety in the hook',
  THREE_UNDER,
  tells(callMan('safeties'), drop('hook', 'middle', ifFree('cutback', gap('D', 'call'), gap('C', 'call')))),
  seam(callMan('outside-backers'), 'call', edgeForce('call')),
  seam(awayMan('outside-backers'), 'away', edgeForce('away')),
  hook('call'),
  hook('away'),
  post('away'),
  ...THIRDS,
);

/** A corner comes: the safety of his side goes over the top of him, and the backer may squeeze inside him. */
const overTheTop = shell(
  'three-deep-over',
  'Three deep, call safety over the corner',
  THREE_UNDER,
  tells(callMan('safeties'), drop('third', 'call')),
  seam(callMan('outside-backers'), 'call', force('call')),
  seam(awayMan('outside-backers'), 'away', edgeForce('away')),
  hook('call'),
  hook('away'),
  post('away'),
  deepCorner('away', 'third'),
);

/** Four come, six are shown, a lineman drops: one man more underneath. */
const fourUnder = shell(
  'three-deep-four-under',
  'Three deep four under, behind four who come',
  [
    ...THREE_UNDER,
    needIf([receivers('call', 'at-most', 2)], 'hook', 'call', callMan('ends'), callMan('inside-backers')),
  ],
  seam(callMan('safeties'), 'call', force('call')),
  seam(awayMan('outside-backers'), 'away', edgeForce('away')),
  hook('call'),
  hook('away'),
  post('away'),
  ...THIRDS,
);

/** One overhang only: the fifth back has the seam of his side and the free safety the other, wherever the call goes. */
const byRole = shell(
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

/**
 * Six come: two hot men with their eyes on the passer, three deep. A hot man whose side has one receiver sits in the
 * middle for the third one of the other side; against empty the deep safety has that one man to man.
 */
const hot = shell(
  'three-deep-hot',
  'Three deep, two hot',
  [
    need('third', 'call', callMan('corners')),
    need('third', 'away', awayMan('corners')),
    needIf([aBack], 'middle', 'middle', awayMan('safeties')),
    needIf([two('call')], 'hot', 'call', callMan('safeties')),
    needIf([two('away')], 'hot', 'away', awayMan('outside-backers')),
    needIf([single('call')], 'hook', 'middle', callMan('safeties')),
    needIf([single('away')], 'hook', 'middle', awayMan('outside-backers')),
  ],
  hotMan(callMan('safeties'), 'call'),
  hotMan(awayMan('outside-backers'), 'away'),
  tellsBy(
    awayMan('safeties'),
    [[noBack, trips('call')], cover(receiver('call', 3))],
    [[noBack, trips('away')], cover(receiver('away', 3))],
  ),
  post('away'),
  ...THIRDS,
);

export const threeDeep: readonly Coverage[] = [rolled, robbed, overTheTop, fourUnder, byRole, hot];

function seamOf(role: string, run: RunSupport<GapRef>): Told {
  return tellsBy(
    man(role),
    [slotOn('mine'), drop('seam', 'mine', FORCE)],
    [[trips('mine'), aBack], drop('seam', 'mine', FORCE)],
    [[], drop('seam', 'mine', run)],
  );
}

function hotMan(who: Who, side: CallSide): Told {
  return tellsBy(
    who,
    [[single(side)], drop('hook', 'middle', force(side))],
    [slotOn(side), drop('hot', side, FORCE)],
    [[trips(side), aBack], drop('hot', side, FORCE)],
    [[], drop('hot', side, force(side))],
  );
}
