import { laneEmpty } from '../../../../src/engine/checks/laneEmpty.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const twoInA = pressure('p', [tell('inside-call', 'path', 'rush A-call'), tell('@N', 'movement', 'rush A-call slant')]);
const outsideOnly = [tell('end-call', 'movement', 'contain C-call'), tell('end-away', 'movement', 'contain C-away')];

export const examples: CheckExamples = {
  check: laneEmpty,
  found: [
    {
      name: 'nose and backer in one A, the other A and the B beside them are empty',
      look,
      first: twoInA,
      finds: [
        {
          says: ['N+M rush one lane, the A-right, and nobody rushes the A-left+B-right next to it'],
          who: 'N M',
          gaps: 'A-right A-left B-right',
        },
      ],
    },
    {
      name: 'the nose drops, everybody else comes outside',
      look,
      first: pressure('p', [...outsideOnly, tell('@N', 'movement', 'drop hook-call')]),
      finds: [{ says: ['nobody rushes inside the tackles'], gaps: 'B-left A-left A-right B-right' }],
    },
    {
      name: 'end and backer both contain, the end’s gap inside is a run gap only',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'contain B-call slant'),
        tell('outside-call', 'path', 'contain edge-call'),
      ]),
      finds: [
        {
          says: ['RE+S contain on one side, right, and nobody rushes the B-right inside them'],
          who: 'RE S',
          gaps: 'C-right B-right',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the nose takes the other A, the end takes B',
      look,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-call'),
        tell('@N', 'movement', 'rush A-away slant'),
        tell('end-call', 'movement', 'rush B-call slant'),
      ]),
    },
    {
      name: 'the end would contain at base: he goes inside when the backer is told to',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'contain edge-call')]),
    },
    { name: 'the nose at home rushes between both A', look, first: pressure('p', outsideOnly) },
    {
      name: 'the backer contains, the end rushes B',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call slant'),
        tell('outside-call', 'path', 'contain edge-call'),
      ]),
    },
    {
      name: 'the nose is told both A: he may be in the empty one',
      look,
      first: twoInA,
      second: pressure('q', [tell('@N', 'movement', 'rush A-away slant')]),
      turn: 'same',
    },
  ],
  cannotTell: [TIE],
};
