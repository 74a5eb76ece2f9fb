import { writeFileSync } from 'node:fs';
import { checksPage } from './checksPage.ts';

writeFileSync(new URL('../../docs/checks.md', import.meta.url), checksPage());
