import { alignTell } from '../../../../src/engine/checks/alignTell.ts';
import { LOOKS, pressure, tell, who } from '../../book.ts';
import type { CheckExamples } from '../example.ts';
import { TIE } from './tie.ts';

const look = LOOKS['11 tight end'];
const backerUp = tell('inside-call', 'path', 'rush A-call', { kind: 'depth', depth: 2 });

export const examples: CheckExamples = {
  check: alignTell,
  found: [
    {
      name: 'a backer walks up to two yards',
      look,
      first: pressure('p', [backerUp]),
      finds: [
        {
          says: ['the passer can see it coming from M', 'M stands 2 yards deep, in the front it is 4.5'],
          who: 'M',
        },
      ],
    },
    {
      name: 'safety and backer: told once for both',
      look,
      first: pressure('p', [backerUp, tell('safety-call', 'path', 'rush B-call', { kind: 'depth', depth: 6 })]),
      finds: [
        {
          says: [
            'the passer can see it coming from M+SS',
            'M stands 2 yards deep, in the front it is 4.5',
            'SS stands 6 yards deep, in the front it is 11',
          ],
          who: 'M SS',
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'a step and a half is not seen',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush A-call', { kind: 'depth', depth: 3 })]),
    },
    { name: 'he comes from where he stands', look, first: pressure('p', [tell('inside-call', 'path', 'rush A-call')]) },
    {
      name: 'from the heels of the end, a yard behind where he stands anyway',
      look,
      first: pressure('p', [tell('outside-call', 'path', 'rush B-call', { kind: 'heels', of: who('end-call') })]),
    },
  ],
  cannotTell: [TIE],
};
