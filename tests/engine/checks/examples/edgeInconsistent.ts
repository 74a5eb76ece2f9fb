import { edgeInconsistent } from '../../../../src/engine/checks/edgeInconsistent.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['11 tight end'];
const nobody = shell('Nobody told', []);
const spills = pressure('p', [tell('outside-call', 'path', 'contain edge-call spill')]);
const boxesWithEndIn = pressure('p', [
  tell('outside-call', 'path', 'contain edge-call box'),
  tell('end-call', 'movement', 'rush B-call slant'),
]);
const bothBox = pressure('p', [
  tell('outside-call', 'path', 'contain edge-call box'),
  tell('end-call', 'movement', 'rush C-call box'),
]);

export const examples: CheckExamples = {
  check: edgeInconsistent,
  found: [
    {
      name: 'the backer spills, and the safety of that side stays deep',
      look,
      first: spills,
      coverage: shell('Call safety deep', [['safety-call', 'drop half-call']]),
      finds: [
        {
          says: [
            'S spills on the right and nobody is outside him',
            'first tells him: contain D-right spill',
            'nobody is force on that side',
          ],
          who: 'S',
          gaps: 'D-right',
        },
      ],
    },
    {
      name: 'the backer boxes, and the end inside him has left his gap',
      look,
      first: boxesWithEndIn,
      coverage: nobody,
      finds: [
        {
          says: ['S boxes on the right and the gap inside him is open', 'first tells him: contain D-right box'],
          who: 'S',
          gaps: 'D-right',
        },
      ],
    },
    {
      name: 'end and backer both box',
      look,
      first: bothBox,
      finds: [
        {
          severity: 'check',
          says: [
            'RE+S are told to box on one side, right',
            'the outer one turns the ball back to the inner one, who keeps outside as well',
          ],
          who: 'RE S',
          gaps: 'C-right D-right',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the safety outside him is force',
      look,
      first: spills,
      coverage: shell('Call safety forces', [['safety-call', 'drop seam-call force']]),
    },
    {
      name: 'another man has the gap the end left',
      look,
      first: boxesWithEndIn,
      coverage: shell('Inside backer may fit C', [['inside-call', 'drop hook-call may C-call']]),
    },
    {
      name: 'the end spills, the backer boxes',
      look,
      first: pressure('p', [
        tell('outside-call', 'path', 'contain edge-call box'),
        tell('end-call', 'movement', 'rush C-call spill'),
      ]),
    },
    {
      name: 'somebody is in a gap outside the man who spills',
      look,
      first: pressure('p', [tell('end-call', 'movement', 'rush C-call spill')]),
      coverage: nobody,
    },
  ],
  cannotTell: [TIE],
};
