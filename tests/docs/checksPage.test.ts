import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checksPage } from '../../scripts/docs/checksPage.ts';
import { standardChecks } from '../../src/engine/index.ts';

it('docs/checks.md is what the checks say (run `npm run docs`)', () => {
  expect(readFileSync('docs/checks.md', 'utf8')).toBe(checksPage());
});

it('every check is on the page with its id and source', () => {
  const page = checksPage();
  for (const check of standardChecks) {
    expect(page).toContain(`\`${check.id}\``);
    expect(page).toContain(check.source);
  }
});
