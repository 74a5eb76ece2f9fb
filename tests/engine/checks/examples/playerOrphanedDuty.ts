import { playerOrphanedDuty } from '../../../../src/engine/checks/playerOrphanedDuty.ts';
import { LOOKS, need, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const quiet = pressure('p', []);
/** The outside backer away has the seam and the force there; another man may take the seam, or nobody. */
const seamShell = (...takers: readonly string[]) =>
  shell(
    'Seam away',
    [
      ['outside-away', 'drop seam-away force'],
      ['safety-call', 'drop seam-call force'],
    ],
    [need('seam-away', ...takers)],
  );
const backerComes = pressure('q', [tell('outside-away', 'path', 'contain edge-away')]);
const STRONGER = 'the second is the stronger telling';

export const examples: CheckExamples = {
  check: playerOrphanedDuty,
  found: [
    {
      name: 'the backer comes, and nobody else drops to his seam',
      look,
      first: quiet,
      second: backerComes,
      turn: 'same',
      coverage: seamShell('outside-away'),
      finds: [
        {
          says: [
            'J gives up drop seam-left force, and nobody takes it over',
            'the shell needs that zone and nobody else drops there',
            STRONGER,
          ],
          who: 'J',
        },
      ],
    },
    {
      name: 'another man takes the seam, but nobody the force',
      look,
      first: quiet,
      second: backerComes,
      turn: 'same',
      coverage: seamShell('inside-away'),
      finds: [
        {
          says: [
            'J gives up drop seam-left force, and nobody takes it over',
            'nobody else is force on that side',
            STRONGER,
          ],
          who: 'J',
        },
      ],
    },
    {
      name: 'the backer who has the back comes, and nobody takes the back',
      look,
      first: quiet,
      second: pressure('q', [tell('inside-call', 'path', 'rush A-call')]),
      turn: 'same',
      coverage: shell('Man free', [
        ['inside-call', 'man back'],
        ['corner-call', 'man #1-call'],
        ['corner-away', 'man #1-away'],
        ['safety-call', 'man #2-call'],
        ['outside-away', 'man #2-away'],
        ['safety-away', 'drop middle'],
      ]),
      finds: [
        {
          says: ['M gives up man T, and nobody takes it over', 'nobody else has that receiver', STRONGER],
          who: 'M',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'he boxes the edge gap himself, and another man takes the seam',
      look,
      first: quiet,
      second: pressure('q', [tell('outside-away', 'path', 'contain edge-away box')]),
      turn: 'same',
      coverage: seamShell('inside-away'),
    },
    {
      name: 'the shell can do without his zone, and the force is somebody else’s',
      look,
      first: quiet,
      second: backerComes,
      turn: 'same',
      coverage: shell('Corner forces', [
        ['outside-away', 'drop seam-away'],
        ['corner-away', 'drop flat-away force'],
      ]),
    },
    {
      name: 'another man takes the back',
      look,
      first: quiet,
      second: pressure('q', [tell('inside-call', 'path', 'rush A-call'), tell('inside-away', 'path', 'man back')]),
      turn: 'same',
      coverage: shell('Man free', [['inside-call', 'man back']]),
    },
    {
      name: 'the first pressure sends him itself: its own shell counts on nothing from him',
      look,
      first: backerComes,
      coverage: seamShell('outside-away'),
    },
  ],
  cannotTell: [TIE],
};
