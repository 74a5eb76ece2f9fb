/** Four deep: corners and safeties in quarters, the safeties force. */
import type { Coverage, ZoneNeed } from '../../../src/engine/index.ts';
import { awayMan, callMan, drop, receivers, slotOn, trips, type CallSide } from '../words.ts';
import {
  deepCorner,
  edge,
  force,
  FORCE,
  inside,
  manOf,
  need,
  needIf,
  shell,
  tells,
  tellsBy,
  type Told,
} from './parts.ts';

const QUARTERS: readonly ZoneNeed[] = [
  need('quarter', 'call', callMan('corners')),
  need('quarter', 'call', callMan('safeties')),
  need('quarter', 'away', awayMan('corners')),
  need('quarter', 'away', awayMan('safeties')),
];

/** The safety over the second receiver forces; a gap only where nobody is split inside. */
const quarterSafety = (side: CallSide): Told =>
  tellsBy(
    manOf('safeties', side),
    [slotOn(side), drop('quarter', side, FORCE)],
    [[trips(side)], drop('quarter', side, FORCE)],
    [[], drop('quarter', side, force(side))],
  );
const DEEP_FOUR = [
  deepCorner('call', 'quarter'),
  deepCorner('away', 'quarter'),
  quarterSafety('call'),
  quarterSafety('away'),
];

/** Behind a rush of four that shows six: the ends and an inside backer are the three under. */
const threeUnder = shell(
  'four-deep',
  'Four deep three under, behind four who come',
  [
    ...QUARTERS,
    needIf([receivers('call', 'at-most', 2)], 'hook', 'call', callMan('ends'), callMan('inside-backers')),
    needIf([trips('call')], 'hook', 'middle', callMan('inside-backers')),
    needIf([receivers('away', 'at-most', 2)], 'hook', 'away', awayMan('ends'), awayMan('inside-backers')),
    needIf([trips('away')], 'hook', 'middle', callMan('inside-backers')),
    need('hole', 'middle', awayMan('inside-backers'), callMan('inside-backers')),
  ],
  ...DEEP_FOUR,
  tells(callMan('inside-backers'), drop('hook', 'middle', inside('call'))),
  tells(awayMan('inside-backers'), drop('hole', 'middle', inside('away'))),
  tells(callMan('outside-backers'), drop('curl-flat', 'call', edge('call'))),
  tells(awayMan('outside-backers'), drop('curl-flat', 'away', edge('away'))),
);

/** Behind five: both inside backers in the hooks; an outside backer who does not come is one more outside them. */
const twoUnder = shell(
  'four-deep-two-under',
  'Four deep two under',
  [...QUARTERS, need('hook', 'call', callMan('inside-backers')), need('hook', 'away', awayMan('inside-backers'))],
  ...DEEP_FOUR,
  tells(callMan('inside-backers'), drop('hook', 'call', inside('call'))),
  tells(awayMan('inside-backers'), drop('hook', 'away', inside('away'))),
  tells(callMan('outside-backers'), drop('curl-flat', 'call', edge('call'))),
  tells(awayMan('outside-backers'), drop('curl-flat', 'away', edge('away'))),
);

export const fourDeep: readonly Coverage[] = [threeUnder, twoUnder];
