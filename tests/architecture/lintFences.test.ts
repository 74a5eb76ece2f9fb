/** Each fence in eslint.config.js is shown stopping a deliberate trespass, with the lawful neighbour passing beside it. */
import { join } from 'node:path';
import { ESLint } from 'eslint';
import tseslint from 'typescript-eslint';
import { describe, expect, it } from 'vitest';
import { ROOT } from './cruise.ts';

describe('what lint stops', () => {
  // The fences need no types; leaving the rules that do out spares this test the building of a program.
  const eslint = new ESLint({
    cwd: ROOT,
    overrideConfig: [{ files: ['**/*.{ts,tsx}'], ...tseslint.configs.disableTypeChecked }],
  });

  async function lint(file: string, text: string): Promise<readonly { rule: string | null; message: string }[]> {
    const results = await eslint.lintText(text, { filePath: join(ROOT, file) });
    return results.flatMap(({ messages }) => messages.map(({ ruleId, message }) => ({ rule: ruleId, message })));
  }

  const manyLines = (count: number): string =>
    Array.from({ length: count }, (_, index) => `export const v${index} = ${index};\n`).join('');
  const longFunction = (count: number): string =>
    `export function long(): number {\n  let n = 0;\n${'  n += 1;\n'.repeat(count)}  return n;\n}\n`;

  const PURE = ['base', 'engine', 'document', 'menu', 'quiz', 'scene', 'report'];
  const BANNED: readonly (readonly [what: string, text: string, rule: string, instead: RegExp])[] = [
    ['window', 'export const w = window.innerWidth;', 'no-restricted-globals', /take what you need as an argument/],
    ['document', 'export const t = document.title;', 'no-restricted-globals', /take what you need as an argument/],
    ['navigator', 'export const n = navigator.language;', 'no-restricted-globals', /take what you need as an argument/],
    ['globalThis', 'export const g = globalThis;', 'no-restricted-globals', /take what you need as an argument/],
    ['localStorage', "localStorage.setItem('a', 'b');", 'no-restricted-globals', /return a value/],
    ['setTimeout', 'setTimeout(() => undefined, 1);', 'no-restricted-globals', /take a budget/],
    ['setInterval', 'setInterval(() => undefined, 1);', 'no-restricted-globals', /take a budget/],
    ['performance', 'export const p = performance.now();', 'no-restricted-globals', /Time comes in as an argument/],
    ['Date.now', 'export const d = Date.now();', 'no-restricted-globals', /Time comes in as an argument/],
    ['new Date', 'export const d = new Date();', 'no-restricted-globals', /Time comes in as an argument/],
    ['Math.random', 'export const r = Math.random();', 'no-restricted-properties', /Chance comes in as an argument/],
    ['console', "console.log('x');", 'no-restricted-globals', /Return what you found/],
    ['process', 'export const e = process.argv;', 'no-restricted-globals', /Take settings as arguments/],
    ['fetch', "export const f = fetch('x');", 'no-restricted-globals', /Take the data as an argument/],
    ['Intl', 'export const i = Intl;', 'no-restricted-globals', /every machine/],
    ['localeCompare', "export const c = 'a'.localeCompare('b');", 'no-restricted-syntax', /every machine/],
    ['a late import', "export const l = import('./x.ts');", 'no-restricted-syntax', /import it at the top/],
    [
      'a cast',
      'export const n = (x: unknown): number => x as number;',
      '@typescript-eslint/consistent-type-assertions',
      /./,
    ],
  ];

  it.each(BANNED)('%s, in each pure folder, saying what to do instead', async (_, text, rule, instead) => {
    for (const folder of PURE) {
      const found = await lint(`src/${folder}/probe.ts`, text);
      expect(found).toEqual([{ rule, message: expect.stringMatching(instead) as unknown }]);
    }
  });

  it.each(['src/app/probe.ts', 'src/store/probe.ts', 'scripts/probe.ts'])(
    'not the same in %s, where the world begins',
    async (file) => {
      expect(await lint(file, 'export const seen = [window.innerWidth, Date.now(), Math.random()];')).toEqual([]);
    },
  );

  it('not a local variable that happens to have such a name', async () => {
    expect(await lint('src/engine/probe.ts', 'export const title = (document: { t: string }) => document.t;')).toEqual(
      [],
    );
  });

  it.each([
    ['new Function', "export const f = new Function('return 1');", 'no-restricted-syntax', /Text never becomes code/],
    ['eval', "export const e = eval('1');", 'no-restricted-syntax', /Text never becomes code/],
    ['an enum', 'export enum Side { Left }', 'no-restricted-syntax', /as const/],
    ['an import without its ending', "export * from './other';", 'no-restricted-syntax', /whole file name/],
    ['any', 'export const a = (x: any): unknown => x;', '@typescript-eslint/no-explicit-any', /Unexpected any/],
    ['!', 'export const b = (x?: number): number => x!;', '@typescript-eslint/no-non-null-assertion', /non-null/],
    ['a note to self', '// TODO later\nexport const n = 1;', 'no-warning-comments', /todo/],
  ])('%s, in every folder of src', async (_, text, rule, message) => {
    for (const folder of [...PURE, 'print', 'store', 'editor', 'app', 'cli']) {
      const found = await lint(`src/${folder}/probe.ts`, text);
      expect(found).toContainEqual({ rule, message: expect.stringMatching(message) as unknown });
    }
  });

  it('not `as const`, a whole file name, or a package', async () => {
    const text =
      "export * from './other.ts';\nexport { z } from 'zod';\nexport const SIDES = ['left', 'right'] as const;\n";
    expect(await lint('src/document/probe.ts', text)).toEqual([]);
  });

  it('a cast everywhere but where a brand is made', async () => {
    const cast = 'export const n = (x: number): 1 => x as 1;';
    expect(await lint('src/base/brand.ts', cast)).toEqual([]);
    expect(await lint('src/base/other.ts', cast)).toHaveLength(1);
  });

  it.each([
    ['src/engine/probe.ts', 300, 60],
    ['src/report/probe.ts', 300, 60],
    ['src/app/probe.ts', 400, 120],
    ['src/cli/probe.ts', 400, 120],
  ])('a file of %s over %i lines, or a function over %i', async (file, lines, functionLines) => {
    const rules = async (text: string): Promise<readonly (string | null)[]> =>
      (await lint(file, text)).map(({ rule }) => rule);
    // A function here has four lines besides those that count up.
    expect(await rules(manyLines(lines))).toEqual([]);
    expect(await rules(manyLines(lines + 1))).toEqual(['max-lines']);
    expect(await rules(longFunction(functionLines - 4))).toEqual([]);
    expect(await rules(longFunction(functionLines - 3))).toEqual(['max-lines-per-function']);
  });

  it('a hook called only sometimes', async () => {
    const sometimes =
      "import { useState } from 'react';\nexport const Panel = (p: { on: boolean }) => { if (p.on) useState(1); return null; };";
    const always = "import { useState } from 'react';\nexport const Panel = () => { useState(1); return null; };";
    expect((await lint('src/app/Probe.tsx', sometimes)).map(({ rule }) => rule)).toContain(
      'react-hooks/rules-of-hooks',
    );
    expect(await lint('src/app/Probe.tsx', always)).toEqual([]);
  });
});
