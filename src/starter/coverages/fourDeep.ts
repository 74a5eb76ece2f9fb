/** Four deep: corners and safeties in quarters, the safeties force. */
import type { ZoneNeed } from '../../engine/index.ts';
import { awayMan, callMan, drop, slotOn, trips, type CallSide } from '../words.ts';
import { deepCorner, edge, force, FORCE, inside, manOf, need, shell, tells, tellsBy, type Told } from './parts.ts';

/** The four zones of the deep men. */
export const QUARTERS: readonly ZoneNeed[] = [
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
/** What the four deep men are told. */
export const DEEP_FOUR = [
  deepCorner('call', 'quarter'),
  deepCorner('away', 'quarter'),
  quarterSafety('call'),
  quarterSafety('away'),
];

/** Behind five: both inside backers in the hooks; an outside backer who does not come is one more outside them. */
export const twoUnder = shell(
  'four-deep-two-under',
  'Four deep two under',
  [...QUARTERS, need('hook', 'call', callMan('inside-backers')), need('hook', 'away', awayMan('inside-backers'))],
  ...DEEP_FOUR,
  tells(callMan('inside-backers'), drop('hook', 'call', inside('call'))),
  tells(awayMan('inside-backers'), drop('hook', 'away', inside('away'))),
  tells(callMan('outside-backers'), drop('curl-flat', 'call', edge('call'))),
  tells(awayMan('outside-backers'), drop('curl-flat', 'away', edge('away'))),
);
