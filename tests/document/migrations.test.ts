/** The way from an old file to the present: every step numbered and run, every released version still opening. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openDocument, saveDocument, VERSION } from '../../src/document/index.ts';
import { migrate, MIGRATIONS, type Migration } from '../../src/document/migrations/index.ts';
import { samplePlaybook } from './samplePlaybook.ts';

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

  it('version 1 opens as the playbook it was saved from, byte for byte', () => {
    const file = readFileSync(join(SAVED, 'v1.json'));
    expect(openDocument(file)).toEqual({ ok: true, value: samplePlaybook() });
    expect(saveDocument(samplePlaybook())).toBe(file.toString('utf8'));
  });
});
