/** Two deep: the safeties a half each, the corners in the flats and the force on both sides. */
import type { Coverage, LookTest, ZoneNeed } from '../../../src/engine/index.ts';
import {
  aBack,
  awayMan,
  callMan,
  drop,
  edgeGap,
  gap,
  ifFree,
  man,
  slotOn,
  tightEnd,
  tightEndAndWing,
  trips,
  type CallSide,
  edge,
  manOf,
  need,
  shell,
  tells,
  tellsBy,
  type Told,
} from '../../../src/starter/index.ts';

const HALVES_AND_FLATS: readonly ZoneNeed[] = [
  need('half', 'call', callMan('safeties')),
  need('half', 'away', awayMan('safeties')),
  need('flat', 'call', callMan('corners'), callMan('outside-backers')),
  need('flat', 'away', awayMan('corners'), awayMan('outside-backers')),
];

/** Where a gap may be left on his side, the safety has the alley there. */
const half = (side: CallSide, gapLeft: LookTest): Told =>
  tellsBy(
    manOf('safeties', side),
    [[gapLeft], drop('half', side, ifFree('alley', gap('D', side), gap('C', side), edgeGap(side)))],
    [[], drop('half', side)],
  );
const flat = (side: CallSide): Told =>
  tellsBy(
    manOf('corners', side),
    [[tightEndAndWing(side)], drop('flat', side, ifFree('force', edgeGap(side), gap('D', side)))],
    [[], drop('flat', side, ifFree('force', edgeGap(side)))],
  );
const FLATS = [flat('call'), flat('away')];

/** Six come: the outside backer away from them between the two corners. */
const threeUnder = shell(
  'two-deep-three-under',
  'Two deep three under, corners force',
  [...HALVES_AND_FLATS, need('hook', 'middle', awayMan('outside-backers'))],
  half('call', tightEnd('call')),
  half('away', tightEnd('away')),
  ...FLATS,
  tells(awayMan('outside-backers'), drop('hook', 'middle', edge('away'))),
);

/** Four come from the front with three safeties: the third one comes down over the second receiver they come from. */
const fiveUnder = shell(
  'two-deep-five-under',
  'Two deep five under, middle safety down',
  [
    ...HALVES_AND_FLATS,
    need('hook', 'call', man('middle-safety')),
    need('hook', 'away', awayMan('outside-backers')),
    need('hole', 'middle', man('middle-backer')),
  ],
  half('call', tightEndAndWing('call')),
  half('away', tightEndAndWing('away')),
  ...FLATS,
  tells(
    man('middle-backer'),
    drop(
      'hole',
      'middle',
      ifFree(
        'cutback',
        gap('C', 'call'),
        gap('C', 'away'),
        gap('B', 'call'),
        gap('B', 'away'),
        gap('D', 'away'),
        gap('D', 'call'),
      ),
    ),
  ),
  tells(
    man('middle-safety'),
    drop('hook', 'call', ifFree('alley', gap('C', 'away'), gap('C', 'call'), gap('D', 'call'), gap('D', 'away'))),
  ),
  tellsBy(
    awayMan('outside-backers'),
    [slotOn('away'), drop('hook', 'away')],
    [[trips('away'), aBack], drop('hook', 'away')],
    [[], drop('hook', 'away', edge('away'))],
  ),
  tells(callMan('outside-backers'), drop('hook', 'call', edge('call'))),
);

export const twoDeep: readonly Coverage[] = [threeUnder, fiveUnder];
