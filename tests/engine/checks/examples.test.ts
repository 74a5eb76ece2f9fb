import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  analyse,
  mirrorSetup,
  type Because,
  type Check,
  type Datum,
  type Finding,
  type Undetermined,
} from '../../../src/engine/index.ts';
import { frozen, gapText, say, setup } from '../book.ts';
import type { CheckExamples, Example, Said } from './example.ts';
import { ALL_EXAMPLES } from './examples/index.ts';
import { fileOf } from './files.ts';

interface Judged {
  readonly found: readonly Finding[];
  readonly unsure: readonly Undetermined[];
}

/** Analyses a frozen setup twice: the same input, the same bytes. */
function judged({ name: _name, ...parts }: Example, check: Check): Judged {
  const asked = frozen(setup(parts));
  const analysis = analyse(asked);
  expect(JSON.stringify(analyse(asked))).toBe(JSON.stringify(analysis));
  return ofCheck(analysis, check);
}

function ofCheck(
  { findings, undetermined }: { readonly findings: readonly Finding[]; readonly undetermined: readonly Undetermined[] },
  check: Check,
): Judged {
  return {
    found: findings.filter(({ rule }) => rule === check.id),
    unsure: undetermined.filter(({ rules }) => rules.includes(check.id)),
  };
}

const told = ({ because, who, gaps, players }: Finding | Undetermined): Required<Said> => ({
  says: [say(because), ...because.because.map(say)],
  who: who.join(' '),
  gaps: gaps.map(gapText).join(' '),
  players: players.join(' '),
});

const expected = ({ says, who = '', gaps = '', players = '' }: Said): Required<Said> => ({ says, who, gaps, players });

const flip = (text: string): string => text.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));
const unordered = (text: string): string => text.split(/[ +]/).sort().join(' ');

/** What is said, man by man and gap by gap, with no order of left and right in it; `turn` flips the sides. */
function digest({ because, who, gaps, players }: Finding | Undetermined, turn: (text: string) => string): string {
  const data = Object.entries(because.data).map(([name, datum]) => {
    const text = say({ template: '{value}', data: { value: datum }, because: [] });
    return `${name}: ${unordered(SIDED.includes(datum.kind) ? turn(text) : text)}`;
  });
  const about = [who.join(' '), turn(gaps.map(gapText).join(' ')), players.join(' ')].map(unordered);
  return [because.template, ...data, ...about].join('|');
}

/** Kinds of values with a left or a right in them. */
const SIDED: readonly Datum['kind'][] = ['side', 'gap', 'gaps', 'zone', 'job'];

const templates = (because: Because): readonly string[] => [because.template, ...because.because.flatMap(templates)];

/** Every sentence a check's own file can say, read from its text. */
function sentencesIn(check: Check): readonly string[] {
  const text = readFileSync(new URL(`../../../src/engine/checks/${fileOf(check)}.ts`, import.meta.url), 'utf8');
  return [...text.matchAll(/(?:because|fact)\(\s*'([^']+)'/g)].flatMap(([, sentence]) => sentence ?? []);
}

describe.each(ALL_EXAMPLES.map((examples) => [examples.check.id, examples] as const))('%s', (_id, examples) => {
  const { check, found, leftAlone, cannotTell }: CheckExamples = examples;

  it.each(found)('finds: $name', ({ finds, ...example }) => {
    const result = judged(example, check);
    expect(result.found.map(told)).toEqual(finds.map(expected));
    expect(result.found.map((finding) => finding.severity)).toEqual(
      finds.map(({ severity }) => severity ?? check.severity),
    );
    expect(result.unsure).toEqual([]);
    for (const { who, gaps, players, where } of result.found) {
      expect(where).toHaveLength(who.length + gaps.length + players.length);
    }
  });

  it.each(leftAlone)('leaves alone: $name', (example) => {
    expect(judged(example, check)).toEqual({ found: [], unsure: [] });
  });

  it.each(cannotTell)('cannot tell: $name', ({ cannotTell: cases, ...example }) => {
    const result = judged(example, check);
    expect(result.unsure.map(told)).toEqual(cases.map(expected));
  });

  it.each([...found, ...leftAlone, ...cannotTell])('says the mirrored thing of the mirrored look: $name', (example) => {
    const { name: _name, ...parts } = example;
    const here = judged(example, check);
    const there = ofCheck(analyse(frozen(mirrorSetup(setup(parts)))), check);
    const same = (text: string): string => text;
    for (const kind of ['found', 'unsure'] as const) {
      expect(there[kind].map((each) => digest(each, flip)).sort()).toEqual(
        here[kind].map((each) => digest(each, same)).sort(),
      );
    }
  });

  it('has a lawful neighbour for every case, and a case for its tie', () => {
    expect(found.length).toBeGreaterThan(0);
    expect(leftAlone.length).toBeGreaterThanOrEqual(found.length);
    expect(cannotTell.length > 0 || !check.needsSide).toBe(true);
  });

  it('shows every sentence it can say', () => {
    const sentences = sentencesIn(check);
    const shown = new Set(
      [...found, ...cannotTell].flatMap((example) => {
        const { found: findings, unsure } = judged(example, check);
        return [...findings, ...unsure].flatMap(({ because }) => templates(because));
      }),
    );
    expect(sentences.filter((sentence) => !shown.has(sentence))).toEqual([]);
  });
});
