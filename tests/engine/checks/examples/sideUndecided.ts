import { sideUndecided } from '../../../../src/engine/checks/sideUndecided.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { EVEN, TO_RECEIVERS } from './tie.ts';

const tied = pressure('p', [tell('inside-call', 'path', 'rush A-call')], TO_RECEIVERS);
const decided = pressure(
  'q',
  [tell('outside-call', 'path', 'rush C-call')],
  [...TO_RECEIVERS, { kind: 'fixed', side: 'left' }],
);

export const examples: CheckExamples = {
  check: sideUndecided,
  found: [
    {
      name: 'the same number of receivers on each side, and no tie-break',
      look: EVEN,
      first: tied,
      finds: [{ says: ['nothing decides the call side of first', 'no step of the rule decides a side'] }],
    },
    {
      name: 'the second by its own rule',
      look: EVEN,
      first: decided,
      second: tied,
      turn: 'own',
      finds: [{ says: ['nothing decides the call side of second', 'no step of the rule decides a side'] }],
    },
    {
      name: 'the second follows the first into the tie',
      look: EVEN,
      first: tied,
      second: decided,
      turn: 'opposite',
      finds: [
        { says: ['nothing decides the call side of first', 'no step of the rule decides a side'] },
        {
          says: ['nothing decides the call side of second', 'it follows the first pressure, and that one has no side'],
        },
      ],
    },
    {
      name: 'either-or: the key asks about the side of the first, and it has none',
      look: EVEN,
      first: tied,
      second: decided,
      turn: 'own',
      combination: { kind: 'either-or', key: [{ kind: 'bodies', side: 'call', compare: 'at-least', count: 3 }] },
      finds: [{ says: ['nothing decides the call side of first', 'no step of the rule decides a side'] }],
    },
  ],
  leftAlone: [
    { name: 'a last step that always decides', look: EVEN, first: { ...tied, callSide: decided.callSide } },
    { name: 'trips decide it', look: LOOKS['10 trips'], first: tied },
    { name: 'the second follows the first out of its own tie', look: EVEN, first: decided, second: tied, turn: 'same' },
    { name: 'and the other way', look: EVEN, first: decided, second: tied, turn: 'opposite' },
    {
      name: 'either-or: the half with the tie is not run here',
      look: EVEN,
      first: decided,
      second: tied,
      turn: 'own',
      combination: { kind: 'either-or', key: [{ kind: 'backs', compare: 'exactly', count: 1 }] },
    },
    {
      name: 'either-or: the key asks about the field, and the second, which is run, has its side',
      look: EVEN,
      first: tied,
      second: decided,
      turn: 'own',
      combination: { kind: 'either-or', key: [{ kind: 'field', side: 'left' }] },
    },
  ],
  cannotTell: [],
};
