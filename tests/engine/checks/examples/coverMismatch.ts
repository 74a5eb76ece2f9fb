import { coverMismatch } from '../../../../src/engine/checks/coverMismatch.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const doubles = LOOKS['10 doubles'];
const trips = LOOKS['10 trips'];
const flexed = 'line te:Y@9,-1.5 wr:X@-18 wr:H@-9,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@1.5,-5';
const quiet = pressure('p', []);
const endDrops = pressure('p', [
  tell('inside-call', 'path', 'rush B-call'),
  tell('end-call', 'movement', 'drop hook-call'),
]);
const backerOnSecond = shell('Man, backer on the second', [
  ['inside-call', 'man #2-call'],
  ['safety-call', 'drop middle'],
]);

export const examples: CheckExamples = {
  check: coverMismatch,
  found: [
    {
      name: 'an end drops under the third receiver of trips',
      look: trips,
      first: endDrops,
      finds: [
        {
          says: ['RE is left with H', 'RE takes him out of his zone', 'he is a lineman, the receiver is split wide'],
          who: 'RE',
          players: 'H',
        },
      ],
    },
    {
      name: 'an inside backer man to man on the slot',
      look: doubles,
      first: quiet,
      coverage: backerOnSecond,
      finds: [
        {
          says: ['M is left with Y', 'M has him man to man', 'he starts inside the box, the receiver is split wide'],
          who: 'M',
          players: 'Y',
        },
      ],
    },
    {
      name: 'the backer of that side comes, so the other one has the third receiver across the ball',
      look: trips,
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call')]),
      finds: [
        {
          says: [
            'W is left with H',
            'W takes him out of his zone',
            'he starts inside the box on the other side of the ball',
          ],
          who: 'W',
          players: 'H',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the end rushes, the backer has the hook: the third receiver is his trade',
      look: trips,
      first: pressure('p', [tell('end-call', 'movement', 'rush B-call')]),
    },
    {
      name: 'the safety has the slot',
      look: doubles,
      first: quiet,
      coverage: shell('Man, safety on the second', [
        ['safety-call', 'man #2-call'],
        ['inside-call', 'man back'],
      ]),
    },
    { name: 'the man in the slot is the tight end', look: flexed, first: quiet, coverage: backerOnSecond },
    { name: 'the end drops, and the third receiver is the back', look: doubles, first: endDrops },
    {
      name: 'the outside backer starts outside the box',
      look: doubles,
      first: quiet,
      coverage: shell('Man, outside backer on the second', [['outside-call', 'man #2-call']]),
    },
  ],
  cannotTell: [TIE],
};
