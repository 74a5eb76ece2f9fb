import { coverNoPost } from '../../../../src/engine/checks/coverNoPost.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const quiet = pressure('p', []);
const NOBODY = 'nobody has the deep middle';
const thirds = [
  ['corner-call', 'drop third-call'],
  ['corner-away', 'drop third-away'],
] as const;

export const examples: CheckExamples = {
  check: coverNoPost,
  found: [
    {
      name: 'two thirds and nobody between them',
      look,
      first: quiet,
      coverage: shell('Two thirds', thirds),
      finds: [{ says: [NOBODY] }],
    },
    {
      name: 'man to man without a free safety',
      look,
      first: quiet,
      coverage: shell('Man, nobody free', [['safety-call', 'man #2-call']]),
      finds: [{ says: [NOBODY] }],
    },
    {
      name: 'a half and one quarter leave a quarter of the field',
      look,
      first: quiet,
      coverage: shell('A half and a quarter', [
        ['safety-call', 'drop half-call'],
        ['safety-away', 'drop quarter-away'],
      ]),
      finds: [{ says: [NOBODY] }],
    },
  ],
  leftAlone: [
    {
      name: 'a safety between the thirds',
      look,
      first: quiet,
      coverage: shell('Three deep', [...thirds, ['safety-away', 'drop middle']]),
    },
    {
      name: 'two halves share the deep field',
      look,
      first: quiet,
      coverage: shell('Two deep', [
        ['safety-call', 'drop half-call'],
        ['safety-away', 'drop half-away'],
      ]),
    },
    {
      name: 'a half and two quarters',
      look,
      first: quiet,
      coverage: shell('Half and quarters', [
        ['safety-call', 'drop half-call'],
        ['safety-away', 'drop quarter-away'],
        ['corner-away', 'drop quarter-away'],
      ]),
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the safety is told the middle by one pressure and the seam by the other',
      look,
      first: pressure('p', [tell('safety-away', 'path', 'drop middle')]),
      second: pressure('q', [tell('safety-away', 'path', 'drop seam-away')]),
      turn: 'same',
      coverage: shell('Two thirds', thirds),
      cannotTell: [
        {
          says: [
            'whether anybody has the deep middle depends on FS',
            'of the two jobs told one is deep and the other is not',
          ],
          who: 'FS',
        },
      ],
    },
  ],
};
