import { alignReach } from '../../../../src/engine/checks/alignReach.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const AT_RULE = 'alignment rule 1 of the front puts him there';
const upToTwo = { kind: 'depth', depth: 2 } as const;

/* Do not blitz from depth ("5 Tips for Developing a Blitz", MatchQuarters). The times are the engine's own estimates. */
export const examples: CheckExamples = {
  check: alignReach,
  found: [
    {
      name: 'a safety comes from 11 yards',
      look,
      first: pressure('p', [tell('safety-call', 'path', 'rush B-call')]),
      finds: [
        {
          says: [
            'SS has 12.2 yd to run before he crosses the line',
            'by estimate he is at the passer 3 s after the snap, and a five-step throw is gone after 2.4 s',
            AT_RULE,
          ],
          who: 'SS',
          gaps: 'B-right',
        },
      ],
    },
    {
      name: 'a corner comes from outside a receiver on the far numbers, though he has come up',
      look,
      first: pressure('p', [tell('corner-call', 'path', 'contain C-call', upToTwo)]),
      finds: [
        {
          says: [
            'RC has 16.1 yd to run before he crosses the line',
            'by estimate he is at the passer 3.5 s after the snap, and a five-step throw is gone after 2.4 s',
            'the pressure has him 2 yards deep',
          ],
          who: 'RC',
          gaps: 'C-right',
        },
      ],
    },
    {
      name: 'the nose drops to a curl-flat',
      look,
      first: pressure('p', [tell('@N', 'movement', 'drop curl-flat-call')]),
      finds: [
        {
          says: [
            'N is 16.9 yd from the middle of his zone',
            'by estimate he is within 2 yd of it 3.2 s after the snap, and a throw to it after 2.8 s',
            AT_RULE,
          ],
          who: 'N',
        },
      ],
    },
    {
      name: 'the inside backer from across the ball has the widest receiver',
      look,
      first: pressure('p', [tell('inside-away', 'path', 'man #1-call')]),
      finds: [
        {
          says: [
            'W is 19.7 yd from where he meets Z',
            'by estimate he is there 3.2 s after the snap, and a quick throw after 2.8 s',
            'he covers the receiver man to man from the snap on',
          ],
          who: 'W',
          players: 'Z',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'he has come up to 6 yards before the snap',
      look,
      first: pressure('p', [tell('safety-call', 'path', 'rush B-call', { kind: 'depth', depth: 6 })]),
    },
    {
      name: 'a corner who has come up comes off the edge from outside a nearer receiver',
      look: LOOKS['11 tight end'],
      first: pressure('p', [tell('corner-call', 'path', 'contain edge-call', upToTwo)]),
    },
    {
      name: 'the nose drops to the hook',
      look,
      first: pressure('p', [tell('@N', 'movement', 'drop hook-call')]),
    },
    {
      name: 'the near inside backer has the slot',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'man #2-call')]),
    },
    {
      name: 'a lineman who moves one gap',
      look,
      first: pressure('p', [tell('end-call', 'movement', 'rush B-call slant')]),
    },
  ],
  cannotTell: [TIE],
};
