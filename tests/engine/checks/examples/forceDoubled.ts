import { forceDoubled } from '../../../../src/engine/checks/forceDoubled.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['11 tight end'];
const quiet = pressure('p', []);

export const examples: CheckExamples = {
  check: forceDoubled,
  found: [
    {
      name: 'safety and outside backer both keep outside',
      look,
      first: quiet,
      coverage: shell('Two forces', [
        ['safety-call', 'drop seam-call may edge-call force'],
        ['outside-call', 'drop curl-flat-call force'],
      ]),
      finds: [
        {
          says: ['S+SS are told force on one side, right', 'one of them is wanted inside, in the alley'],
          who: 'S SS',
        },
      ],
    },
    {
      name: 'the second pressure tells another man force on the side of the first',
      look,
      first: quiet,
      second: pressure('q', [tell('corner-call', 'path', 'drop flat-call force')]),
      turn: 'same',
      finds: [
        {
          says: ['SS+RC are told force on one side, right', 'one of them is wanted inside, in the alley'],
          who: 'SS RC',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the outside backer has the alley',
      look,
      first: quiet,
      coverage: shell('Force and alley', [
        ['safety-call', 'drop seam-call may edge-call force'],
        ['outside-call', 'drop curl-flat-call alley'],
      ]),
    },
    { name: 'one on each side', look, first: quiet },
    {
      name: 'turned opposite the other man forces the other side; the backer there is not told',
      look,
      first: quiet,
      second: pressure('q', [tell('corner-call', 'path', 'drop flat-call force')]),
      turn: 'opposite',
      coverage: shell('Call safety forces', [['safety-call', 'drop seam-call may edge-call force']]),
    },
  ],
  cannotTell: [TIE],
};
