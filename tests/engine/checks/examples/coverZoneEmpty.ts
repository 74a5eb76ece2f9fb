import { coverZoneEmpty } from '../../../../src/engine/checks/coverZoneEmpty.ts';
import { LOOKS, need, pressure, shell, tell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['10 doubles'];
const oneComes = tell('inside-call', 'path', 'rush A-call');
const NEEDED = 'the shell cannot do without it';
const seamAndHook = (...takers: readonly string[]) =>
  shell('Seam and hook', [], [need('seam-call', 'inside-call'), need('hook-call', ...takers)]);

export const examples: CheckExamples = {
  check: coverZoneEmpty,
  found: [
    {
      name: 'both inside backers come, nobody is left for the hook',
      look,
      first: pressure('p', [oneComes, tell('inside-away', 'path', 'rush A-away')]),
      finds: [
        {
          says: ['nobody drops to hook-right', 'nobody drops there, and nobody who is free may take it', NEEDED],
        },
      ],
    },
    {
      name: 'one man may take two zones',
      look,
      first: pressure('p', []),
      coverage: seamAndHook('inside-call'),
      finds: [
        {
          says: ['nobody drops to hook-right', 'it can only be reached by M, already in another zone', NEEDED],
          who: 'M',
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'one comes, the other takes the hook', look, first: pressure('p', [oneComes]) },
    {
      name: 'another man may take the second zone',
      look,
      first: pressure('p', []),
      coverage: seamAndHook('inside-call', 'inside-away'),
    },
    {
      name: 'a shell of men needs no zone',
      look,
      first: pressure('p', []),
      coverage: shell('Man free', [['safety-away', 'drop middle']]),
    },
  ],
  cannotTell: [
    TIE,
    {
      name: 'the backer in the hook is told to come by the second pressure',
      look,
      first: pressure('p', [oneComes, tell('inside-away', 'path', 'drop hook-call')]),
      second: pressure('q', [tell('inside-away', 'path', 'rush A-away')]),
      turn: 'same',
      cannotTell: [
        {
          says: [
            'whether anybody drops to hook-right depends on W',
            'of the two jobs told one drops there and the other does not',
          ],
          who: 'W',
        },
      ],
    },
    {
      name: 'he is told to come by the first, and to drop there by the second',
      look,
      first: pressure('p', [oneComes, tell('inside-away', 'path', 'rush A-away')]),
      second: pressure('q', [tell('inside-away', 'path', 'drop hook-call')]),
      turn: 'same',
      cannotTell: [
        {
          says: [
            'whether anybody drops to hook-right depends on W',
            'of the two jobs told one drops there and the other does not',
          ],
          who: 'W',
        },
      ],
    },
  ],
};
