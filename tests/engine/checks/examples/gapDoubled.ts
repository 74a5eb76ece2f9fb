import { gapDoubled } from '../../../../src/engine/checks/gapDoubled.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const THIN = 'a gap is thin when nobody has it, or only half of a man who plays two';
const nobody = shell('Nobody told', []);
const noseToCall = tell('@N', 'movement', 'rush A-call slant');

export const examples: CheckExamples = {
  check: gapDoubled,
  found: [
    {
      name: 'two in one B while the nose plays both A',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call'), tell('outside-call', 'path', 'rush B-call')]),
      coverage: nobody,
      finds: [
        {
          says: [
            'M+S are sent into one gap, the B-right, which leaves too little for the A-left+A-right',
            'M is sent there',
            'S is sent there',
            THIN,
          ],
          who: 'M S',
          gaps: 'B-right A-left A-right',
        },
      ],
    },
    {
      name: 'three by two pressures, while another gap is open',
      look,
      first: pressure('p', [noseToCall, tell('inside-away', 'path', 'rush A-call')]),
      second: pressure('q', [tell('inside-call', 'path', 'rush A-call')]),
      turn: 'same',
      coverage: shell('No help away', [
        ['outside-away', 'drop seam-away'],
        ['safety-away', 'drop middle'],
      ]),
      finds: [
        {
          says: [
            'N+W+M are sent into one gap, the A-right, which leaves too little for the B-left+A-left',
            'N is sent there',
            'W is sent there',
            'M is sent there',
            THIN,
          ],
          who: 'N W M',
          gaps: 'A-right B-left A-left',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'one in each gap, the nose playing both A',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call'), tell('outside-call', 'path', 'rush C-call')]),
      coverage: nobody,
    },
    {
      name: 'two in one gap with all others full is a choice',
      look,
      first: pressure('p', [
        noseToCall,
        tell('inside-away', 'path', 'rush A-away'),
        tell('inside-call', 'path', 'rush B-call'),
        tell('outside-call', 'path', 'rush B-call'),
      ]),
    },
    {
      name: 'one A given away, the nose has the other to himself',
      look,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-call'),
        tell('outside-call', 'path', 'rush A-call'),
        tell('safety-call', 'path', 'rush B-call'),
      ]),
    },
    {
      name: 'a man in conflict is not surely there',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call'), tell('end-call', 'movement', 'rush B-call')]),
      second: pressure('q', [tell('end-call', 'movement', 'contain C-call')]),
      turn: 'same',
      coverage: nobody,
    },
    {
      name: 'half of a man beside a whole one',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call+C-call two-gap'),
        tell('inside-call', 'path', 'rush B-call'),
      ]),
      coverage: nobody,
    },
  ],
  cannotTell: [TIE],
};
