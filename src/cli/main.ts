import { readFileSync, statSync } from 'node:fs';
import { ok, refused, type Result } from '../base/index.ts';
import { MAX_FILE_BYTES } from '../document/index.ts';
import { run } from './run.ts';

/** Not 1, which Node would choose: that one says that a call must not be installed. */
const FAULT = 3;

/** Reads a file whose size is in order; a folder, a device or a file far too large is refused unread. */
function readFile(path: string): Result<Uint8Array, string> {
  try {
    const stats = statSync(path);
    if (!stats.isFile()) return refused('the whole file: found no file, expected a Gapwright playbook');
    if (stats.size > MAX_FILE_BYTES) {
      return refused(`the whole file: found ${stats.size} bytes, expected at most ${MAX_FILE_BYTES} bytes`);
    }
    return ok(readFileSync(path));
  } catch (error) {
    if (!(error instanceof Error) || !('code' in error)) throw error;
    return refused(`the whole file: found nothing that can be read (${error.message}), expected a Gapwright playbook`);
  }
}

// Whoever reads the report may close it early, as `head` does; that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  process.exitCode = run(process.argv.slice(2), {
    readFile,
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
  });
} catch (error) {
  process.stderr.write(
    `A fault of the program: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  );
  process.exitCode = FAULT;
}
