/**
 * A fence that never stopped anybody may not be standing. Each rule of .dependency-cruiser.cjs is shown here stopping a
 * deliberate trespass, beside a lawful tree that passes. compileFences and lintFences do the same for the other fences; the
 * fifth, frozen inputs, is shown where the engine's tests keep it.
 */
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ROOT, cruiseSources } from './cruise.ts';

describe('who may import whom', () => {
  type Tree = Readonly<Record<string, string>>;

  /** Every folder importing everything its row allows. It is the lawful neighbour of all the rows. */
  const LAWFUL: Tree = {
    'src/base/index.ts': `export const base = 1;`,
    'src/engine/index.ts': `export * from './inside.ts';`,
    'src/engine/inside.ts': `import { base } from '../base/index.ts'; export const engine = base; export type Engine = number;`,
    'src/document/index.ts': `import { z } from 'zod'; import { base } from '../base/index.ts'; import { engine } from '../engine/index.ts'; export const document = [z, base, engine];`,
    'src/scene/index.ts': `import { base } from '../base/index.ts'; import { engine } from '../engine/index.ts'; import { document } from '../document/index.ts'; export const scene = [base, engine, document];`,
    'src/report/index.ts': `import { base } from '../base/index.ts'; import { engine } from '../engine/index.ts'; export const report = [base, engine];`,
    'src/print/index.ts': `import PDFDocument from 'pdfkit'; import { base } from '../base/index.ts'; import { engine } from '../engine/index.ts'; import { scene } from '../scene/index.ts'; import { report } from '../report/index.ts'; export const print = [PDFDocument, base, engine, scene, report];`,
    'src/store/index.ts': `import { createStore } from 'zustand/vanilla'; import { subscribeWithSelector } from 'zustand/middleware'; import { temporal } from 'zundo'; import { base } from '../base/index.ts'; import { engine } from '../engine/index.ts'; import { document } from '../document/index.ts'; export const store = [createStore, subscribeWithSelector, temporal, base, engine, document];`,
    'src/editor/index.ts': `import { Stage } from 'react-konva'; import Konva from 'konva'; import { useState } from 'react'; import { scene } from '../scene/index.ts'; import { store } from '../store/index.ts'; import { tool } from './tools/tool.ts'; export const editor = [Stage, Konva, useState, scene, store, tool];`,
    'src/editor/tools/tool.ts': `import { engine } from '../../engine/index.ts'; export const tool = engine;`,
    'src/app/main.tsx': `import { createRoot } from 'react-dom/client'; import { useStore } from 'zustand'; import { openDB } from 'idb'; import '@fontsource/ibm-plex-sans/latin-400.css'; import font from '@fontsource/ibm-plex-sans/files/ibm-plex-sans-latin-400-normal.woff?url'; import demo from '../../demo-data/playbook.json'; import { editor } from '../editor/index.ts'; import { print } from '../print/index.ts'; import { report } from '../report/index.ts'; export const app = [createRoot, useStore, openDB, font, demo, editor, print, report];`,
    'demo-data/playbook.json': '{}',
    'src/app/worker.ts': `export const worker = 1;`,
    'src/cli/main.ts': `import { readFileSync } from 'node:fs'; import { document } from '../document/index.ts'; import { print } from '../print/index.ts'; import { report } from '../report/index.ts'; export const cli = [readFileSync, document, print, report];`,
  };

  const TRESPASSES: readonly { readonly what: string; readonly files: Tree; readonly stopped: readonly RegExp[] }[] = [
    {
      what: 'base imports a package',
      files: { 'src/base/index.ts': `import { z } from 'zod'; export const base = z;` },
      stopped: [/^base-imports-only-what-its-row-lists: src\/base\/index.ts -> .*node_modules\/zod\//],
    },
    {
      what: 'the engine imports zod',
      files: { 'src/engine/index.ts': `export * from './inside.ts'; export { z } from 'zod';` },
      stopped: [/^engine-imports-only-what-its-row-lists: src\/engine\/index.ts -> .*node_modules\/zod\//],
    },
    {
      what: 'the engine imports only a type of React',
      files: { 'src/engine/index.ts': `export * from './inside.ts'; export type { ReactNode } from 'react';` },
      stopped: [/^engine-imports-only-what-its-row-lists: src\/engine\/index.ts -> .*node_modules\/.*react\//],
    },
    {
      what: 'the engine imports the store, which stands above it',
      files: { 'src/engine/index.ts': `export * from './inside.ts'; export { store } from '../store/index.ts';` },
      stopped: [
        /^engine-imports-only-what-its-row-lists: src\/engine\/index.ts -> src\/store\/index.ts$/,
        /^no-cycles: /,
        /^no-cycles: /,
      ],
    },
    {
      what: 'the engine knows the demo',
      files: {
        'src/engine/index.ts': `export * from './inside.ts'; import demo from '../../demo-data/playbook.json'; export { demo };`,
      },
      stopped: [/^engine-imports-only-what-its-row-lists: src\/engine\/index.ts -> demo-data\/playbook.json$/],
    },
    {
      what: 'the document imports a canvas',
      files: { 'src/document/index.ts': `import Konva from 'konva'; export const document = Konva;` },
      stopped: [/^document-imports-only-what-its-row-lists: src\/document\/index.ts -> .*node_modules\/konva\//],
    },
    {
      what: 'the scene imports the store',
      files: { 'src/scene/index.ts': `import { store } from '../store/index.ts'; export const scene = store;` },
      stopped: [/^scene-imports-only-what-its-row-lists: src\/scene\/index.ts -> src\/store\/index.ts$/],
    },
    {
      what: 'the report reads the document instead of results',
      files: {
        'src/report/index.ts': `import { document } from '../document/index.ts'; export const report = document;`,
      },
      stopped: [/^report-imports-only-what-its-row-lists: src\/report\/index.ts -> src\/document\/index.ts$/],
    },
    {
      what: 'print imports the document',
      files: {
        'src/print/index.ts': `import { document } from '../document/index.ts'; export const print = document;`,
      },
      stopped: [/^print-imports-only-what-its-row-lists: src\/print\/index.ts -> src\/document\/index.ts$/],
    },
    {
      what: 'the store imports the scene',
      files: { 'src/store/index.ts': `import { scene } from '../scene/index.ts'; export const store = scene;` },
      stopped: [/^store-imports-only-what-its-row-lists: src\/store\/index.ts -> src\/scene\/index.ts$/],
    },
    {
      what: 'the store brings React along with zustand',
      files: { 'src/store/index.ts': `import { create } from 'zustand'; export const store = create;` },
      stopped: [/^store-does-without-react: src\/store\/index.ts -> .*node_modules\/zustand\//],
    },
    {
      what: 'the editor imports the PDF library',
      files: { 'src/editor/tools/tool.ts': `import PDFDocument from 'pdfkit'; export const tool = PDFDocument;` },
      stopped: [/^editor-imports-only-what-its-row-lists: src\/editor\/tools\/tool.ts -> .*node_modules\/pdfkit\//],
    },
    {
      what: 'an editor tool draws',
      files: { 'src/editor/tools/tool.ts': `import Konva from 'konva'; export const tool = Konva;` },
      stopped: [/^editor-tools-stay-pure: src\/editor\/tools\/tool.ts -> .*node_modules\/konva\//],
    },
    {
      what: 'the app draws on a canvas itself',
      files: { 'src/app/main.tsx': `${LAWFUL['src/app/main.tsx'] ?? ''} export { Stage } from 'react-konva';` },
      stopped: [/^app-imports-only-what-its-row-lists: src\/app\/main.tsx -> .*node_modules\/react-konva\//],
    },
    {
      what: 'the headless check imports the store',
      files: { 'src/cli/main.ts': `import { store } from '../store/index.ts'; export const cli = store;` },
      stopped: [/^cli-imports-only-what-its-row-lists: src\/cli\/main.ts -> src\/store\/index.ts$/],
    },
    {
      what: 'a folder without a row',
      files: {
        'src/stray/index.ts': `import { base } from '../base/index.ts'; export const stray = base;`,
        'src/cli/main.ts': `import { stray } from '../stray/index.ts'; export const cli = stray;`,
      },
      stopped: [
        /^cli-imports-only-what-its-row-lists: src\/cli\/main.ts -> src\/stray\/index.ts$/,
        /^every-folder-has-a-row: src\/stray\/index.ts -> src\/base\/index.ts$/,
      ],
    },
    {
      what: 'the engine reads a file',
      files: { 'src/engine/index.ts': `export * from './inside.ts'; export { readFileSync } from 'node:fs';` },
      stopped: [/^node-only-in-cli: src\/engine\/index.ts -> fs$/],
    },
    {
      what: 'the report reaches past the door of the engine',
      files: { 'src/report/index.ts': `import { engine } from '../engine/inside.ts'; export const report = engine;` },
      stopped: [/^one-door-per-folder: src\/report\/index.ts -> src\/engine\/inside.ts$/],
    },
    {
      what: 'two files need each other',
      files: {
        'src/engine/index.ts': `export * from './inside.ts'; export const outside = 1;`,
        'src/engine/inside.ts': `import { outside } from './index.ts'; export const engine = outside;`,
      },
      stopped: [/^no-cycles: src\/engine\/in(dex|side).ts -> src\/engine\/in(dex|side).ts$/],
    },
    {
      what: 'a file that nothing imports and that imports nothing',
      files: { 'src/engine/alone.ts': `export const alone = 1;` },
      stopped: [/^no-orphans: src\/engine\/alone.ts/, /^no-unused-files: src\/engine\/alone.ts/],
    },
    {
      what: 'a file that neither the app nor the headless check reaches',
      files: { 'src/engine/unused.ts': `import { engine } from './inside.ts'; export const unused = engine;` },
      stopped: [/^no-unused-files: src\/engine\/unused.ts/],
    },
    {
      what: 'an import of nothing',
      files: { 'src/cli/main.ts': `export { gone } from './gone.ts';` },
      stopped: [/^no-unresolvable-imports: src\/cli\/main.ts -> .*gone/],
    },
  ];

  const folders: string[] = [];
  afterAll(() => {
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  });

  async function violationsOf(tree: Tree): Promise<readonly string[]> {
    const folder = mkdtempSync(join(tmpdir(), 'fences-'));
    folders.push(folder);
    symlinkSync(join(ROOT, 'node_modules'), join(folder, 'node_modules'), 'junction');
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
    for (const [path, text] of Object.entries(tree)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
    const { modules, violations } = await cruiseSources(folder);
    expect(modules).toBe(Object.keys(tree).filter((path) => path.startsWith('src/')).length);
    return violations;
  }

  it('lets through a tree in which every folder imports all it may', async () => {
    expect(await violationsOf(LAWFUL)).toEqual([]);
  });

  it.each(TRESPASSES)('stops it when $what', async ({ files, stopped }) => {
    const violations = await violationsOf({ ...LAWFUL, ...files });
    expect(violations).toEqual(stopped.map((pattern): unknown => expect.stringMatching(pattern)));
  });
});
