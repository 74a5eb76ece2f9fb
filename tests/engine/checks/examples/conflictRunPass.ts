import { conflictRunPass } from '../../../../src/engine/checks/conflictRunPass.ts';
import type { KnownRun } from '../../../../src/engine/index.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const runOrPass = (concept: KnownRun['concept']): KnownRun => ({ concept, side: 'right', passOption: true });
const endIn = pressure('p', [tell('end-away', 'movement', 'contain B-away slant')]);
const reasons = (job: string): readonly string[] => [
  `first tells him: ${job}`,
  'J takes him out of his zone',
  'the ball is run or thrown off what he does',
];

export const examples: CheckExamples = {
  check: conflictRunPass,
  found: [
    {
      name: 'the end is inside, so the backer in the seam has C as well',
      look,
      runs: [runOrPass('inside-zone')],
      first: endIn,
      finds: [
        {
          says: [
            'J has the C-left against the run and H against the pass, and inside zone can be thrown',
            ...reasons('drop seam-left may C-left force'),
          ],
          who: 'J',
          gaps: 'C-left',
          players: 'H',
        },
      ],
    },
    {
      name: 'two runs with a pass: told once',
      look,
      runs: [runOrPass('inside-zone'), runOrPass('zone-read'), runOrPass('inside-zone')],
      first: endIn,
      finds: [
        {
          says: [
            'J has the C-left against the run and H against the pass, and inside zone or zone read can be thrown',
            ...reasons('drop seam-left may C-left force'),
          ],
          who: 'J',
          gaps: 'C-left',
          players: 'H',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the end keeps C: the backer has the pass only',
      look,
      runs: [runOrPass('inside-zone')],
      first: pressure('p', []),
    },
    {
      name: 'the run has no pass with it',
      look,
      runs: [{ concept: 'inside-zone', side: 'right', passOption: false }],
      first: endIn,
    },
    {
      name: 'he comes, and a safety has his receiver',
      look,
      runs: [runOrPass('inside-zone')],
      first: pressure('p', [
        tell('end-away', 'movement', 'rush B-away slant'),
        tell('outside-away', 'path', 'contain edge-away'),
      ]),
      coverage: shell('Safety on the slot', [['safety-away', 'drop seam-away force']]),
    },
    {
      name: 'his receiver stands attached: both are in front of him',
      look: LOOKS['22 double tight I'],
      runs: [runOrPass('inside-zone')],
      first: endIn,
    },
    {
      name: 'he is told two things: neither is his yet',
      look,
      runs: [runOrPass('inside-zone')],
      first: pressure('p', [tell('outside-away', 'path', 'drop seam-away own C-away')]),
      second: pressure('q', [tell('outside-away', 'path', 'drop curl-flat-away own C-away')]),
      turn: 'same',
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the look is said to be known for a run it cannot have',
      look,
      runs: [runOrPass('power')],
      first: endIn,
      cannotTell: [
        {
          says: [
            'this look cannot run power to the right as it is drawn',
            'no second back, and no tight end on the right, can block the edge out',
          ],
        },
      ],
    },
  ],
};
