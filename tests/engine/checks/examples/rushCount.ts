import { rushCount } from '../../../../src/engine/checks/rushCount.ts';
import { LOOKS, pressure, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const oneComes = pressure('p', [tell('inside-call', 'path', 'rush A-call')]);
const comesOrDrops = pressure('q', [tell('inside-call', 'path', 'drop hook-call')]);

export const examples: CheckExamples = {
  check: rushCount,
  found: [
    {
      name: 'the call says five, three linemen and one backer come',
      look,
      first: oneComes,
      rushers: 5,
      finds: [{ says: ['4 rush and the call says 5'], who: 'LE N RE M' }],
    },
    {
      name: 'the call says four, the line alone is three and two backers come',
      look,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-call'),
        tell('outside-call', 'path', 'contain edge-call'),
      ]),
      rushers: 4,
      finds: [{ says: ['5 rush and the call says 4'], who: 'LE N RE M S' }],
    },
    {
      name: 'a man is told to come and to drop, and neither makes it five',
      look,
      first: oneComes,
      second: comesOrDrops,
      turn: 'same',
      rushers: 5,
      finds: [{ says: ['4 rush and the call says 5'], who: 'LE N RE' }],
    },
  ],
  leftAlone: [
    { name: 'the call says four, and four come', look, first: oneComes, rushers: 4 },
    { name: 'the coach does not say', look, first: oneComes },
    {
      name: 'a lineman drops for the man who comes: still three',
      look,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-call'),
        tell('end-away', 'movement', 'drop hook-away'),
      ]),
      rushers: 3,
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'a man is told to come and to drop: it is four with him, three without',
      look,
      first: oneComes,
      second: comesOrDrops,
      turn: 'same',
      rushers: 4,
      cannotTell: [
        {
          says: [
            'whether 4 rush, as the call says, depends on M',
            'of the two jobs told one rushes and the other does not',
          ],
          who: 'M',
        },
      ],
    },
  ],
};
