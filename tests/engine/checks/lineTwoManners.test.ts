import { lineTwoManners } from '../../../src/engine/checks/lineTwoManners.ts';
import { LOOKS, pressure, tell } from '../book.ts';
import { testCheck } from './checkTester.ts';

const look = LOOKS['11 tight end'];
const straight = pressure('p', [tell('end-call', 'movement', 'rush C-call')]);

testCheck(
  lineTwoManners,
  ['lineTwoManners', 'twoTellings'],
  [
    {
      name: 'once penetrating, once looping round a mate',
      look,
      first: straight,
      second: pressure('q', [tell('end-call', 'movement', 'rush C-call loop over:outside-call')]),
      turn: 'same',
      finds: [
        {
          says: [
            'RE is told two things: the first says rush C-right, the second says rush C-right loop over:S',
            'the same gap, taught two ways',
          ],
          who: 'RE',
          gaps: 'C-right',
        },
      ],
    },
    {
      name: 'once rushing, once containing',
      look,
      first: straight,
      second: pressure('q', [tell('end-call', 'consequence', 'contain C-call')]),
      turn: 'same',
      finds: [
        {
          says: [
            'RE is told two things: the first says rush C-right, the second says contain C-right',
            'the same gap, taught two ways',
          ],
          who: 'RE',
          gaps: 'C-right',
        },
      ],
    },
  ],
  [
    {
      name: 'the same way',
      look,
      first: straight,
      second: pressure('q', [tell('end-call', 'consequence', 'rush C-call')]),
      turn: 'same',
    },
    {
      name: 'another gap is another check’s',
      look,
      first: straight,
      second: pressure('q', [tell('end-call', 'movement', 'rush B-call loop')]),
      turn: 'same',
    },
    {
      name: 'turned opposite it is the other end',
      look,
      first: straight,
      second: pressure('q', [tell('end-call', 'movement', 'rush C-call loop')]),
      turn: 'opposite',
    },
    {
      name: 'a linebacker’s first manner stands',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush D-call')]),
      second: pressure('q', [tell('outside-call', 'path', 'rush D-call slant')]),
      turn: 'same',
    },
  ],
);
