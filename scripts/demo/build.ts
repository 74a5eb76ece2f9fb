/**
 * Writes demo-data/playbook.json from the tables beside this file: `npx tsx scripts/demo/build.ts`.
 * Everything in it is invented. The tests hold the file and the tables together.
 */
import { writeFileSync } from 'node:fs';
import { playbookText } from './playbook.ts';

writeFileSync(new URL('../../demo-data/playbook.json', import.meta.url), playbookText());
