/** Writes docs/playbook.schema.json, the published shape of a playbook file, from the one description in the source. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { playbookJsonSchema } from '../src/document/index.ts';

const file = join(import.meta.dirname, '..', 'docs', 'playbook.schema.json');
writeFileSync(file, `${JSON.stringify(playbookJsonSchema(), null, 2)}\n`);
