import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse, SEVERITIES, standardChecks, type Because, type Combination } from '../../../src/engine/index.ts';
import { pressure, setup } from '../book.ts';
import { ALL_EXAMPLES, EXAMPLES_BY_FILE } from './examples/index.ts';
import { EVEN } from './examples/tie.ts';
import { CHECK_FILES, fileOf } from './files.ts';

const SOURCES = new URL('../../../src/engine/checks/', import.meta.url);
const ids = standardChecks.map(({ id }) => id);

describe('the list of checks', () => {
  it('has one entry for every check file', () => {
    expect([...ids].sort()).toEqual([...CHECK_FILES.values()].sort());
  });

  it('has one set of examples for every check file, of that check', () => {
    expect(Object.keys(EXAMPLES_BY_FILE).sort()).toEqual([...CHECK_FILES.keys()].sort());
    for (const [file, examples] of Object.entries(EXAMPLES_BY_FILE)) expect(fileOf(examples.check)).toBe(file);
  });

  it('has one file of examples for every set', () => {
    const files = readdirSync(new URL('examples/', import.meta.url)).map((file) => file.replace(/\.ts$/, ''));
    expect(files.filter((file) => file !== 'index' && file !== 'tie').sort()).toEqual(
      Object.keys(EXAMPLES_BY_FILE).sort(),
    );
  });

  it('has every id once, said as subject.fault', () => {
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z]+\.[a-z]+(-[a-z]+)*$/.test(id))).toEqual([]);
  });

  it.each(standardChecks)('$id has a title, a sentence why it matters, and a source', ({ title, matters, source }) => {
    expect(title).toMatch(/^\S.{5,60}$/);
    expect(matters).toMatch(/^[A-Z].{15,150}\.$/);
    expect(source.length).toBeGreaterThan(10);
  });

  it('tells what decides first: stop before check before note', () => {
    const ranks = standardChecks.map(({ severity }) => SEVERITIES.indexOf(severity));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  });
});

describe('the sentences of the checks', () => {
  const templates = (because: Because): readonly string[] => [because.template, ...because.because.flatMap(templates)];

  it('are all shown by an example, those of the shared files too', () => {
    const shown = new Set(
      ALL_EXAMPLES.flatMap(({ found, cannotTell }) => [...found, ...cannotTell]).flatMap(
        ({ name: _name, ...parts }) => {
          const { findings, undetermined } = analyse(setup(parts));
          return [...findings, ...undetermined].flatMap(({ because }) => templates(because));
        },
      ),
    );
    const sentences = readdirSync(SOURCES).flatMap((file) =>
      [...readFileSync(new URL(file, SOURCES), 'utf8').matchAll(/(?:because|fact)\(\s*'([^']+)'/g)].flatMap(
        ([, sentence]) => sentence ?? [],
      ),
    );
    expect(sentences.length).toBeGreaterThan(ids.length);
    expect(sentences.filter((sentence) => !shown.has(sentence))).toEqual([]);
  });
});

describe('what cannot be told', () => {
  const toTightEnd = pressure('p', [], [{ kind: 'strength', by: 'tight-end', toward: 'to' }]);
  const decided = pressure('p', [], [{ kind: 'fixed', side: 'right' }]);

  it('is told once for all checks with one reason, and all that need a side are in it', () => {
    const { undetermined } = analyse(setup({ look: EVEN, first: toTightEnd }));
    expect(undetermined).toHaveLength(1);
    const needing = standardChecks.filter(({ needsSide }) => needsSide).map(({ id }) => id);
    expect(undetermined[0]?.rules.filter((id) => needing.includes(id))).toEqual(needing);
  });

  it('makes a call no less than a check, and no waiver lifts it', () => {
    const parts = { look: EVEN, first: toTightEnd };
    const waiver = { rule: 'side.undecided', look: setup(parts).look.id, evidence: '||', reason: 'we say it aloud' };
    const analysis = analyse(setup({ ...parts, waivers: [waiver] }));
    expect(analysis.findings.map(({ rule, waived }) => [rule, waived])).toEqual([
      ['side.undecided', 'we say it aloud'],
    ]);
    expect(analysis.verdict).toBe('check');
  });

  it('is nothing where everything is decided', () => {
    const analysis = analyse(setup({ look: EVEN, first: decided }));
    expect(analysis.undetermined).toEqual([]);
    expect(analysis.verdict).toBe('clean');
  });
});

describe('a call that is not run against a look', () => {
  const here = setup({ look: EVEN, first: pressure('p', []) }).look.id;
  const run = pressure('p', [], [{ kind: 'fixed', side: 'right' }]);
  const notHere = { ...run, name: 'q', notAgainst: [here] };

  it.each([
    ['one pressure', { first: notHere }, 'left-out'],
    ['both at once, the second not here', { first: run, second: notHere }, 'left-out'],
    [
      'either-or, the half that is run is not for here',
      { first: notHere, second: run, combination: always() },
      'left-out',
    ],
    ['either-or, the half that waits is not for here', { first: run, second: notHere, combination: always() }, 'clean'],
  ] as const)('%s', (_name, parts, verdict) => {
    expect(analyse(setup({ look: EVEN, ...parts })).verdict).toBe(verdict);
  });

  /** A key that always holds: the first half is run. */
  function always(): Combination {
    return { kind: 'either-or', key: [] };
  }
});
