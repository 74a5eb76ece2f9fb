import { optionUnassigned } from '../../../../src/engine/checks/optionUnassigned.ts';
import { asLookId, asRoleId, type KnownRun } from '../../../../src/engine/index.ts';
import { LOOKS, ODD, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const known = (concept: KnownRun['concept']): KnownRun => ({ concept, side: 'right', passOption: false });
/** Off the edge from the line, so that he cannot come over the top for anybody. */
const edgeComes = tell('outside-call', 'path', 'contain edge-call', { kind: 'depth', depth: 1 });
const backerAcross = tell('inside-call', 'path', 'rush A-away');
const noseAway = tell('@N', 'movement', 'rush A-away slant');
const noseToCall = tell('@N', 'movement', 'rush A-call slant');

const hangsOnTheNose = {
  says: [
    'whether all of midline to the right is taken depends on N',
    'he is told two things, and one of them leaves a man of the option to nobody',
  ],
  who: 'N',
};

/*
 * Midline: the first lineman outside the guard (the right end) is read. The dive hits the right A, the quarterback keeps in the
 * right B (from memory, beside the concept).
 */
export const examples: CheckExamples = {
  check: optionUnassigned,
  found: [
    {
      name: 'nose and backer both leave for the other A: the read man cannot have dive and quarterback',
      look,
      runs: [known('midline')],
      first: pressure('p', [noseAway, backerAcross, edgeComes]),
      finds: [
        {
          says: [
            'against midline to the right nobody has the quarterback',
            'by rule, RE is read: he comes down inside and takes the dive, so the ball is kept',
          ],
          who: 'RE',
        },
      ],
    },
    {
      name: 'against two options: one finding for each',
      look,
      runs: [known('midline'), known('zone-read'), known('midline')],
      first: pressure('p', [noseAway, backerAcross, edgeComes]),
      finds: [
        {
          says: [
            'against midline to the right nobody has the quarterback',
            'by rule, RE is read: he comes down inside and takes the dive, so the ball is kept',
          ],
          who: 'RE',
        },
        {
          says: [
            'against midline to the right nobody has the quarterback',
            'by rule, RE is read: he comes down inside and takes the dive, so the ball is kept',
          ],
          who: 'RE',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'the nose takes the dive, the read man the quarterback',
      look,
      runs: [known('midline')],
      first: pressure('p', [noseToCall, backerAcross, edgeComes]),
    },
    {
      name: 'the nose is told two things, but dive and quarterback are taken either way',
      look,
      runs: [known('midline')],
      first: pressure('p', [noseToCall]),
      second: pressure('q', [noseAway, tell('inside-call', 'path', 'rush A-call')]),
      turn: 'same',
    },
    {
      name: 'no option is known of this look',
      look,
      runs: [known('inside-zone')],
      first: pressure('p', [noseAway, backerAcross, edgeComes]),
    },
    {
      name: 'a run that is no option and cannot be run here: that is another check’s',
      look,
      runs: [known('iso')],
      first: pressure('p', [noseAway, backerAcross, edgeComes]),
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'nobody stands where the read man should be',
      look,
      runs: [known('midline')],
      first: pressure('p', []),
      front: { ...ODD, byHand: [{ look: asLookId('look'), role: asRoleId('RE'), x: 1, y: 0.8 }] },
      cannotTell: [
        {
          says: [
            'who has what against midline to the right cannot be told',
            'nobody stands where the man who is read should be',
          ],
        },
      ],
    },
    {
      name: 'the dive hangs on a nose who is told both A, to the call by the first',
      look,
      runs: [known('midline')],
      first: pressure('p', [noseToCall, backerAcross, edgeComes]),
      second: pressure('q', [noseAway]),
      turn: 'same',
      cannotTell: [hangsOnTheNose],
    },
    {
      name: 'the far end is told two things as well, but that leaves nobody out',
      look,
      runs: [known('midline')],
      first: pressure('p', [noseToCall, backerAcross, edgeComes, tell('end-away', 'movement', 'rush B-away slant')]),
      second: pressure('q', [noseAway, tell('end-away', 'movement', 'contain C-away loop')]),
      turn: 'same',
      cannotTell: [hangsOnTheNose],
    },
    {
      name: 'and to the call by the second: with his first job alone the quarterback would be open',
      look,
      runs: [known('midline')],
      first: pressure('p', [noseAway, backerAcross, edgeComes]),
      second: pressure('q', [noseToCall]),
      turn: 'same',
      cannotTell: [hangsOnTheNose],
    },
    {
      name: 'the look cannot have the option it is said to be known for',
      look,
      runs: [known('inside-veer')],
      first: pressure('p', []),
      cannotTell: [
        {
          says: [
            'this look cannot run inside veer to the right as it is drawn',
            'there is no second back and no wing to pitch to',
          ],
        },
      ],
    },
  ],
};
