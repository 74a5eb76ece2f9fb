import { lineTwoManners } from '../../../../src/engine/checks/lineTwoManners.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['11 tight end'];
const straight = pressure('p', [tell('end-call', 'movement', 'rush C-call')]);
const round = pressure('q', [tell('end-call', 'movement', 'rush C-call loop over:outside-call')]);

export const examples: CheckExamples = {
  check: lineTwoManners,
  found: [
    {
      name: 'once penetrating, once looping round a mate',
      look,
      first: straight,
      second: round,
      turn: 'same',
      finds: [
        {
          says: [
            'RE is told two things: first says rush C-right, second says rush C-right loop over:S',
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
            'RE is told two things: first says rush C-right, second says contain C-right',
            'the same gap, taught two ways',
          ],
          who: 'RE',
          gaps: 'C-right',
        },
      ],
    },
    {
      name: 'once first of two, once second',
      look,
      first: pressure('p', [tell('@N', 'movement', 'rush A-call first:inside-call')]),
      second: pressure('q', [tell('@N', 'movement', 'rush A-call second:inside-call')]),
      turn: 'same',
      finds: [
        {
          says: [
            'N is told two things: first says rush A-right first:M, second says rush A-right second:M',
            'the same gap, taught two ways',
          ],
          who: 'N',
          gaps: 'A-right',
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'turned opposite it is the other end', look, first: straight, second: round, turn: 'opposite' },
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
      name: 'a linebacker’s first manner stands',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush D-call')]),
      second: pressure('q', [tell('outside-call', 'path', 'rush D-call slant')]),
      turn: 'same',
    },
  ],
  cannotTell: [TIE],
};
