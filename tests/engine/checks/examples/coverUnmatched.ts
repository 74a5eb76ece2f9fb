import { coverUnmatched } from '../../../../src/engine/checks/coverUnmatched.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const doubles = LOOKS['10 doubles'];
const trips = LOOKS['10 trips'];
const quiet = pressure('p', []);
const edgeAndInside = [tell('outside-call', 'path', 'contain edge-call'), tell('inside-away', 'path', 'rush A-away')];
/** Man to man on everybody but the back. */
const manNoBack = shell('Man, nobody on the back', [
  ['corner-call', 'man #1-call'],
  ['corner-away', 'man #1-away'],
  ['safety-call', 'man #2-call'],
  ['outside-away', 'man #2-away'],
  ['safety-away', 'drop middle'],
]);
const manNoThird: readonly (readonly [string, string])[] = [
  ['corner-call', 'man #1-call'],
  ['corner-away', 'man #1-away'],
  ['safety-call', 'man #2-call'],
  ['inside-away', 'man back'],
  ['safety-away', 'drop middle'],
];
const NOBODY = 'nobody drops to a zone that takes him, and nobody has him man to man';

export const examples: CheckExamples = {
  check: coverUnmatched,
  found: [
    {
      name: 'six come, and two seam players have three receivers',
      look: doubles,
      first: pressure('p', [...edgeAndInside, tell('inside-call', 'path', 'rush A-call')]),
      finds: [
        {
          says: ['nobody has T', 'Y+H+T can only be taken by J+SS'],
          who: 'J SS',
          players: 'T',
        },
      ],
    },
    {
      name: 'man to man, and nobody on the third receiver of trips',
      look: trips,
      first: quiet,
      coverage: shell('Man, nobody on the third', manNoThird),
      finds: [{ says: ['nobody has H', NOBODY], players: 'H' }],
    },
    {
      name: 'a man is told two things, but neither of them takes the back',
      look: doubles,
      first: pressure('p', [tell('outside-away', 'path', 'man #2-away')]),
      second: pressure('q', [tell('outside-away', 'path', 'drop flat-away')]),
      turn: 'same',
      coverage: manNoBack,
      finds: [{ says: ['nobody has T', NOBODY], players: 'T' }],
    },
  ],
  leftAlone: [
    { name: 'five come, the inside backer who stays has the back', look: doubles, first: pressure('p', edgeAndInside) },
    {
      name: 'the outside backer has the third receiver',
      look: trips,
      first: quiet,
      coverage: shell('Man on the third', [...manNoThird, ['outside-call', 'man #3-call']]),
    },
    {
      name: 'six come, and the edge leaves with the back',
      look: doubles,
      first: pressure('p', [
        tell('outside-call', 'path', 'contain edge-call peel'),
        tell('inside-away', 'path', 'rush A-away'),
        tell('inside-call', 'path', 'rush A-call'),
      ]),
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the backer is told to rush by one pressure and to take the back by the other',
      look: doubles,
      first: pressure('p', [tell('inside-call', 'path', 'rush A-call')]),
      second: pressure('q', [tell('inside-call', 'path', 'man back')]),
      turn: 'same',
      coverage: manNoBack,
      cannotTell: [
        {
          says: [
            'whether anybody has T depends on M',
            'he is told two things, and covers somebody by one of them only',
          ],
          who: 'M',
          players: 'T',
        },
      ],
    },
  ],
};
