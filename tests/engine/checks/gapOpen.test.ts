import { gapOpen } from '../../../src/engine/checks/gapOpen.ts';
import type { Coverage } from '../../../src/engine/index.ts';
import { LOOKS, pressure, ruleJob, tell, THREE_DEEP, who } from '../book.ts';
import { testCheck } from './checkTester.ts';

const doubles = LOOKS['10 doubles'];
const shell = (...tells: readonly (readonly [name: string, job: string])[]): Coverage => ({
  ...THREE_DEEP,
  tells: tells.map(([name, job]) => ({ who: who(name), cases: [{ when: [], job: ruleJob(job) }] })),
});
/** On the left nobody outside the line may fit a gap. */
const noHelpAway = shell(['outside-away', 'drop seam-away'], ['safety-away', 'drop middle']);
/** On neither side. */
const noHelp = shell(
  ['outside-away', 'drop seam-away'],
  ['safety-away', 'drop middle'],
  ['outside-call', 'drop seam-call'],
  ['safety-call', 'drop middle'],
);
const toLeft = pressure('p', [tell('end-away', 'movement', 'rush B-away slant')]);
const bothIn = pressure('p', [
  tell('end-away', 'movement', 'rush B-away slant'),
  tell('end-call', 'movement', 'rush B-call slant'),
]);
const noseToCall = pressure('p', [tell('@N', 'movement', 'rush A-call slant')]);

testCheck(
  gapOpen,
  ['gapOpen'],
  [
    {
      name: 'the end leaves C and nobody outside him may fit',
      look: doubles,
      first: toLeft,
      coverage: noHelpAway,
      finds: [
        {
          says: ['nobody owns C-left', 'nobody is sent there, and nobody who is free may fit it'],
          gaps: 'C-left',
        },
      ],
    },
    {
      name: 'both ends leave C: one finding for each',
      look: doubles,
      first: bothIn,
      coverage: noHelp,
      finds: [
        { says: ['nobody owns C-left', 'nobody is sent there, and nobody who is free may fit it'], gaps: 'C-left' },
        { says: ['nobody owns C-right', 'nobody is sent there, and nobody who is free may fit it'], gaps: 'C-right' },
      ],
    },
    {
      name: 'three gaps for two men: the set is told',
      look: doubles,
      first: noseToCall,
      coverage: noHelpAway,
      finds: [
        {
          says: ['nobody is left for A-left', 'A-left+B-left+C-left can only be reached by LE+W'],
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
          says: ['nobody is left for B-left', 'B-left+C-left can only be reached by LE'],
          who: 'LE',
          gaps: 'B-left',
        },
        {
          says: ['nobody owns A-left', 'nobody is sent there, and nobody who is free may fit it'],
          gaps: 'A-left',
        },
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
      coverage: shell(['outside-away', 'drop seam-away'], ['safety-away', 'drop hole may A-away+B-away+C-away']),
      finds: [
        {
          says: ['nobody is left for C-left+B-left', 'A-left+B-left+C-left can only be reached by FS'],
          who: 'FS',
          gaps: 'C-left B-left',
        },
      ],
    },
    {
      name: 'a wing makes a gap too many',
      look: LOOKS['12 wing'],
      first: pressure('p', []),
      coverage: shell(),
      finds: [
        { says: ['nobody owns D-right', 'nobody is sent there, and nobody who is free may fit it'], gaps: 'D-right' },
      ],
    },
  ],
  [
    { name: 'the outside backer may fit', look: doubles, first: toLeft, coverage: shell() },
    { name: 'the shell may fit it', look: doubles, first: toLeft, coverage: THREE_DEEP },
    { name: 'both ends leave, both outside backers may fit', look: doubles, first: bothIn, coverage: shell() },
    {
      name: 'two men for the three gaps, and the nose stays',
      look: doubles,
      first: pressure('p', [tell('inside-away', 'path', 'rush A-call')]),
      coverage: shell(['outside-away', 'drop seam-away may C-away'], ['safety-away', 'drop middle']),
    },
    { name: 'the nose leaves one A, the backers slide', look: doubles, first: noseToCall, coverage: shell() },
    { name: 'a tight end makes one more, somebody has it', look: LOOKS['11 tight end'], first: pressure('p', []) },
    {
      name: 'a lineman told both A: that is another check’s',
      look: doubles,
      first: noseToCall,
      second: pressure('q', [tell('@N', 'movement', 'rush A-away slant')]),
      turn: 'same',
      coverage: noHelpAway,
    },
  ],
);
