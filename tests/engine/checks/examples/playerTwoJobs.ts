import { playerTwoJobs } from '../../../../src/engine/checks/playerTwoJobs.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['11 tight end'];
const offTheEdge = pressure('p', [tell('outside-call', 'path', 'rush D-call')]);

export const examples: CheckExamples = {
  check: playerTwoJobs,
  found: [
    {
      name: 'an outside backer is sent off the edge and told to cover',
      look,
      first: offTheEdge,
      second: pressure('q', [tell('outside-call', 'path', 'drop curl-flat-call')]),
      turn: 'same',
      finds: [
        {
          says: [
            'S is told two things: first says rush D-right, second says drop curl-flat-right',
            'he is told two things of the same weight that cannot both be done',
          ],
          who: 'S',
          gaps: 'D-right',
        },
      ],
    },
    {
      name: 'a safety is told to two zones: no gap is in question',
      look,
      first: pressure('p', [tell('safety-call', 'consequence', 'drop middle')]),
      second: pressure('q', [tell('safety-away', 'consequence', 'drop seam-away')]),
      turn: 'opposite',
      finds: [
        {
          says: [
            'SS is told two things: first says drop middle, second says drop seam-right',
            'he is told two things of the same weight that cannot both be done',
          ],
          who: 'SS',
        },
      ],
    },
    {
      name: 'one pressure speaks to a backer by his group and by his name',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush D-call'), tell('@S', 'path', 'drop curl-flat-call')]),
      finds: [
        {
          says: [
            'first alone tells S two things: rush D-right, and drop curl-flat-right',
            'two of its rules speak to him in this look; only the one told first is heard',
          ],
          who: 'S',
          gaps: 'D-right',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'a telling that only follows from others gives way',
      look,
      first: offTheEdge,
      second: pressure('q', [tell('outside-call', 'consequence', 'drop curl-flat-call')]),
      turn: 'same',
    },
    {
      name: 'the shell gives way',
      look,
      first: pressure('p', []),
      second: pressure('q', [tell('outside-call', 'path', 'rush D-call')]),
      turn: 'same',
    },
    {
      name: 'the same gap in two manners: the first stands',
      look,
      first: offTheEdge,
      second: pressure('q', [tell('outside-call', 'path', 'contain D-call box')]),
      turn: 'same',
    },
    {
      name: 'a lineman is another check’s',
      look,
      first: pressure('p', [tell('end-call', 'path', 'rush B-call')]),
      second: pressure('q', [tell('end-call', 'path', 'rush C-call')]),
      turn: 'same',
    },
  ],
  cannotTell: [TIE],
};
