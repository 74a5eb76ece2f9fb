/** tsconfig.pure.json is shown stopping a deliberate trespass, with the lawful neighbour passing beside it. */
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { ROOT } from './cruise.ts';

describe('what a pure folder may be compiled with', () => {
  const FILE = join(ROOT, 'src/engine/probe.ts');

  /** Compiles one made-up file of the engine with the options of tsconfig.pure.json. */
  function problemsIn(text: string): readonly string[] {
    const parsed = ts.getParsedCommandLineOfConfigFile(join(ROOT, 'tsconfig.pure.json'), undefined, {
      ...ts.sys,
      onUnRecoverableConfigFileDiagnostic: (problem) => {
        throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
      },
    });
    if (parsed === undefined) throw new Error('tsconfig.pure.json cannot be read.');
    const { options } = parsed;
    const host = ts.createCompilerHost(options);
    const real = host.getSourceFile.bind(host);
    host.getSourceFile = (name, target) =>
      name === FILE ? ts.createSourceFile(name, text, target) : real(name, target);
    const program = ts.createProgram({ rootNames: [FILE], options, host });
    return ts.getPreEmitDiagnostics(program).map((found) => ts.flattenDiagnosticMessageText(found.messageText, '\n'));
  }

  it.each([
    ['window', 'export const width = window.innerWidth;'],
    ['document', 'export const title = document.title;'],
    ['setTimeout', 'setTimeout(() => undefined, 1);'],
    ['process', 'export const env = process.env;'],
    ['console', "console.log('here');"],
    ['fetch', "export const asked = fetch('x');"],
  ])('does not know %s', (name, text) => {
    expect(problemsIn(text)).toEqual([expect.stringContaining(`Cannot find name '${name}'`)]);
  });

  it('knows the language itself, and a local variable of any name', () => {
    expect(
      problemsIn('const document = [3, 1, 2]; export const sorted: readonly number[] = document.toSorted();'),
    ).toEqual([]);
  });

  it.each([
    ['an index may miss', 'const list = [1]; export const first: number = list[0];', 'undefined'],
    [
      'an optional property is absent, not undefined',
      'export const a: { b?: number } = { b: undefined };',
      'exactOptional',
    ],
    ['an enum is not erasable', 'export enum Side { Left }', 'erasableSyntaxOnly'],
  ])('is strict: %s', (_, text, says) => {
    expect(problemsIn(text).join('\n')).toContain(says);
  });
});
