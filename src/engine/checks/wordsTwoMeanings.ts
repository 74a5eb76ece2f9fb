import { because, datum, fact } from '../because.ts';
import type { Setup, StaffWord } from '../types/index.ts';
import { defineCheck, type Report } from './defineCheck.ts';

/** One word of the staff's means two things, and this call uses it in a name or a tag. */
export const wordsTwoMeanings = defineCheck({
  id: 'words.two-meanings',
  title: 'One word means two things',
  severity: 'check',
  matters: 'Half the room hears one thing and half the other.',
  source:
    '"There is no universal terminology": Comprehensive Defensive Football Glossary, MatchQuarters; J. T. Reed, "Terms of Football"',
  needsSide: false,
  judge: ({ setup }) => {
    const texts = textsOf(setup);
    const said = new Map<string, readonly StaffWord[]>();
    for (const entry of setup.dictionary) {
      const key = plain(entry.word);
      said.set(key, [...(said.get(key) ?? []), entry]);
    }
    return [...said].flatMap(([key, entries]): readonly Report[] => {
      const meanings = distinct(entries.map((entry) => entry.meaning.trim()));
      if (meanings.length < 2 || !texts.some((text) => uses(text, key))) return [];
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

/** Names and tags of everything in this call that a coach says aloud. */
function textsOf({ first, second, coverage, secondCoverage, front }: Setup): readonly string[] {
  const pressures = [first, second].flatMap((each) => (each === null ? [] : [each.name, ...each.tags]));
  const others = [coverage, secondCoverage, front].flatMap((each) => (each === null ? [] : [each.name]));
  return [...pressures, ...others].map(plain);
}

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
