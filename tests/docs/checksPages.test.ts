import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pages } from '../../scripts/docs/pages.ts';
import { standardChecks } from '../../src/engine/index.ts';
import { ALL_EXAMPLES } from '../engine/checks/examples/index.ts';

const DOCS = new URL('../../docs/', import.meta.url);
const committed = (path: string): string => readFileSync(new URL(path, DOCS), 'utf8');
const made = pages();
const page = (path: string): string => made.get(path) ?? '';

describe('the pages of the checks (run `npm run docs`)', () => {
  it.each([...made.keys()])('docs/%s is what the checks and their examples say', (path) => {
    expect(committed(path)).toBe(made.get(path));
  });

  it('there is one page for every check in the list, and no other', () => {
    const ids = standardChecks.map(({ id }) => `${id}.md`).sort();
    expect(readdirSync(new URL('checks/', DOCS)).sort()).toEqual(ids);
    expect([...made.keys()].filter((path) => path.startsWith('checks/')).sort()).toEqual(
      ids.map((file) => `checks/${file}`),
    );
  });

  it.each(standardChecks)('$id: id, severity, why it matters and the source are on its page', (check) => {
    const text = page(`checks/${check.id}.md`);
    expect(text).toContain(`# ${check.title}\n`);
    expect(text).toContain(`\`${check.id}\`: ${check.severity}, `);
    expect(text).toContain(check.matters);
    expect(text).toContain(check.source);
    expect(page('checks.md')).toContain(`(checks/${check.id}.md)`);
  });

  it.each(ALL_EXAMPLES.map((examples) => [examples.check.id, examples] as const))(
    '%s: what it finds, leaves alone and cannot tell is shown',
    (id, { found, leftAlone, cannotTell }) => {
      const text = page(`checks/${id}.md`);
      const shown = [found[0], leftAlone[0], ...cannotTell.slice(1)].flatMap((example) => example?.name ?? []);
      for (const name of shown) expect(text.toLowerCase()).toContain(`${name.toLowerCase()}.\n`);
    },
  );

  it('says a severity on the page wherever an example has another one than its check', () => {
    const graver = ALL_EXAMPLES.flatMap(({ check, found }) =>
      found.flatMap(({ finds }) =>
        finds.flatMap(({ severity }) => (severity === undefined ? [] : [[check.id, severity]])),
      ),
    );
    expect(graver.length).toBeGreaterThan(0);
    for (const [id = '', severity = ''] of graver) {
      expect(page(`checks/${id}.md`).toLowerCase()).toContain(`> **${severity}.**`);
    }
  });

  it.each([...made].filter(([path]) => path.startsWith('checks/')))('%s: sentences are in words', (_path, text) => {
    const sentences = text.split('\n').filter((line) => line.startsWith('>'));
    expect(sentences.length).toBeGreaterThan(0);
    // No blank left open, and nothing of the notation.
    expect(sentences.filter((sentence) => /[{}@]|-(left|right|call|away)\b/.test(sentence))).toEqual([]);
  });
});
