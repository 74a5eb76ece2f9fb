import { forceMissing } from '../../../../src/engine/checks/forceMissing.ts';
import { LOOKS, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['11 tight end'];
const NOBODY = 'no man is told force there, and nobody in the edge gap boxes';
const quiet = pressure('p', []);
/** The call-side safety stays deep; on the other side the outside backer forces. */
const deepSafety = shell('Call safety deep', [
  ['safety-call', 'drop half-call'],
  ['outside-away', 'drop seam-away may edge-away force'],
]);
const forceBothSides = shell('Force on both sides', [
  ['safety-call', 'drop seam-call may edge-call force'],
  ['outside-away', 'drop seam-away may edge-away force'],
]);

export const examples: CheckExamples = {
  check: forceMissing,
  found: [
    {
      name: 'the call-side safety stays deep',
      look,
      first: quiet,
      coverage: deepSafety,
      finds: [{ says: ['nobody is force on the right', NOBODY], gaps: 'D-right' }],
    },
    {
      name: 'nobody is told force on either side',
      look,
      first: quiet,
      coverage: shell('Nobody told', []),
      finds: [
        {
          severity: 'check',
          says: [
            'LE contains in the edge gap on the left, but nobody is told force there',
            'if he is to turn the ball back himself, tell him to box',
          ],
          who: 'LE',
          gaps: 'C-left',
        },
        { says: ['nobody is force on the right', NOBODY], gaps: 'D-right' },
      ],
    },
  ],
  leftAlone: [
    { name: 'the call-side safety comes down', look, first: quiet, coverage: forceBothSides },
    {
      name: 'the man in the edge gap boxes',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'contain edge-call box')]),
      coverage: deepSafety,
    },
    {
      name: 'he spills, and the safety outside him is force',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'contain edge-call spill')]),
      coverage: forceBothSides,
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the safety is told force by one pressure and the middle by the other',
      look,
      first: pressure('p', [tell('safety-call', 'path', 'drop seam-call force')]),
      second: pressure('q', [tell('safety-call', 'path', 'drop middle')]),
      turn: 'same',
      cannotTell: [
        {
          says: [
            'whether the right has a force depends on SS',
            'of the two jobs told one turns the ball back there and the other does not',
          ],
          who: 'SS',
          gaps: 'D-right',
        },
      ],
    },
  ],
};
