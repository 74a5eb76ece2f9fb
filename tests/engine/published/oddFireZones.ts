import { ODD_TIGHT, ODD_WIDE } from './fronts.ts';
import { THREE_UNDER_THREE_DEEP } from './needs.ts';
import { line, type Row } from './row.ts';

/** Five rush from the odd front, three under, three deep. */

const FIVE_THREE_THREE = { rush: 5, under: 3, deep: 3, man: 0 } as const;

/** The three deep behind every one of them. */
const DEEP = [
  line('AS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
  line('CC', 'off', 'shell', 'drop third-call', '-', '-', 'third-call'),
  line('AC', 'off', 'shell', 'drop third-away', '-', '-', 'third-away'),
];

/** The away side drops the same way in most: the inside backer to the hook, the outside one to the seam. */
const AWAY_UNDER = [
  line('AI', '30', 'shell', 'drop hook own B-away cutback', 'B-away', 'cutback', 'hook'),
  line('AO', 'apex of number two', 'shell', 'drop seam-away force', '-', 'force', 'seam-away'),
];

const COVER_DOUBLES = { '#1-call': 'CC', '#2-call': 'CS', '#1-away': 'AC', '#2-away': 'AO', R: 'AI' } as const;

/** Two alignments of the ends are published; from the wide one the end who sticks crosses two gaps, which is said. */
export const EDGE_AND_B: Row = {
  id: 'five-1',
  does: 'outside backer off the edge, inside backer through B, the end sticks to A',
  source:
    '"3-4 Zone Pressure to Attack the Run", Blitzology, 17 May 2016; "Building a Better [Zone] Blitz", C. Alexander, MatchQuarters; "Multiple 3-4 Fire Zone Blitz Coverages", Strong Football Coach',
  status: 'published',
  front: ODD_WIDE,
  look: 'doubles',
  goes: 'field',
  back: ['call', 'away'],
  men: [
    line('CE', ['4i', '5'], 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', ['4i', '5'], 'movement', 'contain C-away loop box', 'C-away', 'box', 'contain-away'),
    line('CO', 'edge', 'path', 'contain C-call spill', 'C-call', 'spill', 'contain-call'),
    line('CI', '30', 'path', 'rush B-call spill', 'B-call', 'spill', 'rush'),
    ...AWAY_UNDER,
    line('CS', 'high', 'shell', 'drop seam-call force', '-', 'force', 'seam-call'),
    ...DEEP,
  ],
  creeps: {},
  needs: THREE_UNDER_THREE_DEEP,
  counts: FIVE_THREE_THREE,
  contain: 'AE CO',
  force: 'AO CS',
  cover: COVER_DOUBLES,
  finds: [[], ['line.too-far CE']],
};

/**
 * The outside backer who comes in behind the end goes second: "DL hits first and LBs second" (K. Bowers, "Shuffle to Sprint
 * Technique for 2-Players in Hot Pressures", X&O Labs, 27 Feb 2022); that it holds for this pair, and that the inside backer
 * scrapes behind both, is from memory. So in the row after this one. The away end has no force man outside him: he boxes the edge, and so is force himself. */
export const BUMPED_FOR_TRIPS: Row = {
  id: 'five-2',
  does: 'the same against three receivers to the call: the inside backers bump and swap jobs',
  source: '"3-4 Zone Pressure to Attack the Run", Blitzology, 17 May 2016',
  status: 'published (adjustment)',
  front: ODD_WIDE,
  look: 'trips',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    line('CE', ['4i', '5'], 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', ['4i', '5'], 'movement', 'contain C-away loop box', 'C-away', 'box', 'contain-away'),
    line('CO', 'edge', 'path', 'rush B-call second:@CE spill', 'B-call', 'spill', 'rush'),
    line('CI', 'toward number three', 'shell', 'drop hook', '-', '-', 'hook'),
    line('AI', 'over the ball', 'path', 'contain C-call second:outside-call box', 'C-call', 'box', 'contain-call'),
    line('AO', 'bumped into the box', 'shell', 'drop seam-away own B-away cutback', 'B-away', 'cutback', 'seam-away'),
    line('CS', 'high', 'shell', 'drop seam-call force', '-', 'force', 'seam-call'),
    ...DEEP,
  ],
  creeps: {},
  needs: THREE_UNDER_THREE_DEEP,
  counts: FIVE_THREE_THREE,
  contain: 'AE AI',
  force: 'AE CS',
  cover: { '#1-call': 'CC', '#2-call': 'CS', '#3-call': 'CI', '#1-away': 'AC', R: 'AO' },
  finds: [[], ['line.too-far CE']],
};

/**
 * The full back's gap goes where he goes and is not one of the line's: AO, who has none, is its fitter (see the known runs
 * below). Which of the two backs the hook man gets is settled by who releases where; before the snap it is the nearer one.
 */
export const CRASH_AND_SCRAPE: Row = {
  id: 'five-3',
  does: 'for the run: the outside backer crashes flat into B, the inside backer scrapes over him to contain',
  source: '"3-4 Zone Pressure to Attack the Run", Blitzology, 17 May 2016',
  status: 'published',
  front: ODD_WIDE,
  look: 'two backs',
  goes: 'fixed',
  back: ['call'],
  men: [
    line('CE', ['4i', '5'], 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', '5', 'movement', 'contain C-away loop box', 'C-away', 'box', 'contain-away'),
    line('CO', '9', 'path', 'rush B-call second:@CE spill', 'B-call', 'spill', 'rush'),
    line('CI', '30', 'path', 'contain C-call over:outside-call box', 'C-call', 'box', 'contain-call'),
    line('AI', '30', 'shell', 'drop hook own B-away cutback', 'B-away', 'cutback', 'hook'),
    line('AO', 'edge', 'shell', 'drop seam-away force', '-', 'force', 'seam-away'),
    line('CS', 'high', 'shell', 'drop seam-call own D-call force', 'D-call', 'force', 'seam-call'),
    ...DEEP,
  ],
  creeps: {},
  needs: THREE_UNDER_THREE_DEEP,
  counts: FIVE_THREE_THREE,
  contain: 'AE CI',
  force: 'AO CS',
  cover: { '#1-call': 'CC', '#2-call': 'CS', '#1-away': 'AC', F: 'AI', T: 'AO' },
  finds: [[], ['line.too-far CE']],
};

export const UNDERNEATH: Row = {
  id: 'five-4',
  does: 'for the pass: the inside backer goes first to contain, the outside backer slips in behind him',
  source: '"3-4 Zone Pressure to Attack the Pass", Blitzology, May 2016',
  status: 'published',
  front: ODD_WIDE,
  look: 'doubles',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    line('CE', ['4i', '5'], 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', '5', 'movement', 'contain C-away loop box', 'C-away', 'box', 'contain-away'),
    line('CO', 'edge', 'path', 'rush B-call second:inside-call spill', 'B-call', 'spill', 'rush'),
    line('CI', '30', 'path', 'contain C-call first:outside-call box', 'C-call', 'box', 'contain-call'),
    ...AWAY_UNDER,
    line('CS', 'high', 'shell', 'drop seam-call force', '-', 'force', 'seam-call'),
    ...DEEP,
  ],
  creeps: {},
  needs: THREE_UNDER_THREE_DEEP,
  counts: FIVE_THREE_THREE,
  contain: 'AE CI',
  force: 'AO CS',
  cover: COVER_DOUBLES,
  finds: [[], ['line.too-far CE']],
};

export const CROSSED_BACKERS: Row = {
  id: 'five-5',
  does: 'both inside backers cross through A, the nose out to the away B, a safety down to the hook',
  source:
    '"Building a Better [Zone] Blitz", C. Alexander, MatchQuarters; "Blitz of the Week #3", Blitzology, 16 Mar 2010; "3-2-2-4 Blitzes and Games", Ironman Football Blog, 28 Mar 2014',
  status: 'built from the three sources, gap map from memory',
  front: ODD_TIGHT,
  look: 'doubles',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    // Against the run he has B, against the pass he contains: the published pattern for the man away from an inside rush.
    line('CE', '4i', 'movement', 'contain B-call spill', 'B-call', 'spill', 'contain-call'),
    line('NT', '0', 'movement', 'rush B-away loop spill', 'B-away', 'spill', 'rush'),
    line('AE', '4i', 'movement', 'contain C-away loop box', 'C-away', 'box', 'contain-away'),
    line('CO', 'apex of number two', 'shell', 'drop seam-call own C-call force', 'C-call', 'force', 'seam-call'),
    line('CI', '20', 'path', 'rush A-away first:inside-away spill', 'A-away', 'spill', 'rush'),
    line('AI', '20', 'path', 'rush A-call second:inside-call spill', 'A-call', 'spill', 'rush'),
    line('AO', 'apex of number two', 'shell', 'drop seam-away force', '-', 'force', 'seam-away'),
    line('CS', 'high', 'shell', 'drop hook cutback', '-', 'cutback', 'hook'),
    ...DEEP,
  ],
  creeps: {},
  needs: THREE_UNDER_THREE_DEEP,
  counts: FIVE_THREE_THREE,
  contain: 'AE CE',
  force: 'AO CO',
  cover: { '#1-call': 'CC', '#2-call': 'CO', '#1-away': 'AC', '#2-away': 'AO', R: 'CS' },
  finds: [[]],
};

export const SAFETY_B: Row = {
  id: 'five-6',
  does: 'a safety through B, the inside backer through A, the ends slant out',
  source: '"My Favorite Safety Blitz", Compete In All Things blog, 7 Nov 2011',
  status: 'published',
  front: ODD_WIDE,
  look: 'doubles tight end',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    line('CE', '5', 'movement', 'contain C-call slant box', 'C-call', 'box', 'contain-call'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', '5', 'movement', 'contain C-away slant box', 'C-away', 'box', 'contain-away'),
    line('CO', '9', 'shell', 'drop seam-call own D-call force', 'D-call', 'force', 'seam-call'),
    line('CI', '30', 'path', 'rush A-call spill', 'A-call', 'spill', 'rush'),
    ...AWAY_UNDER,
    line('CS', 'high', 'path', 'rush B-call spill', 'B-call', 'spill', 'rush'),
    ...DEEP,
  ],
  creeps: { CS: 5.5 },
  needs: THREE_UNDER_THREE_DEEP,
  counts: FIVE_THREE_THREE,
  contain: 'AE CE',
  force: 'AO CO',
  cover: { '#1-call': 'CC', '#2-call': 'CO', '#1-away': 'AC', '#2-away': 'AO', R: 'AI' },
  finds: [['align.tell CS']],
};
