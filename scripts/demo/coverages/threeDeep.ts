/** Three deep: each corner a third, a safety in the middle, and who is under them. */
import type { Coverage, Who } from '../../../src/engine/index.ts';
import {
  aBack,
  awayMan,
  callMan,
  drop,
  gap,
  ifFree,
  noBack,
  cover,
  receiver,
  receivers,
  single,
  slotOn,
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
  THREE_UNDER,
  byRole,
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

function hotMan(who: Who, side: CallSide): Told {
  return tellsBy(
    who,
    [[single(side)], drop('hook', 'middle', force(side))],
    [slotOn(side), drop('hot', side, FORCE)],
    [[trips(side), aBack], drop('hot', side, FORCE)],
    [[], drop('hot', side, force(side))],
  );
}
