/** The way from an old file to the present: every step numbered and run, every released version still opening. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openDocument, saveDocument, toSetup, VERSION } from '../../src/document/index.ts';
import { migrate, MIGRATIONS, type Migration } from '../../src/document/migrations/index.ts';
import { analyse } from '../../src/engine/index.ts';
import { pathText, places, withAt, type Step } from './json.ts';
import { samplePlaybook, type Json } from './samplePlaybook.ts';

const SAVED = join(import.meta.dirname, 'saved');

describe('migrations', () => {
  it('lead from version 1 to the present one without a hole, and cannot be changed', () => {
    expect(MIGRATIONS.map(({ from }) => from)).toEqual(Array.from({ length: VERSION - 1 }, (_, index) => index + 1));
    expect(Object.isFrozen(MIGRATIONS)).toBe(true);
  });

  const steps: readonly Migration[] = [
    { from: 1, name: 'a is called b', up: ({ a, ...rest }) => ({ ok: true, value: { ...rest, b: a } }) },
    {
      from: 2,
      name: 'b is a list',
      up: ({ b, ...rest }) =>
        typeof b === 'string'
          ? { ok: true, value: { ...rest, b: [b] } }
          : { ok: false, problem: { path: 'b', found: 'no text', expected: 'text' } },
    },
  ];

  it('run in order from the version of the file, and write the version they reach', () => {
    expect(migrate({ version: 1, a: 'x' }, 1, steps, 3)).toEqual({ ok: true, value: { version: 3, b: ['x'] } });
    expect(migrate({ version: 2, b: 'x' }, 2, steps, 3)).toEqual({ ok: true, value: { version: 3, b: ['x'] } });
    expect(migrate({ version: 3, b: ['x'] }, 3, steps, 3)).toEqual({ ok: true, value: { version: 3, b: ['x'] } });
  });

  it('refuse what they cannot read', () => {
    expect(migrate({ version: 1 }, 1, steps, 3)).toEqual({
      ok: false,
      problem: { path: 'b', found: 'no text', expected: 'text' },
    });
  });

  it('throw at a hole in the list, which is a mistake in the program', () => {
    expect(() => migrate({ version: 1 }, 1, steps.slice(1), 3)).toThrow('No migration from version 1');
  });
});

describe('files of every version so far', () => {
  it('are kept, one for each', () => {
    const names = Array.from({ length: VERSION }, (_, index) => `v${index + 1}.json`);
    expect(readdirSync(SAVED).sort()).toEqual(names.sort());
  });

  it('the present one opens as the playbook it was saved from, byte for byte', () => {
    const file = readFileSync(join(SAVED, `v${VERSION}.json`));
    expect(openDocument(file)).toEqual({ ok: true, value: samplePlaybook() });
    expect(saveDocument(samplePlaybook())).toBe(file.toString('utf8'));
  });
});

describe('version 1', () => {
  const file = readFileSync(join(SAVED, 'v1.json'), 'utf8');
  const old = JSON.parse(file) as Json;
  const opened = openDocument(file);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  const now = JSON.parse(saveDocument(opened.value)) as Json;

  it('says all it said, and what it never said is told as not said', () => {
    const [before, after] = [said(old), said(now)];
    const gone = [...before].flatMap(([at, value]) => (after.get(at) === value ? [] : [`${kindOf(at)} ${value}`]));
    const come = [...after].flatMap(([at, value]) => (before.get(at) === value ? [] : [`${kindOf(at)} ${value}`]));
    expect(counts(gone)).toEqual({
      'version 1': 1,
      'fronts[].roles[].base.rushes true': 4,
      'fronts[].roles[].base.rushes false': 7,
      'calls[].kind "together"': 2,
    });
    expect(counts(come)).toEqual({
      'version 3': 1,
      'fronts[].roles[].base.pass "rush"': 4,
      'fronts[].roles[].base.pass "none"': 7,
      'calls[].combination.kind "together"': 2,
      'calls[].rushers null': 2,
      'calls[].waivers []': 2,
      'calls[].tags []': 2,
      'calls[].installDay null': 2,
      'checkOuts []': 1,
      'dictionary []': 1,
      'coverages[].needs []': 2,
      'coverages[].tells[].cases[].job.receiver.number 1': 1,
      'looks[].motion null': 2,
      'looks[].runs []': 2,
      'looks[].protections []': 2,
      'pressures[].rushers null': 2,
      'pressures[].installDay null': 2,
      'pressures[].tells[].cases[].job.peel false': 5,
      'pressures[].tells[].cases[].job.order null': 5,
    });
  });

  it('a man who rushed at base is the man who rushes now', () => {
    const base = (pass: string) =>
      opened.value.fronts.flatMap(({ roles }) => roles).flatMap(({ role, base }) => (base.pass === pass ? [role] : []));
    expect(base('rush')).toEqual(['LE', 'N', 'RE', 'O']);
    expect(base('contain')).toEqual([]);
  });

  it('works out to the calls it always was: both pressures run, nothing counted, waived, moved or checked out', () => {
    for (const call of opened.value.calls) {
      for (const look of opened.value.looks) {
        const setup = toSetup(opened.value, { call, look: look.id, spot: 'middle' });
        if (!setup.ok) throw new Error(setup.problem.path);
        const analysis = analyse(setup.value);
        expect(setup.value).toMatchObject({ rushers: null, checkOut: null, waivers: [], dictionary: [] });
        expect(analysis).toMatchObject({ choice: null, motion: null, zones: [], runs: [], protections: [] });
        expect(analysis.findings.every(({ waived }) => waived === null)).toBe(true);
        expect(analysis.second === null).toBe(call.second === null);
      }
    }
  });

  it.each<[string, readonly Step[], Json, string]>([
    ['an entry of its own time in another form', ['fronts', 0, 'roles', 0, 'base', 'rushes'], 'yes', 'base.rushes'],
    ['a call of a kind it did not have', ['calls', 0, 'kind'], 'either-or', 'calls[0].kind'],
    ['an entry it did not have, in a wrong form', ['looks', 0, 'runs'], [1], 'looks[0].runs[0]'],
    ['both names of one thing', ['fronts', 0, 'roles', 0, 'base', 'pass'], 'rush', 'base.rushes'],
    ['both names of another', ['calls', 0, 'combination'], { kind: 'together' }, 'calls[0].kind'],
    ['a list that is none', ['calls'], 'none', 'calls'],
    ['a part that is no object', ['coverages', 0], 7, 'coverages[0]'],
    ['a job that is none', ['pressures', 0, 'tells', 0, 'cases', 0, 'job'], null, 'cases[0].job'],
  ])('is refused where it is wrong: %s', (_, path, value, at) => {
    const spoilt = openDocument(JSON.stringify(withAt(old, path, value)));
    expect(spoilt.ok ? [] : spoilt.problem.map((problem) => problem.path.replace(/ \(.*\)$/, ''))).toEqual(
      expect.arrayContaining([expect.stringMatching(new RegExp(`${at.replaceAll(/[.[\]]/g, '\\$&')}$`))]),
    );
  });

  it('with a part missing is refused at that part, as it always was', () => {
    for (const part of ['fronts', 'coverages', 'looks', 'pressures', 'calls', 'roles', 'words']) {
      const spoilt = openDocument(JSON.stringify(withAt(old, [part], undefined)));
      expect(spoilt.ok ? [] : spoilt.problem.map(({ path }) => path)).toContain(part);
    }
  });
});

describe('version 2', () => {
  const file = readFileSync(join(SAVED, 'v2.json'), 'utf8');
  const old = JSON.parse(file) as Json;
  const opened = openDocument(file);
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  const now = JSON.parse(saveDocument(opened.value)) as Json;

  it('says all it said; no install day and no tags of calls were ever told', () => {
    const [before, after] = [said(old), said(now)];
    const gone = [...before].flatMap(([at, value]) => (after.get(at) === value ? [] : [`${kindOf(at)} ${value}`]));
    const come = [...after].flatMap(([at, value]) => (before.get(at) === value ? [] : [`${kindOf(at)} ${value}`]));
    expect(counts(gone)).toEqual({ 'version 2': 1 });
    expect(counts(come)).toEqual({
      'version 3': 1,
      'calls[].tags []': 3,
      'calls[].installDay null': 3,
      'pressures[].installDay null': 2,
    });
  });

  it.each<[string, readonly Step[], Json, string]>([
    ['an install day before the first', ['pressures', 0, 'installDay'], 0, 'pressures[0].installDay'],
    ['an install day beyond the last', ['calls', 1, 'installDay'], 61, 'calls[1].installDay'],
    ['half a day', ['calls', 0, 'installDay'], 1.5, 'calls[0].installDay'],
    ['tags that are no list', ['calls', 0, 'tags'], 'third down', 'calls[0].tags'],
    ['pressures that are no list', ['pressures'], 'none', 'pressures'],
    ['a call that is none', ['calls', 0], 7, 'calls[0]'],
  ])('is refused where it is wrong: %s', (_, path, value, at) => {
    const spoilt = openDocument(JSON.stringify(withAt(old, path, value)));
    expect(spoilt.ok ? [] : spoilt.problem.map((problem) => problem.path.replace(/ \(.*\)$/, ''))).toContain(at);
  });
});

/** Every value a file holds that is no object and no list with something in it, by its place. */
function said(value: Json): ReadonlyMap<string, string> {
  return new Map(
    places(value).flatMap(({ path, value: here }) => {
      const isLeaf = typeof here !== 'object' || here === null || (Array.isArray(here) && here.length === 0);
      return isLeaf ? [[pathText(path), JSON.stringify(here)]] : [];
    }),
  );
}

/** A place without its indexes. */
function kindOf(place: string): string {
  return place.replaceAll(/\[\d+\]/g, '[]');
}

function counts(texts: readonly string[]): Readonly<Record<string, number>> {
  const found: Record<string, number> = {};
  for (const text of texts) found[text] = (found[text] ?? 0) + 1;
  return found;
}
