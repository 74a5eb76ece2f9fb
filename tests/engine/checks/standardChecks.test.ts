import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SEVERITIES, standardChecks } from '../../../src/engine/index.ts';

/** Files of the folder that hold no check of their own. */
const HELPERS = ['defineCheck', 'standardChecks', 'toldTwiceByOne', 'twoTellings'];

const namesIn = (folder: URL, ending: string): readonly string[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .map((file) => file.slice(0, -ending.length))
    .sort();

const SOURCES = new URL('../../../src/engine/checks/', import.meta.url);
const checkFiles = namesIn(SOURCES, '.ts').filter((name) => !HELPERS.includes(name));

/** The id a check file gives its check: `gap.open` from gapOpen.ts. */
const idOf = (file: string): string | undefined =>
  /\bid: '([^']+)'/.exec(readFileSync(new URL(`${file}.ts`, SOURCES), 'utf8'))?.[1];

describe('the list of checks', () => {
  it('has one entry for every check file', () => {
    expect(standardChecks.map(({ id }) => id).sort()).toEqual(checkFiles.map(idOf).sort());
  });

  it('has one test file for every check file', () => {
    const testFiles = namesIn(new URL('.', import.meta.url), '.test.ts').filter((name) => name !== 'standardChecks');
    expect(testFiles).toEqual(checkFiles);
  });

  it('has every id once, said as subject.fault', () => {
    const ids = standardChecks.map(({ id }) => id);
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
