import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { pages } from './pages.ts';

const DOCS = new URL('../../docs/', import.meta.url);
const made = pages();

mkdirSync(new URL('checks/', DOCS), { recursive: true });
for (const [path, text] of made) writeFileSync(new URL(path, DOCS), text);
// A page of a check that is gone goes with it.
for (const file of readdirSync(new URL('checks/', DOCS))) {
  if (!made.has(`checks/${file}`)) rmSync(new URL(`checks/${file}`, DOCS));
}
