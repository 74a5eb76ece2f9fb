import { readdirSync, readFileSync } from 'node:fs';
import type { Check } from '../../../src/engine/index.ts';

const FOLDER = new URL('../../../src/engine/checks/', import.meta.url);

/** Where the checks are written: file name without ending → the id it gives its check. A file that defines none is not listed. */
export const CHECK_FILES: ReadonlyMap<string, string> = new Map(
  readdirSync(FOLDER)
    .filter((file) => file.endsWith('.ts'))
    .sort()
    .flatMap((file) => {
      const text = readFileSync(new URL(file, FOLDER), 'utf8');
      const id = /checkOf(?:Play|Telling)\(\{\s*id: '([^']+)'/.exec(text)?.[1];
      return id === undefined ? [] : [[file.slice(0, -'.ts'.length), id] as const];
    }),
);

/** The file of a check, without its ending. Throws when no file of the folder defines it. */
export function fileOf({ id }: Pick<Check, 'id'>): string {
  const file = [...CHECK_FILES].find(([, each]) => each === id)?.[0];
  if (file === undefined) throw new Error(`No file defines the check ${id}`);
  return file;
}
