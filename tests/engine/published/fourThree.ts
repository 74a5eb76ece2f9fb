import { FOUR_THREE } from './fronts.ts';
import { THREE_UNDER_THREE_DEEP } from './needs.ts';
import { line, type Row } from './row.ts';

/** Four down, three-technique to the boundary: the two halves of one published check, picked by the surface to the field. */

/** Called to the field; run when the surface there is guard, tackle and tight end. */
export const FIELD_CROSS: Row = {
  id: 'four-1',
  does: 'Mike through A first and Will behind him through the far B, the boundary end drops',
  source: '"Blitz of the Week #3", Blitzology, 16 Mar 2010 (from a 2001 college playbook)',
  status: 'published',
  front: FOUR_THREE,
  look: 'doubles tight end',
  goes: 'field',
  back: ['call', 'away'],
  men: [
    line('FE', '5', 'movement', 'contain C-call box', 'C-call', 'box', 'contain-call'),
    line('FT', '2i', 'movement', 'rush A-away spill', 'A-away', 'spill', 'rush'),
    line('BT', '3', 'movement', 'contain B-away spill', 'B-away', 'spill', 'contain-away'),
    // The source has him box C.
    line('BE', '5', 'movement', 'drop seam-away own C-away', 'C-away', '-', 'seam-away'),
    line('SA', '9', 'shell', 'drop seam-call may D-call force', 'D-call', 'force', 'seam-call'),
    line('MI', '10', 'path', 'rush A-call first:@WI spill', 'A-call', 'spill', 'rush'),
    line('WI', '20', 'path', 'rush B-call second:@MI spill', 'B-call', 'spill', 'rush'),
    line('FS', 'high', 'shell', 'drop hook cutback', '-', 'cutback', 'hook'),
    line('SS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
    line('FC', 'off', 'shell', 'drop third-call', '-', '-', 'third-call'),
    line('BC', 'off', 'shell', 'drop third-away force', '-', 'force', 'third-away'),
  ],
  creeps: {},
  needs: THREE_UNDER_THREE_DEEP,
  counts: { rush: 5, under: 3, deep: 3, man: 0 },
  contain: 'BT FE',
  force: 'BC SA',
  cover: { '#1-call': 'FC', '#2-call': 'SA', '#1-away': 'BC', '#2-away': 'BE', R: 'FS' },
  // A lineman on the slot: what the source asks of him, and worth saying.
  finds: [['cover.mismatch BE']],
};

/** Called to the boundary; run when the surface to the field is guard and tackle. */
export const BOUNDARY_CORNER: Row = {
  id: 'four-2',
  does: 'the boundary corner off the edge, the line inside, a safety over the top of him',
  source: '"Blitz of the Week #3", Blitzology, 16 Mar 2010 (from a 2001 college playbook)',
  status: 'published',
  front: FOUR_THREE,
  look: 'doubles',
  goes: 'boundary',
  back: ['call', 'away'],
  men: [
    line('FE', '5', 'movement', 'contain C-away box', 'C-away', 'box', 'contain-away'),
    line('FT', '2i', 'movement', 'rush A-away spill', 'A-away', 'spill', 'rush'),
    line('BT', '3', 'movement', 'rush A-call slant spill', 'A-call', 'spill', 'rush'),
    line('BE', '5', 'movement', 'rush B-call slant spill', 'B-call', 'spill', 'rush'),
    line('SA', 'apex of number two', 'shell', 'drop seam-away may D-away force', '-', 'force', 'seam-away'),
    line('MI', '10', 'shell', 'drop hook own B-away cutback', 'B-away', 'cutback', 'hook'),
    line('WI', 'apex of number two', 'shell', 'drop seam-call force', '-', 'force', 'seam-call'),
    line('FS', 'high', 'shell', 'drop third-call', '-', '-', 'third-call'),
    line('SS', 'high', 'shell', 'drop middle', '-', '-', 'middle'),
    line('FC', 'off', 'shell', 'drop third-away', '-', '-', 'third-away'),
    line('BC', 'off', 'path', 'contain C-call box', 'C-call', 'box', 'contain-call'),
  ],
  creeps: { BC: 3 },
  needs: THREE_UNDER_THREE_DEEP,
  counts: { rush: 5, under: 3, deep: 3, man: 0 },
  contain: 'BC FE',
  force: 'SA WI',
  cover: { '#1-call': 'FS', '#2-call': 'WI', '#1-away': 'FC', '#2-away': 'SA', R: 'MI' },
  finds: [['align.tell BC']],
};
