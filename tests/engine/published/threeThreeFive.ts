import { THREE_THREE_FIVE } from './fronts.ts';
import { line, type Row } from './row.ts';

/** Three down, three backers, five defensive backs. */

/** Will and SS box the edges, so they are the force too. */
export const SHORT_YARDAGE: Row = {
  id: 'stack-1',
  does: 'short yardage, nobody deep: the end sticks to A, Sam crashes behind him, a safety wide off the same edge',
  source: '"Short Yardage Run Blitz", Blitzology, 29 Apr 2019',
  status: 'published; the man on the away slot and the fit in the call-side C from memory',
  front: THREE_THREE_FIVE,
  look: 'doubles tight end',
  goes: 'fixed',
  back: ['call', 'away'],
  men: [
    line('CE', '4i', 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('NT', '0', 'movement', 'rush A-away slant spill', 'A-away', 'spill', 'rush'),
    line('AE', '4i', 'movement', 'rush B-away spill', 'B-away', 'spill', 'rush'),
    line('SA', 'edge', 'path', 'rush B-call spill', 'B-call', 'spill', 'rush'),
    line('MI', '20', 'shell', 'man back own C-call cutback', 'C-call', 'cutback', 'man R'),
    line('WI', 'edge', 'path', 'contain C-away box', 'C-away', 'box', 'contain-away'),
    line('SS', 'wide edge', 'path', 'contain D-call box', 'D-call', 'box', 'contain-call'),
    line('WS', 'over number two', 'shell', 'man #2-call', '-', '-', 'man #2-call'),
    line('FS', 'over number two', 'shell', 'man #2-away', '-', '-', 'man #2-away'),
    line('CC', 'press', 'shell', 'man #1-call', '-', '-', 'man #1-call'),
    line('AC', 'press', 'shell', 'man #1-away', '-', '-', 'man #1-away'),
  ],
  creeps: {},
  needs: [],
  counts: { rush: 6, under: 0, deep: 0, man: 5 },
  contain: 'SS WI',
  force: 'SS WI',
  cover: { '#1-call': 'CC', '#2-call': 'WS', '#1-away': 'AC', '#2-away': 'FS', R: 'MI' },
  finds: [['cover.no-post']],
};
