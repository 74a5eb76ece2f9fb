import { containMissing } from '../../../../src/engine/checks/containMissing.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const NOBODY = 'no rusher is told to contain there, and nobody spies the passer';
const endIn = pressure('p', [tell('end-call', 'movement', 'rush B-call slant')]);
const bothIn = [tell('end-call', 'movement', 'rush B-call slant'), tell('end-away', 'movement', 'rush B-away slant')];

export const examples: CheckExamples = {
  check: containMissing,
  found: [
    {
      name: 'the end goes inside and nobody comes outside him',
      look,
      first: endIn,
      finds: [{ says: ['nobody contains on the right', NOBODY], gaps: 'C-right' }],
    },
    {
      name: 'both ends pinch: one finding for each side',
      look,
      first: pressure('p', bothIn),
      finds: [
        { says: ['nobody contains on the left', NOBODY], gaps: 'C-left' },
        { says: ['nobody contains on the right', NOBODY], gaps: 'C-right' },
      ],
    },
    {
      name: 'the backer comes off the edge, but nobody told him to contain',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call slant'),
        tell('outside-call', 'path', 'rush edge-call'),
      ]),
      finds: [
        {
          severity: 'check',
          says: [
            'S rushes the edge on the right and is not told to contain',
            'nobody else contains there, and nobody spies the passer',
          ],
          who: 'S',
          gaps: 'C-right',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the backer contains outside him',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call slant'),
        tell('outside-call', 'path', 'contain edge-call'),
      ]),
    },
    { name: 'the ends contain at base', look, first: pressure('p', []) },
    {
      name: 'inside against the run, outside if it is a pass',
      look,
      first: pressure('p', [tell('end-call', 'movement', 'contain B-call slant')]),
    },
    {
      name: 'a man spies the passer',
      look,
      first: pressure('p', [...bothIn, tell('inside-away', 'path', 'spy')]),
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the end is told to contain by one pressure and to go inside by the other',
      look,
      first: endIn,
      second: pressure('q', [tell('end-call', 'movement', 'contain C-call loop')]),
      turn: 'same',
      cannotTell: [
        {
          says: [
            'whether anybody contains on the right depends on RE',
            'of the two jobs told one contains there and the other does not',
          ],
          who: 'RE',
          gaps: 'C-right',
        },
      ],
    },
  ],
};
