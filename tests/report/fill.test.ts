import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { because, datum, fact, type Because, type Datum } from '../../src/engine/index.ts';
import { COMMON_WORDS, fill, makeLexicon } from '../../src/report/index.ts';
import { ID_MARK, LEFT_END, NOSE, playerOf, setupOf } from './fixtures.ts';

const lexicon = makeLexicon(setupOf(), COMMON_WORDS);
const A_LEFT = { side: 'left', letter: 'A' } as const;
const JOB = { kind: 'spy', run: { fits: [], firm: false, support: null } } as const;

describe('a fact in words', () => {
  test('every blank is filled, the first letter is large, reasons follow in their order', () => {
    const why = because(
      '{who} leaves {gap}; nobody else than {who} may have it',
      { who: datum.player(playerOf('y')), gap: datum.gap(A_LEFT) },
      because('{who} is told: {job}', { who: datum.role(LEFT_END), job: datum.job(JOB) }, fact('so it is')),
      fact('nobody is left'),
    );
    expect(fill(why, lexicon)).toEqual({
      text: 'The tight end Y leaves A gap left; nobody else than the tight end Y may have it',
      because: [
        { text: 'E (left end) is told: spy the passer', because: [{ text: 'So it is', because: [] }] },
        { text: 'Nobody is left', because: [] },
      ],
    });
  });

  test('a job keeps its large letter where it starts the sentence', () => {
    expect(fill(because('{job}: so says the coach', { job: datum.job(JOB) }), lexicon).text).toBe(
      'Spy the passer: so says the coach',
    );
  });

  test.each<[string, Because]>([
    ['at the top', { template: '{who} is gone', data: {}, because: [] }],
    ['below', fact('so', { template: '{gap} is gone', data: { who: datum.role(NOSE) }, because: [] })],
    ['a word every object has', { template: '{toString} is gone', data: {}, because: [] }],
    ['an empty name', { template: 'a {} is gone', data: {}, because: [] }],
  ])('a blank without a value is a broken promise: %s', (_name, broken) => {
    expect(() => fill(broken, lexicon)).toThrow('No value for {');
  });
});

/** All sources of the engine, found on disk, so that a new stage is read without being listed here. */
function engineSources(): readonly string[] {
  const folder = join(import.meta.dirname, '../../src/engine');
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts') && !/(^|[/\\])because\.ts$/.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8'));
}

const CALL = /\b(?:because|fact)\(\s*('(?:[^'\\]|\\.)*'|"(?:[^"\\]|\\.)*")?/g;
const TEMPLATES = engineSources().flatMap((source) =>
  [...source.matchAll(CALL)].map((match) => match[1]?.slice(1, -1).replaceAll("\\'", "'") ?? null),
);

/** One value of every kind a sentence can hold. */
const VALUES: readonly Datum[] = [
  datum.role(NOSE),
  datum.roles([NOSE, LEFT_END]),
  datum.gap(A_LEFT),
  datum.gaps([A_LEFT]),
  datum.letter('B'),
  datum.side('left'),
  datum.player(playerOf('z')),
  datum.players([playerOf('z'), playerOf('gl')]),
  datum.job({ ...JOB, kind: 'man', receiver: playerOf('z') }),
  datum.zone('hook', 'middle'),
  datum.pressure('second'),
  datum.number(2.5),
  datum.word('pitch'),
  datum.who({ kind: 'role', role: NOSE }),
];

describe('the sentences of the engine', () => {
  test('are all plain texts that can be read from its source', () => {
    expect(TEMPLATES.length).toBeGreaterThan(40);
    expect(TEMPLATES).not.toContain(null);
  });

  test('can be filled with every kind of value, and then hold neither a brace nor an id', () => {
    for (const template of TEMPLATES) {
      const blanks = [...(template ?? '').matchAll(/\{(\w+)\}/g)].map((match) => match[1] ?? '');
      for (const value of VALUES) {
        const data = Object.fromEntries(blanks.map((blank) => [blank, value]));
        const { text } = fill({ template: template ?? '', data, because: [] }, lexicon);
        expect(text).not.toMatch(/[{}]|undefined|NaN|\[object/);
        expect(text).not.toContain(ID_MARK);
        expect(text.endsWith('.')).toBe(false);
      }
    }
  });

  test('use each kind of value the words know', () => {
    expect(new Set(VALUES.map((value) => value.kind)).size).toBe(Object.keys(datum).length);
  });
});
