import { peelUnconverted } from '../../../../src/engine/checks/peelUnconverted.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const peels = tell('outside-call', 'path', 'contain edge-call spill peel');
const endIn = tell('end-call', 'movement', 'rush B-call slant');
const OTHER = 'no other rusher of that side is told to contain';

export const examples: CheckExamples = {
  check: peelUnconverted,
  found: [
    {
      name: 'the edge may leave and the end only rushes inside',
      look,
      first: pressure('p', [peels, endIn]),
      finds: [
        {
          says: [
            'S leaves with the back and nobody else contains on the right',
            'first tells him: contain C-right spill peel',
            OTHER,
          ],
          who: 'S',
          gaps: 'C-right',
        },
      ],
    },
    {
      name: 'both edges may leave',
      look,
      first: pressure('p', [
        peels,
        endIn,
        tell('outside-away', 'path', 'rush edge-away peel'),
        tell('end-away', 'movement', 'rush B-away slant'),
      ]),
      finds: [
        {
          says: [
            'J leaves with the back and nobody else contains on the left',
            'first tells him: rush C-left peel',
            OTHER,
          ],
          who: 'J',
          gaps: 'C-left',
        },
        {
          says: [
            'S leaves with the back and nobody else contains on the right',
            'first tells him: contain C-right spill peel',
            OTHER,
          ],
          who: 'S',
          gaps: 'C-right',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the end inside him contains if it is a pass',
      look,
      first: pressure('p', [peels, tell('end-call', 'movement', 'contain B-call slant')]),
    },
    {
      name: 'the edge does not peel',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'contain edge-call spill'), endIn]),
    },
    { name: 'the end contains at base', look, first: pressure('p', [peels]) },
    {
      name: 'a man spies the passer',
      look,
      first: pressure('p', [peels, endIn, tell('inside-away', 'path', 'spy')]),
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the end is told to rush inside by one pressure and to contain by the other',
      look,
      first: pressure('p', [peels, endIn]),
      second: pressure('q', [tell('end-call', 'movement', 'contain C-call loop')]),
      turn: 'same',
      cannotTell: [
        {
          says: [
            'whether anybody contains on the right when S leaves with the back depends on RE',
            'of the two jobs told one contains there and the other does not',
          ],
          who: 'S RE',
          gaps: 'C-right',
        },
      ],
    },
  ],
};
