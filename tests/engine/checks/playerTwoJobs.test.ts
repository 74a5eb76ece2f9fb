import { playerTwoJobs } from '../../../src/engine/checks/playerTwoJobs.ts';
import { LOOKS, pressure, tell } from '../book.ts';
import { testCheck } from './checkTester.ts';

const look = LOOKS['11 tight end'];

testCheck(
  playerTwoJobs,
  ['playerTwoJobs', 'twoTellings', 'toldTwiceByOne'],
  [
    {
      name: 'one pressure tells the strong inside backer two things',
      look,
      first: pressure('p', [tell('@M', 'path', 'rush A-call'), tell('inside-call', 'path', 'rush B-call')]),
      finds: [
        {
          says: [
            'first alone tells M two things: rush A-right, and rush B-right',
            'two of its rules speak to him in this look; only the one told first is heard',
          ],
          who: 'M',
          gaps: 'A-right B-right',
        },
      ],
    },
    {
      name: 'an outside backer sent off the edge and told to cover',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush D-call')]),
      second: pressure('q', [tell('outside-call', 'path', 'drop curl-flat-call')]),
      turn: 'same',
      finds: [
        {
          says: [
            'S is told two things: the first says rush D-right, the second says drop curl-flat-right',
            'he is told two things of the same weight that cannot both be done',
          ],
          who: 'S',
          gaps: 'D-right',
        },
      ],
    },
    {
      name: 'a safety told to two zones: no gap is in question',
      look,
      first: pressure('p', [tell('safety-call', 'consequence', 'drop middle')]),
      second: pressure('q', [tell('safety-away', 'consequence', 'drop seam-away')]),
      turn: 'opposite',
      finds: [
        {
          says: [
            'SS is told two things: the first says drop middle, the second says drop seam-right',
            'he is told two things of the same weight that cannot both be done',
          ],
          who: 'SS',
        },
      ],
    },
  ],
  [
    {
      name: 'the weaker telling gives way',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush D-call')]),
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
      first: pressure('p', [tell('outside-call', 'path', 'rush D-call')]),
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
);
