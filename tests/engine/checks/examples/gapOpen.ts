import { gapOpen } from '../../../../src/engine/checks/gapOpen.ts';
import { LOOKS, pressure, shell, tell, THREE_DEEP } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const doubles = LOOKS['10 doubles'];
/** Nobody is told anything, so whoever is free may fit at base. */
const nobody = shell('Nobody told', []);
/** On the left nobody outside the line may fit a gap. */
const noHelpAway = shell('No help away', [
  ['outside-away', 'drop seam-away'],
  ['safety-away', 'drop middle'],
]);
/** On neither side. */
const noHelp = shell('No help', [
  ['outside-away', 'drop seam-away'],
  ['safety-away', 'drop middle'],
  ['outside-call', 'drop seam-call'],
  ['safety-call', 'drop middle'],
]);
const endIn = pressure('p', [tell('end-away', 'movement', 'rush B-away slant')]);
const bothIn = pressure('p', [
  tell('end-away', 'movement', 'rush B-away slant'),
  tell('end-call', 'movement', 'rush B-call slant'),
]);
const noseToCall = pressure('p', [tell('@N', 'movement', 'rush A-call slant')]);
const SENT = 'nobody is sent there, and nobody who is free may fit it';

export const examples: CheckExamples = {
  check: gapOpen,
  found: [
    {
      name: 'the end leaves C and nobody outside him may fit',
      look: doubles,
      first: endIn,
      coverage: noHelpAway,
      finds: [{ says: ['nobody owns the C-left', SENT], gaps: 'C-left' }],
    },
    {
      name: 'both ends leave C: one finding for each',
      look: doubles,
      first: bothIn,
      coverage: noHelp,
      finds: [
        { says: ['nobody owns the C-left', SENT], gaps: 'C-left' },
        { says: ['nobody owns the C-right', SENT], gaps: 'C-right' },
      ],
    },
    {
      name: 'three gaps for two men: the set is told',
      look: doubles,
      first: noseToCall,
      coverage: noHelpAway,
      finds: [
        {
          says: ['nobody is left for the A-left', 'the A-left+B-left+C-left can only be reached by LE+W'],
          who: 'LE W',
          gaps: 'A-left',
        },
      ],
    },
    {
      name: 'two gaps open for different reasons: told apart, from left to right',
      look: doubles,
      first: pressure('p', [tell('@N', 'movement', 'rush A-call slant'), tell('inside-away', 'path', 'rush A-call')]),
      coverage: noHelpAway,
      finds: [
        {
          says: ['nobody is left for the B-left', 'the B-left+C-left can only be reached by LE'],
          who: 'LE',
          gaps: 'B-left',
        },
        { says: ['nobody owns the A-left', SENT], gaps: 'A-left' },
      ],
    },
    {
      name: 'three gaps for one man, two stay open: told once',
      look: doubles,
      first: pressure('p', [
        tell('@N', 'movement', 'rush A-call slant'),
        tell('end-away', 'movement', 'rush A-call slant'),
        tell('inside-away', 'path', 'rush A-call'),
      ]),
      coverage: shell('One man for three gaps', [
        ['outside-away', 'drop seam-away'],
        ['safety-away', 'drop hole may A-away+B-away+C-away'],
      ]),
      finds: [
        {
          says: ['nobody is left for the C-left+B-left', 'the A-left+B-left+C-left can only be reached by FS'],
          who: 'FS',
          gaps: 'C-left B-left',
        },
      ],
    },
    {
      name: 'a wing makes a gap too many',
      look: LOOKS['12 wing'],
      first: pressure('p', []),
      coverage: nobody,
      finds: [{ says: ['nobody owns the D-right', SENT], gaps: 'D-right' }],
    },
  ],
  leftAlone: [
    { name: 'the outside backer may fit', look: doubles, first: endIn, coverage: nobody },
    { name: 'the shell may fit it', look: doubles, first: endIn, coverage: THREE_DEEP },
    { name: 'both ends leave, both outside backers may fit', look: doubles, first: bothIn, coverage: nobody },
    {
      name: 'two men for the three gaps, and the nose stays',
      look: doubles,
      first: pressure('p', [tell('inside-away', 'path', 'rush A-call')]),
      coverage: shell('Outside backer may fit C', [
        ['outside-away', 'drop seam-away may C-away'],
        ['safety-away', 'drop middle'],
      ]),
    },
    { name: 'the nose leaves one A, the backers slide', look: doubles, first: noseToCall, coverage: nobody },
    { name: 'a tight end makes one more, somebody has it', look: LOOKS['11 tight end'], first: pressure('p', []) },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the nose is told both A: which one stays open depends on him',
      look: doubles,
      first: noseToCall,
      second: pressure('q', [tell('@N', 'movement', 'rush A-away slant')]),
      turn: 'same',
      coverage: noHelpAway,
      cannotTell: [
        {
          says: [
            'whether anybody has the A-left+A-right depends on N',
            'nobody else is sent there, and he is told two things',
          ],
          who: 'N',
          gaps: 'A-left A-right',
        },
      ],
    },
  ],
};
