import { ALL_EXAMPLES } from '../../tests/engine/checks/examples/index.ts';
import { checkPage } from './checkPage.ts';
import { checksPage } from './checksPage.ts';

/** Every page made from the checks: its path under docs, and its text. */
export function pages(): ReadonlyMap<string, string> {
  return new Map([
    ['checks.md', checksPage()],
    ...ALL_EXAMPLES.map((examples) => [`checks/${examples.check.id}.md`, checkPage(examples)] as const),
  ]);
}
