import { lineTwoJobs } from '../../../src/engine/checks/lineTwoJobs.ts';
import { LOOKS, pressure, tell } from '../book.ts';
import { testCheck } from './checkTester.ts';

const look = LOOKS['11 tight end'];
const toTheCall = tell('@N', 'movement', 'rush A-call slant');
const fromTheRusher = [tell('inside-call', 'path', 'rush A-call'), tell('@N', 'consequence', 'rush A-away slant')];

testCheck(
  lineTwoJobs,
  ['lineTwoJobs', 'twoTellings', 'toldTwiceByOne'],
  [
    {
      name: 'the nose sent to both A',
      look,
      first: pressure('p', [toTheCall]),
      second: pressure('q', fromTheRusher),
      turn: 'same',
      finds: [
        {
          says: [
            'N is told two things: the first says rush A-right slant, the second says rush A-left slant',
            'a lineman is told two things',
          ],
          who: 'N',
          gaps: 'A-right A-left',
        },
      ],
    },
    {
      name: 'one end in and out, the other to rush and to drop',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call slant'),
        tell('end-away', 'path', 'drop hook-away'),
      ]),
      second: pressure('q', [
        tell('end-call', 'movement', 'contain C-call loop'),
        tell('end-away', 'movement', 'rush C-away'),
      ]),
      turn: 'same',
      finds: [
        {
          says: [
            'LE is told two things: the first says drop hook-left, the second says rush C-left',
            'a lineman is told two things',
          ],
          who: 'LE',
          gaps: 'C-left',
        },
        {
          says: [
            'RE is told two things: the first says rush B-right slant, the second says contain C-right loop',
            'a lineman is told two things',
          ],
          who: 'RE',
          gaps: 'B-right C-right',
        },
      ],
    },
    {
      name: 'one pressure tells the right end two things, by name and by group',
      look,
      first: pressure('p', [
        tell('@RE', 'movement', 'rush B-call slant'),
        tell('end-call', 'movement', 'contain C-call loop'),
      ]),
      finds: [
        {
          says: [
            'first alone tells RE two things: rush B-right slant, and contain C-right loop',
            'two of its rules speak to him in this look; only the one told first is heard',
          ],
          who: 'RE',
          gaps: 'B-right C-right',
        },
      ],
    },
  ],
  [
    {
      name: 'one pressure tells him the same twice',
      look,
      first: pressure('p', [tell('@N', 'movement', 'rush A-call'), tell('nose-call', 'movement', 'rush A-call slant')]),
    },
    {
      name: 'turned opposite, both send the nose to one A',
      look,
      first: pressure('p', [toTheCall]),
      second: pressure('q', fromTheRusher),
      turn: 'opposite',
    },
    { name: 'told by one pressure only', look, first: pressure('p', [toTheCall]) },
    {
      name: 'the same gap in two manners is another check’s',
      look,
      first: pressure('p', [toTheCall]),
      second: pressure('q', [tell('@N', 'movement', 'rush A-call')]),
      turn: 'same',
    },
    {
      name: 'a linebacker is another check’s',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush B-call')]),
      second: pressure('q', [tell('outside-call', 'path', 'rush C-call')]),
      turn: 'same',
    },
    {
      name: 'told one job and one that points at nobody',
      look,
      first: pressure('p', [toTheCall]),
      second: pressure('q', [tell('@N', 'movement', 'rush E-call')]),
      turn: 'same',
    },
  ],
);
