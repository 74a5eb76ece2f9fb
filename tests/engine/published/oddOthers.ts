import { ODD_TIGHT, ODD_WIDE } from './fronts.ts';
import {
  A_POST,
  FOUR_UNDER_THREE_DEEP,
  FOUR_UNDER_TWO_DEEP,
  THREE_UNDER_FOUR_DEEP,
  TWO_UNDER_THREE_DEEP,
} from './needs.ts';
import { line, type Row } from './row.ts';

/** From the odd front, too: four or six rush, or the shell is another one. */

/** Of two hooks the one on the back's side has him; the table is the one with the back on the call side. */
export const BACKER_B: Row = {
  id: 'odd-1',
  does: 'four rush: the end works out, the inside backer comes through B',
  source: '"3 Match Coverage Variation", Blitzology, 16 Jun 2019',
  status: 'published idea, gap map from memory',
  front: ODD_TIGHT,
  look: 'doubles',
  goes: 'fixed',
  back: ['call'],
  men: [
    line('CE', '4i', 'movement', 'contain C-call loop box', 'C-call', 'box', 'contain-call'),
    line('NT', '0', 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('AE', '4i', 'movement', 'contain B-away spill', 'B-away', 'spill', 'contain-away'),
    line('CO', 'apex of number two', 'shell', 'drop curl-flat-call force', '-', 'force', 'curl-flat-call'),
    line('CI', '30', 'path', 'rush B-call spill', 'B-call', 'spill', 'rush'),
    line('AI', '20', 'shell', 'drop hook-away own A-away cutback', 'A-away', 'cutback', 'hook-away'),
    line(
      'AO',
      'apex of number two',
      'shell',
      'drop curl-flat-away own C-away force',
      'C-away',
      'force',
      'curl-flat-away',
    ),
    line('CS', 'high', 'shell', 'drop hook-call', '-', '-', 'hook-call'),
    line('AS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
    line('CC', 'off', 'shell', 'drop third-call', '-', '-', 'third-call'),
    line('AC', 'off', 'shell', 'drop third-away', '-', '-', 'third-away'),
  ],
  creeps: {},
  needs: FOUR_UNDER_THREE_DEEP,
  counts: { rush: 4, under: 4, deep: 3, man: 0 },
  contain: 'AE CE',
  force: 'AO CO',
  cover: { '#1-call': 'CC', '#2-call': 'CO', '#1-away': 'AC', '#2-away': 'AO', R: 'CS' },
  finds: [[]],
};

/** Six show on the line and four come. The source has the two dropping ends spill B. */
export const ENDS_DROP: Row = {
  id: 'odd-2',
  does: 'both edges rush, both ends attack and drop, four deep',
  source: '"Quarters Coverage Zone Pressure", Blitzology, 22 Dec 2016',
  status: 'published, translated to the names of the odd front',
  front: ODD_WIDE,
  look: 'doubles',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    line('CE', ['4', '5'], 'movement', 'drop hook-call own B-call', 'B-call', '-', 'hook-call'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', ['4', '5'], 'movement', 'drop hook-away own B-away', 'B-away', '-', 'hook-away'),
    line('CO', 'edge', 'path', 'contain C-call box', 'C-call', 'box', 'contain-call'),
    line('CI', 'mugged A', 'path', 'rush A-call spill', 'A-call', 'spill', 'rush'),
    line('AI', 'mugged A', 'shell', 'drop hole cutback', '-', 'cutback', 'hole'),
    line('AO', 'edge', 'path', 'contain C-away box', 'C-away', 'box', 'contain-away'),
    line('CS', 'high', 'shell', 'drop quarter-call force', '-', 'force', 'quarter-call'),
    line('AS', 'high', 'shell', 'drop quarter-away force', '-', 'force', 'quarter-away'),
    line('CC', 'off', 'shell', 'drop quarter-call', '-', '-', 'quarter-call'),
    line('AC', 'off', 'shell', 'drop quarter-away', '-', '-', 'quarter-away'),
  ],
  creeps: {},
  needs: THREE_UNDER_FOUR_DEEP,
  counts: { rush: 4, under: 3, deep: 4, man: 0 },
  contain: 'AO CO',
  force: 'AS CS',
  cover: { '#1-call': 'CC', '#2-call': 'CS', '#1-away': 'AC', '#2-away': 'AS', R: 'AI' },
  finds: [[], []],
};

export const THREE_MAN_TWIST: Row = {
  id: 'odd-3',
  does: 'nose and both inside backers twist, the ends contain, man to man with a free safety',
  source: '"Breaking Half Slide Protection", Blitzology, 3 May 2019',
  status: 'published, gap map from memory',
  front: ODD_WIDE,
  look: 'doubles',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    line('CE', '5', 'movement', 'contain C-call box', 'C-call', 'box', 'contain-call'),
    line('NT', '0', 'movement', 'rush B-away loop second:inside-call spill', 'B-away', 'spill', 'rush'),
    line('AE', '5', 'movement', 'contain C-away box', 'C-away', 'box', 'contain-away'),
    line('CO', 'over number two', 'shell', 'man #2-call force', '-', 'force', 'man #2-call'),
    line('CI', 'mugged A', 'path', 'rush A-away first:@NT spill', 'A-away', 'spill', 'rush'),
    line('AI', 'mugged A', 'path', 'rush A-call second:@NT spill', 'A-call', 'spill', 'rush'),
    line('AO', 'over number two', 'shell', 'man #2-away force', '-', 'force', 'man #2-away'),
    line('CS', 'linebacker depth', 'shell', 'man back own B-call cutback', 'B-call', 'cutback', 'man R'),
    line('AS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
    line('CC', 'press', 'shell', 'man #1-call', '-', '-', 'man #1-call'),
    line('AC', 'press', 'shell', 'man #1-away', '-', '-', 'man #1-away'),
  ],
  creeps: {},
  needs: A_POST,
  counts: { rush: 5, under: 0, deep: 1, man: 5 },
  contain: 'AE CE',
  force: 'AO CO',
  cover: { '#1-call': 'CC', '#2-call': 'CO', '#1-away': 'AC', '#2-away': 'AO', R: 'CS' },
  finds: [[]],
};

/**
 * The back is the edge rusher's on whose side he is: the table has him on the call side. The source of the peel wants an
 * inside rusher to become contain when the edge leaves ("Coaching Stress Areas: Double A Gap Mug Cover 1 Peel Blitz",
 * Blitzology, 21 Aug 2020); the rush map of this row, from memory, gives that to nobody, and the engine says so.
 */
export const SIX_HOT: Row = {
  id: 'odd-4',
  does: 'six rush, every gap; the edges leave with the back; two under with their eyes on the passer, three deep',
  source:
    'K. Bowers, "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O Labs, 27 Feb 2022; G. McLaughlin, "Outside Cage vs. Interior Pressure Angles in 3-Deep, 2-Under Fire Zones", X&O Labs, 21 Dec 2020; "May \'22 Blitz of the Month", MatchQuarters',
  status: 'coverage published, rush map from memory',
  front: ODD_TIGHT,
  look: 'doubles',
  goes: 'fixed',
  back: ['call'],
  men: [
    line('CE', '4i', 'movement', 'rush B-call slant spill', 'B-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('AE', '4i', 'movement', 'rush B-away slant spill', 'B-away', 'spill', 'rush'),
    line('CO', 'edge', 'path', 'contain C-call box peel', 'C-call', 'box', 'contain-call'),
    line('CI', '10', 'path', 'rush A-away spill', 'A-away', 'spill', 'rush'),
    line('AI', '30', 'shell', 'drop hot-away force', '-', 'force', 'hot-away'),
    line('AO', 'edge', 'path', 'contain C-away box peel', 'C-away', 'box', 'contain-away'),
    line('CS', 'high', 'shell', 'drop hot-call force', '-', 'force', 'hot-call'),
    line('AS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
    line('CC', 'off', 'shell', 'drop third-call', '-', '-', 'third-call'),
    line('AC', 'off', 'shell', 'drop third-away', '-', '-', 'third-away'),
  ],
  creeps: {},
  needs: TWO_UNDER_THREE_DEEP,
  counts: { rush: 6, under: 2, deep: 3, man: 0 },
  contain: 'AO CO',
  force: 'AI CS',
  cover: { '#1-call': 'CC', '#2-call': 'CS', '#1-away': 'AC', '#2-away': 'AI', R: 'CO' },
  finds: [['cover.mismatch AI', 'peel.unconverted AO', 'peel.unconverted CO']],
};

/**
 * The rush of the first row with another shell: shown as three deep, played as two. Whoever has the flat on the back's side
 * has him: away it is AO, as in the table; to the call it is the corner, see below.
 */
export const TWO_DEEP: Row = {
  id: 'five-7',
  does: 'outside backer off the edge, inside backer through B, the end sticks to A; four under, two deep',
  source: '"Blitz of the Week #9", Blitzology, 24 May 2010',
  status: 'published',
  front: ODD_WIDE,
  look: 'doubles',
  goes: 'field',
  back: ['away'],
  men: [
    line('CE', '5', 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', '5', 'movement', 'contain C-away loop box', 'C-away', 'box', 'contain-away'),
    line('CO', 'edge', 'path', 'contain C-call spill', 'C-call', 'spill', 'contain-call'),
    line('CI', '30', 'path', 'rush B-call spill', 'B-call', 'spill', 'rush'),
    line('AI', 'widened 30', 'shell', 'drop hook-away own B-away cutback', 'B-away', 'cutback', 'hook-away'),
    line('AO', 'outside number two', 'shell', 'drop curl-flat-away force', '-', 'force', 'curl-flat-away'),
    line('CS', 'high', 'shell', 'drop hook-call', '-', '-', 'hook-call'),
    // Shown as three deep: he is the man in the middle of the three.
    line('AS', 'deep middle', 'shell', 'drop half-call', '-', '-', 'half-call'),
    line('CC', 'press', 'shell', 'drop flat-call force', '-', 'force', 'flat-call'),
    line('AC', 'off', 'shell', 'drop half-away', '-', '-', 'half-away'),
  ],
  creeps: {},
  needs: FOUR_UNDER_TWO_DEEP,
  counts: { rush: 5, under: 4, deep: 2, man: 0 },
  contain: 'AE CO',
  force: 'AO CC',
  cover: { '#1-call': 'AS', '#2-call': 'CS', '#1-away': 'AC', '#2-away': 'AI', R: 'AO' },
  finds: [['line.too-far CE']],
};

/**
 * Against two receivers on each side the call has no side and base is played; the jet motion makes it three to one, and the
 * side is the motion's. The table is the formation after it; the motion itself is run below.
 */
export const MOTION_EDGE: Row = {
  id: 'odd-5',
  does: 'four rush at jet motion: outside backer off the edge the motion comes to, the secondary rolls to it',
  source: '"Using Edge Pressure to Attack Jet Sweep", Blitzology, 1 Jan 2020',
  status: 'published, inside fits from memory',
  front: ODD_TIGHT,
  look: 'trips',
  goes: 'receivers',
  back: ['away'],
  men: [
    line('CE', '4i', 'movement', 'rush B-call spill', 'B-call', 'spill', 'rush'),
    line('NT', '0', 'base', '', 'A-away', 'two-gap', 'rush'),
    line('AE', '4i', 'movement', 'contain B-away spill', 'B-away', 'spill', 'contain-away'),
    line('CO', 'edge', 'path', 'contain C-call box', 'C-call', 'box', 'contain-call'),
    line('CI', '20', 'shell', 'drop hook-call own A-call', 'A-call', '-', 'hook-call'),
    line('AI', '20', 'shell', 'drop hook-away cutback', '-', 'cutback', 'hook-away'),
    line('AO', 'edge', 'shell', 'drop curl-flat-away own C-away force', 'C-away', 'force', 'curl-flat-away'),
    line('CS', 'high', 'shell', 'drop curl-flat-call force', '-', 'force', 'curl-flat-call'),
    line('AS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
    line('CC', 'off', 'shell', 'drop third-call', '-', '-', 'third-call'),
    line('AC', 'off', 'shell', 'drop third-away', '-', '-', 'third-away'),
  ],
  creeps: {},
  needs: FOUR_UNDER_THREE_DEEP,
  counts: { rush: 4, under: 4, deep: 3, man: 0 },
  contain: 'AE CO',
  force: 'AO CS',
  cover: { '#1-call': 'CC', '#2-call': 'CS', '#3-call': 'CI', '#1-away': 'AC', R: 'AI' },
  finds: [[]],
};
