import { lookIllegal } from '../../../../src/engine/checks/lookIllegal.ts';
import { pressure } from '../../book.ts';
import type { CheckExamples } from '../example.ts';

const first = pressure('p', [], [{ kind: 'fixed', side: 'right' }]);
const sixOnTheLine = 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5';
const sevenOnTheLine = 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5';
const HIGH_SCHOOL = 'at the high school level this formation is not legal';

/* NFHS 2-14-1, 7-2-5-a (2019); NCAA 7-1-4-a; NFL 7-5-1 (2026 text); no man's land: NFHS 2-25-2, NCAA 2-27-4. */
export const examples: CheckExamples = {
  check: lookIllegal,
  found: [
    {
      name: 'five backs, high school',
      look: sixOnTheLine,
      first,
      finds: [
        {
          says: [HIGH_SCHOOL, '5 men are off the line, no more than four may be'],
          players: 'H Q B A Z',
        },
      ],
    },
    {
      name: 'six on the line, professional',
      look: sixOnTheLine,
      first,
      level: 'professional',
      finds: [
        {
          says: ['at the professional level this formation is not legal', '6 men are on the line, seven are needed'],
          players: 'H Q B A Z',
        },
      ],
    },
    {
      name: 'two faults, college',
      look: 'line wr:X@-14 wr:H@-7,-1.1 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
      first,
      level: 'college',
      finds: [
        {
          says: [
            'at the college level this formation is not legal',
            '5 men are off the line, no more than four may be',
          ],
          players: 'H Q B A Z',
        },
        {
          says: ['at the college level this formation is not legal', 'H is neither on the line nor a back'],
          players: 'H',
        },
      ],
    },
  ],
  leftAlone: [
    { name: 'four backs, high school', look: sevenOnTheLine, first },
    { name: 'seven on the line, professional', look: sevenOnTheLine, first, level: 'professional' },
    { name: 'seven on the line, college', look: sevenOnTheLine, first, level: 'college' },
  ],
  cannotTell: [],
};
