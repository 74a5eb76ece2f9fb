import { ruleUnresolved } from '../../../../src/engine/checks/ruleUnresolved.ts';
import { LOOKS, pressure, ruleJob, tell, who } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { EVEN, TIE, TO_RECEIVERS } from './tie.ts';

const open = LOOKS['10 doubles'];
const tight = LOOKS['11 tight end'];
const trips = LOOKS['10 trips'];
const outsideTheEnd = pressure('p', [tell('outside-call', 'path', 'rush outside:end-call')]);
const manOnTheSecond = pressure('q', [tell('outside-away', 'path', 'man #2-away')]);
const manOnTwoBacks = pressure('p', [
  tell('inside-call', 'path', 'man back'),
  tell('inside-away', 'path', 'man back2'),
]);

export const examples: CheckExamples = {
  check: ruleUnresolved,
  found: [
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
      name: 'no second back',
      look: open,
      first: manOnTwoBacks,
      finds: [
        { says: ['what first tells W cannot be done here', 'there is no back number 2 in the backfield'], who: 'W' },
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
  leftAlone: [
    { name: 'a tight end is there', look: tight, first: outsideTheEnd },
    {
      name: 'a second receiver away is there',
      look: tight,
      first: pressure('p', []),
      second: manOnTheSecond,
      turn: 'same',
    },
    { name: 'two backs are there', look: LOOKS['20 split backs'], first: manOnTwoBacks },
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
    {
      name: 'either-or: the half that points at nobody is not run here',
      look: trips,
      first: pressure('p', []),
      second: manOnTheSecond,
      turn: 'same',
      combination: { kind: 'either-or', key: [] },
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the second has no side, the first is still read',
      look: EVEN,
      first: { ...outsideTheEnd, callSide: [{ kind: 'fixed', side: 'right' }] },
      second: pressure('q', [], TO_RECEIVERS),
      turn: 'own',
      cannotTell: [
        {
          says: ['nothing decides the side of second, so nobody knows his job', 'no step of the rule decides a side'],
        },
      ],
    },
  ],
};
