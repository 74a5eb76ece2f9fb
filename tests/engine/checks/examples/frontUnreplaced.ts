import { frontUnreplaced } from '../../../../src/engine/checks/frontUnreplaced.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const nobody = shell('Nobody told', []);
const noHelpAway = shell('No help away', [
  ['outside-away', 'drop seam-away'],
  ['safety-away', 'drop middle'],
]);
const endIn = pressure('p', [tell('end-away', 'movement', 'rush B-away slant')]);
const TOLD = (job: string): string => `first tells him: ${job}`;

export const examples: CheckExamples = {
  check: frontUnreplaced,
  found: [
    {
      name: 'the end slants in and the backer behind him covers',
      look,
      first: endIn,
      coverage: noHelpAway,
      finds: [
        {
          says: ['LE leaves the C-left and nobody takes his place', TOLD('rush B-left slant')],
          who: 'LE',
          gaps: 'C-left',
        },
      ],
    },
    {
      name: 'the two-gap nose is sent one way, both backers are gone',
      look,
      first: pressure('p', [
        tell('@N', 'movement', 'rush A-call slant'),
        tell('inside-away', 'path', 'drop hook-away'),
        tell('inside-call', 'path', 'drop hook-call'),
      ]),
      coverage: nobody,
      finds: [
        {
          says: ['N leaves the A-left and nobody takes his place', TOLD('rush A-right slant')],
          who: 'N',
          gaps: 'A-left',
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'the outside backer comes behind him', look, first: endIn, coverage: nobody },
    {
      name: 'the end goes where the base front has him anyway',
      look,
      first: pressure('p', [tell('end-away', 'movement', 'rush C-away')]),
      coverage: noHelpAway,
    },
    {
      name: 'a gap nobody left is open: that is another check’s',
      look: LOOKS['12 wing'],
      first: pressure('p', []),
      coverage: nobody,
    },
    {
      name: 'a man who is told two things has not left yet',
      look,
      first: endIn,
      second: pressure('q', [tell('end-away', 'movement', 'contain C-away')]),
      turn: 'same',
      coverage: noHelpAway,
    },
  ],
  cannotTell: [TIE],
};
