import { gather, remembered } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Coverage, Front, Pressure, Setup, StaffWord } from '../types/index.ts';
import { checkOfTelling, type Report } from './defineCheck.ts';

/** One word of the staff's means two things, and this call uses it in a name or a tag. */
export const wordsTwoMeanings = checkOfTelling({
  id: 'words.two-meanings',
  title: 'One word means two things',
  severity: 'check',
  matters: 'Half the room hears one thing and half the other.',
  source:
    '"There is no universal terminology": Comprehensive Defensive Football Glossary, MatchQuarters; J. T. Reed, "Terms of Football"',
  needsSide: false,
  report: ({ setup }) => {
    const unclear = unclearWords(setup.dictionary);
    if (unclear.length === 0) return [];
    const texts = textsOf(setup);
    return gather(unclear, ({ key, entries, meanings }): readonly Report[] => {
      if (!texts.some((text) => uses(text, key))) return [];
      return [
        {
          because: because(
            '"{word}" has {n} meanings in the staff dictionary',
            { word: datum.word(entries[0]?.word.trim() ?? key), n: datum.number(meanings.length) },
            ...meanings.map((meaning) => because('it means: {meaning}', { meaning: datum.word(meaning) })),
            fact('this call uses it'),
          ),
        },
      ];
    });
  },
});

/** The words of a dictionary that have more than one meaning, as they are heard. */
const unclearWords = remembered((dictionary: readonly StaffWord[]) => {
  const said = new Map<string, readonly StaffWord[]>();
  for (const entry of dictionary) {
    const key = plain(entry.word);
    said.set(key, [...(said.get(key) ?? []), entry]);
  }
  return gather([...said], ([key, entries]) => {
    const meanings = distinct(entries.map((entry) => entry.meaning.trim()));
    return meanings.length < 2 ? [] : [{ key, entries, meanings }];
  });
});

/** Names and tags of everything in this call that a coach says aloud. */
function textsOf({ first, second, coverage, secondCoverage, front }: Setup): readonly string[] {
  return gather([first, second, coverage, secondCoverage, front], (each) => (each === null ? [] : saidOf(each)));
}

const saidOf = remembered((part: Pressure | Coverage | Front): readonly string[] =>
  ('tags' in part ? [part.name, ...part.tags] : [part.name]).map(plain),
);

/** Small letters and digits, one blank between words: what is heard. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** Whether a word, or several, stands in a text as it is and not inside a longer word. */
function uses(text: string, word: string): boolean {
  return word !== '' && ` ${text} `.includes(` ${word} `);
}

function distinct(meanings: readonly string[]): readonly string[] {
  return meanings.filter((meaning, index) => meanings.findIndex((other) => plain(other) === plain(meaning)) === index);
}
