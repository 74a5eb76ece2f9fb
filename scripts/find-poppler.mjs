/**
 * Finds poppler's tools, or installs them. The tests read our PDF files back with them: a second program's opinion of what
 * we wrote (its text, its fonts, and that no picture stands in for a drawing).
 */
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { aptInstall, canAptInstall, onPath, run } from './commands.mjs';

const TOOLS = /** @type {const} */ (['pdftotext', 'pdffonts', 'pdfimages']);

/**
 * Makes sure that pdftotext, pdffonts and pdfimages are on PATH and start.
 * @param {(line: string) => void} [say] told what is done, one line at a time
 * @returns {string} the version, as pdftotext names it
 * @throws {Error} naming what is missing and what to do
 */
export function findPoppler(say = () => undefined) {
  let missing = missingTools();
  let apt = 'not tried (needs apt-get and root)';
  if (missing.length > 0 && canAptInstall()) {
    say("installing Debian's poppler-utils");
    apt = aptInstall('poppler-utils').said;
    missing = missingTools();
  }
  if (missing.length > 0) {
    throw new Error(
      [
        `Poppler's ${missing.join(', ')} not found on PATH, or not starting.`,
        `  - apt-get install poppler-utils: ${apt}`,
        'Install poppler (Debian: poppler-utils, Mac: brew install poppler, Windows: put its bin folder on PATH).',
      ].join('\n'),
    );
  }
  return /version (\S+)/.exec(run('pdftotext', ['-v']).said)?.[1] ?? 'of unknown version';
}

function missingTools() {
  return TOOLS.filter((tool) => onPath(tool) === undefined || !run(tool, ['-v']).ok);
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    console.log(findPoppler((line) => console.error(line)));
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
