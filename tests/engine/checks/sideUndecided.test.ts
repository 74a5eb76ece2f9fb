import { sideUndecided } from '../../../src/engine/checks/sideUndecided.ts';
import type { SideStep } from '../../../src/engine/index.ts';
import { LOOKS, pressure, tell } from '../book.ts';
import { testCheck } from './checkTester.ts';

/** Two receivers on each side, back behind the ball, ball in the middle: nothing leans anywhere. */
const even = 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-4 rb:B@0,-7';
const toReceivers: readonly SideStep[] = [{ kind: 'strength', by: 'receivers', toward: 'to' }];
const tied = pressure('p', [tell('inside-call', 'path', 'rush A-call')], toReceivers);
const decided = pressure(
  'q',
  [tell('outside-call', 'path', 'rush C-call')],
  [...toReceivers, { kind: 'fixed', side: 'left' }],
);

testCheck(
  sideUndecided,
  ['sideUndecided'],
  [
    {
      name: 'the first pressure',
      look: even,
      first: tied,
      finds: [{ says: ['nothing decides the call side of first', 'no step of the rule decides a side'] }],
    },
    {
      name: 'the second by its own rule',
      look: even,
      first: decided,
      second: tied,
      turn: 'own',
      finds: [{ says: ['nothing decides the call side of second', 'no step of the rule decides a side'] }],
    },
    {
      name: 'the second follows the first into the tie',
      look: even,
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
  ],
  [
    { name: 'a last step that always decides', look: even, first: decided },
    { name: 'trips decide it', look: LOOKS['10 trips'], first: tied },
    { name: 'the second follows the first out of its own tie', look: even, first: decided, second: tied, turn: 'same' },
    { name: 'and the other way', look: even, first: decided, second: tied, turn: 'opposite' },
  ],
);
