import { ruleUnresolved } from '../../../src/engine/checks/ruleUnresolved.ts';
import { LOOKS, pressure, ruleJob, tell, who } from '../book.ts';
import { testCheck } from './checkTester.ts';

const open = LOOKS['10 doubles'];
const tight = LOOKS['11 tight end'];
const trips = LOOKS['10 trips'];
const outsideTheEnd = pressure('p', [tell('outside-call', 'path', 'rush outside:end-call')]);
const manOnTheSecond = pressure('q', [tell('outside-away', 'path', 'man #2-away')]);

testCheck(
  ruleUnresolved,
  ['ruleUnresolved'],
  [
    {
      name: 'no tight end to rush outside of',
      look: open,
      first: outsideTheEnd,
      finds: [
        {
          says: ['what first tells S cannot be done here', 'there is no attached tight end on the right'],
          who: 'S',
        },
      ],
    },
    {
      name: 'no second receiver away against trips',
      look: trips,
      first: pressure('p', []),
      second: manOnTheSecond,
      turn: 'same',
      finds: [
        { says: ['what second tells J cannot be done here', 'there is no receiver number 2 on the left'], who: 'J' },
      ],
    },
    {
      name: 'by both, to one man',
      look: open,
      first: outsideTheEnd,
      second: pressure('q', [tell('outside-call', 'path', 'rush D-call')]),
      turn: 'same',
      finds: [
        {
          says: ['what first tells S cannot be done here', 'there is no attached tight end on the right'],
          who: 'S',
        },
        { says: ['what second tells S cannot be done here', 'there is no D gap on the right'], who: 'S' },
      ],
    },
    {
      name: 'somebody who is not in this front, by either pressure',
      look: open,
      first: pressure('p', [tell('@X', 'path', 'rush A-call')]),
      second: pressure('q', [tell('tackle-away', 'path', 'rush A-call')]),
      turn: 'same',
      finds: [
        { says: ['first speaks to somebody who is not in this front', '@X is not in this front'] },
        { says: ['second speaks to somebody who is not in this front', 'tackle-away is not in this front'] },
      ],
    },
  ],
  [
    { name: 'a tight end is there', look: tight, first: outsideTheEnd },
    {
      name: 'a second receiver away is there',
      look: tight,
      first: pressure('p', []),
      second: manOnTheSecond,
      turn: 'same',
    },
    {
      name: 'a gap he may fit need not be there',
      look: open,
      first: pressure('p', [tell('safety-call', 'path', 'drop seam-call may D-call force')]),
    },
    {
      name: 'a case that does not hold may point at anybody',
      look: open,
      first: pressure('p', [
        {
          who: who('outside-call'),
          cases: [
            {
              when: [{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
              basis: 'path',
              job: ruleJob('rush outside:end-call'),
              preSnap: null,
            },
          ],
        },
      ]),
    },
  ],
);
