import { boxNumbers } from '../../../../src/engine/checks/boxNumbers.ts';
import { asLookId, asRoleId, type Front, type KnownRun } from '../../../../src/engine/index.ts';
import { LOOKS, ODD, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['21 pro I'];
const known = (concept: KnownRun['concept']): KnownRun => ({ concept, side: 'right', passOption: false });
/** The safety in the middle stands too deep to fit a gap that opens at the snap. */
const deepSafety: Front = {
  ...ODD,
  byHand: [{ look: asLookId('look'), role: asRoleId('FS'), x: 0, y: 14 }],
};
const fiveCome = [
  tell('outside-call', 'path', 'rush B-call'),
  tell('end-call', 'movement', 'contain C-call loop'),
  tell('inside-call', 'path', 'rush A-call'),
  tell('@N', 'consequence', 'rush A-away slant'),
  tell('end-away', 'movement', 'contain B-away slant'),
];
const sixCome = pressure('p', [...fiveCome, tell('inside-away', 'path', 'rush A-away')]);
const BUSY = 'everybody near the box rushes or has a gap of his own';

/* Pro I, tight end right: A B C on the left, A B C D on the right, and one more wherever the fullback leads. */
export const examples: CheckExamples = {
  check: boxNumbers,
  found: [
    {
      name: 'six come, and the fullback leads',
      look,
      runs: [known('iso')],
      front: deepSafety,
      first: sixCome,
      finds: [
        {
          says: [
            'against iso to the right the box is 1 short with F leading',
            'by rule, iso to the right hits B-right',
            BUSY,
          ],
          gaps: 'B-right',
          players: 'F',
        },
      ],
    },
    {
      name: 'the guard pulls as well: he takes his gap along, so it is still one',
      look,
      runs: [known('power')],
      front: deepSafety,
      first: sixCome,
      finds: [
        {
          says: [
            'against power to the right the box is 1 short with F leading',
            'by rule, power to the right hits C-right',
            BUSY,
            'G1 takes the A-left along when he pulls, and N+W with it',
          ],
          gaps: 'D-right',
          players: 'F',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'five come, the inside backer who stays takes the lead back',
      look,
      runs: [known('iso'), known('power')],
      front: deepSafety,
      first: pressure('p', fiveCome),
    },
    {
      name: 'nobody leads and nobody pulls',
      look,
      runs: [known('duo')],
      front: deepSafety,
      first: pressure('p', fiveCome),
    },
    { name: 'six come, and this look is known for no run', look, front: deepSafety, first: sixCome },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the look is said to be known for a run it cannot have',
      look: LOOKS['10 doubles'],
      runs: [known('iso')],
      first: sixCome,
      cannotTell: [
        {
          says: ['this look cannot run iso to the right as it is drawn', 'there is no second back to lead'],
        },
      ],
    },
  ],
};
