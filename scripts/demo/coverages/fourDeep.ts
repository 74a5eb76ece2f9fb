/** Four deep: corners and safeties in quarters, the safeties force. */
import type { Coverage } from '../../../src/engine/index.ts';
import {
  awayMan,
  callMan,
  drop,
  receivers,
  trips,
  edge,
  inside,
  need,
  needIf,
  shell,
  tells,
  DEEP_FOUR,
  QUARTERS,
  twoUnder,
} from '../../../src/starter/index.ts';

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

export const fourDeep: readonly Coverage[] = [threeUnder, twoUnder];
