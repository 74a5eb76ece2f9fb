import { lineTooFar } from '../../../../src/engine/checks/lineTooFar.ts';
import { asLookId, asRoleId } from '../../../../src/engine/index.ts';
import { LOOKS, ODD, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const endToA = pressure('p', [tell('end-call', 'movement', 'rush A-call slant')]);
const AT_RULE = 'alignment rule 1 of the front puts him there';

/* A 5 technique stands outside the tackle, in C: A is two gaps over ("Align to Win Part 3", Blitzology, 28 Apr 2019). */
export const examples: CheckExamples = {
  check: lineTooFar,
  found: [
    {
      name: 'an end outside the tackle sticks all the way to A',
      look,
      first: endToA,
      finds: [
        {
          says: [
            'RE must move 2 gaps, from the C-right to the A-right',
            AT_RULE,
            'first tells him: rush A-right slant',
          ],
          who: 'RE',
          gaps: 'A-right',
        },
      ],
    },
    {
      name: 'across the ball it is three: it cannot be done',
      look,
      first: pressure('p', [tell('end-call', 'movement', 'rush A-away slant')]),
      finds: [
        {
          severity: 'stop',
          says: ['RE must move 3 gaps, from the C-right to the A-left', AT_RULE, 'first tells him: rush A-left slant'],
          who: 'RE',
          gaps: 'A-left',
        },
      ],
    },
    {
      name: 'the nose loops to contain outside a tight end',
      look: LOOKS['11 tight end'],
      first: pressure('p', [tell('@N', 'movement', 'contain edge-call loop')]),
      finds: [
        {
          severity: 'stop',
          says: [
            'N must move 3 gaps, from the A-right to the D-right',
            AT_RULE,
            'first tells him: contain D-right loop',
          ],
          who: 'N',
          gaps: 'D-right',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'stood inside the tackle for this look, it is one gap',
      look,
      first: endToA,
      front: { ...ODD, byHand: [{ look: asLookId('look'), role: asRoleId('RE'), x: 2.3, y: 0.8 }] },
    },
    {
      name: 'one gap, as a lineman’s trade has it',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call slant'),
        tell('@N', 'movement', 'rush B-away loop'),
      ]),
    },
    {
      name: 'a backer may come from anywhere',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush A-away')]),
    },
    {
      name: 'an end who drops moves into no gap',
      look,
      first: pressure('p', [tell('end-call', 'movement', 'drop hook-call')]),
    },
    {
      name: 'told two things: where he goes is not decided',
      look,
      first: endToA,
      second: pressure('q', [tell('end-call', 'movement', 'contain C-call')]),
      turn: 'same',
    },
  ],
  cannotTell: [TIE],
};
