import { wordsTwoMeanings } from '../../../../src/engine/checks/wordsTwoMeanings.ts';
import { LOOKS, pressure, shell } from '../../book.ts';
import type { CheckExamples } from '../example.ts';

const look = LOOKS['10 doubles'];
const first = pressure('Gate open', []);
const word = (text: string, meaning: string) => ({ word: text, meaning });
const USED = 'this call uses it';

export const examples: CheckExamples = {
  check: wordsTwoMeanings,
  found: [
    {
      name: 'a word of the pressure’s name means two things',
      look,
      first,
      dictionary: [word('Gate', 'the end goes inside'), word('gate', 'the corner turns his hips')],
      finds: [
        {
          says: [
            '"Gate" has 2 meanings in the staff dictionary',
            'it means: the end goes inside',
            'it means: the corner turns his hips',
            USED,
          ],
        },
      ],
    },
    {
      name: 'two words that belong together, in a tag of the second',
      look,
      first,
      second: { ...pressure('q', []), tags: ['two-backer edge'] },
      dictionary: [word('backer edge', 'from the edge'), word('Backer  Edge', 'to the edge'), word('Gate', 'in')],
      finds: [
        {
          says: [
            '"backer edge" has 2 meanings in the staff dictionary',
            'it means: from the edge',
            'it means: to the edge',
            USED,
          ],
        },
      ],
    },
  ],
  leftAlone: [
    {
      name: 'one meaning, written down twice',
      look,
      first,
      dictionary: [word('Gate', 'the end goes inside'), word('gate', 'The end goes inside ')],
    },
    {
      name: 'this call does not use it',
      look,
      first,
      coverage: shell('Agate', []),
      dictionary: [word('fence', 'one thing'), word('fence', 'another'), word('gat', 'one'), word('gat', 'two')],
    },
  ],
  cannotTell: [],
};
