import { gapDoubled } from '../../../src/engine/checks/gapDoubled.ts';
import type { Coverage } from '../../../src/engine/index.ts';
import { LOOKS, pressure, ruleJob, tell, THREE_DEEP, who } from '../book.ts';
import { testCheck } from './checkTester.ts';

const look = LOOKS['10 doubles'];
const THIN = 'a gap is thin when nobody has it, or only half of a man who plays two';
const nobody: Coverage = { ...THREE_DEEP, tells: [] };
/** The nose stays two-gapping; two backers rush the right B. */
const twoInB = pressure('p', [tell('inside-call', 'path', 'rush B-call'), tell('outside-call', 'path', 'rush B-call')]);
const noseToCall = tell('@N', 'movement', 'rush A-call slant');
const cover = (name: string, job: string): Coverage['tells'][number] => ({
  who: who(name),
  cases: [{ when: [], job: ruleJob(job) }],
});

testCheck(
  gapDoubled,
  ['gapDoubled'],
  [
    {
      name: 'two in one B while the nose plays both A',
      look,
      first: twoInB,
      coverage: nobody,
      finds: [
        {
          says: [
            'M+S are all sent to B-right, while A-left+A-right is thin',
            'M is sent there',
            'S is sent there',
            THIN,
          ],
          who: 'M S',
          gaps: 'B-right A-left A-right',
        },
      ],
    },
    {
      name: 'by two pressures, while another gap is open',
      look,
      first: pressure('p', [noseToCall, tell('inside-away', 'path', 'rush A-call')]),
      second: pressure('q', [tell('inside-call', 'path', 'rush A-call')]),
      turn: 'same',
      coverage: { ...nobody, tells: [cover('outside-away', 'drop seam-away'), cover('safety-away', 'drop middle')] },
      finds: [
        {
          says: [
            'N+W+M are all sent to A-right, while B-left+A-left is thin',
            'N is sent there',
            'W is sent there',
            'M is sent there',
            THIN,
          ],
          who: 'N W M',
          gaps: 'A-right B-left A-left',
        },
      ],
    },
  ],
  [
    {
      name: 'two in one gap with all others full is a choice',
      look,
      first: pressure('p', [
        noseToCall,
        tell('inside-away', 'path', 'rush A-away'),
        tell('inside-call', 'path', 'rush B-call'),
        tell('outside-call', 'path', 'rush B-call'),
      ]),
    },
    {
      name: 'one A given away, the nose has the other to himself',
      look,
      first: pressure('p', [
        tell('inside-call', 'path', 'rush A-call'),
        tell('outside-call', 'path', 'rush A-call'),
        tell('safety-call', 'path', 'rush B-call'),
      ]),
    },
    {
      name: 'one in each gap, the nose playing both A',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call'), tell('outside-call', 'path', 'rush C-call')]),
      coverage: nobody,
    },
    {
      name: 'a man in conflict is not surely there',
      look,
      first: pressure('p', [tell('inside-call', 'path', 'rush B-call'), tell('end-call', 'movement', 'rush B-call')]),
      second: pressure('q', [tell('end-call', 'movement', 'contain C-call')]),
      turn: 'same',
      coverage: nobody,
    },
    {
      name: 'half of a man beside a whole one',
      look,
      first: pressure('p', [
        tell('end-call', 'movement', 'rush B-call+C-call two-gap'),
        tell('inside-call', 'path', 'rush B-call'),
      ]),
      coverage: nobody,
    },
  ],
);
