import { readFileSync } from 'node:fs';
import { analyse, type Because, type Check, type Setup, type Severity } from '../../src/engine/index.ts';
import { COMMON_WORDS, fill, makeLexicon, SEVERITY_WORDS } from '../../src/report/index.ts';
import { setup } from '../../tests/engine/book.ts';
import type { CheckExamples, Example } from '../../tests/engine/checks/example.ts';
import { fileOf } from '../../tests/engine/checks/files.ts';
import { TIE } from '../../tests/engine/checks/examples/tie.ts';
import { exampleText } from './exampleText.ts';

/** The page of one check: what it looks at, why it matters, its source, and its examples with the sentences they yield. */
export function checkPage({ check, found, leftAlone, cannotTell }: CheckExamples): string {
  const [first] = found;
  const graver = found.filter(({ finds }) => finds.some(({ severity }) => severity !== undefined));
  const shown = [...new Set([...(first === undefined ? [] : [first]), ...graver])];
  const doubts = cannotTell.filter((example) => example !== TIE);
  const tie = check.needsSide
    ? ['While nothing decides the side of a pressure that is run it cannot tell anything.']
    : [];
  return [
    `# ${check.title}`,
    `\`${check.id}\`: ${SEVERITY_LINES[check.severity]}`,
    check.matters,
    '## What it looks at',
    docstringOf(check),
    ...tie,
    '## It finds',
    ...shown.flatMap((example) => exampleLines(example, check)),
    '## It leaves alone',
    ...leftAlone.slice(0, shown.length).flatMap((example) => exampleLines(example, check)),
    ...(doubts.length === 0 ? [] : ['## It cannot tell']),
    ...doubts.flatMap((example) => exampleLines(example, check)),
    '## Source',
    `${check.source}.`,
    '[All checks](../checks.md)',
    '',
  ].join('\n\n');
}

/** What each severity asks of the coach. */
export const SEVERITY_LINES: Readonly<Record<Severity, string>> = {
  stop: 'stop, do not install it.',
  check: 'check, you decide.',
  note: 'note, worth knowing.',
};

function exampleLines({ name, ...parts }: Example, check: Check): readonly string[] {
  const asked = named(setup(parts));
  const said = sentencesOf(asked, check);
  return [
    `${name.charAt(0).toUpperCase()}${name.slice(1)}.`,
    ['```', exampleText(setup(parts)), '```'].join('\n'),
    ...said,
  ];
}

/** The sentences in the words of the report, each with the reasons right below it. */
function sentencesOf(asked: Setup, check: Check): readonly string[] {
  const { findings, undetermined } = analyse(asked);
  const lexicon = makeLexicon(asked, COMMON_WORDS);
  const block = (head: string, because: Because): string => {
    const why = fill(because, lexicon);
    return [`> **${head}.** ${why.text}.`, ...why.because.map((reason) => `> - ${reason.text}`)].join('\n');
  };
  return [
    ...findings
      .filter(({ rule }) => rule === check.id)
      .map((finding) => block(SEVERITY_WORDS[finding.severity], finding.because)),
    ...undetermined
      .filter(({ rules }) => rules.includes(check.id))
      .map((doubt) => block('Cannot be told', doubt.because)),
  ];
}

/** Sentences read better with "the first" than with the names of the test book; names a dictionary is asked about stay. */
function named(asked: Setup): Setup {
  if (asked.dictionary.length > 0) return asked;
  const second = asked.second === null ? null : { ...asked.second, name: 'the second' };
  return { ...asked, first: { ...asked.first, name: 'the first' }, second };
}

/** What stands above the check in its file, as running text. */
function docstringOf(check: Check): string {
  const file = new URL(`../../src/engine/checks/${fileOf(check)}.ts`, import.meta.url);
  const above = readFileSync(file, 'utf8').split(/export const \w+ = checkOf/)[0] ?? '';
  const block = above.slice(above.lastIndexOf('/**'));
  const text = block
    .replace(/^\/\*\*|\*\/\s*$/g, '')
    .replace(/\n\s*\*\s?/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (text === '') throw new Error(`${check.id} does not say what it looks at`);
  return text;
}
