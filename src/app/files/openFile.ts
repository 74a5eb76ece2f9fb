import { refused, type Result } from '../../base/index.ts';
import { MAX_FILE_BYTES, openDocument, type Playbook, type Refusal } from '../../document/index.ts';

/** Reads a file the coach chose. What was open is not touched, whatever comes of it. */
export async function openFile(file: File): Promise<Result<Playbook, readonly Refusal[]>> {
  // Asked before reading: a file of many gigabytes would fill the memory first.
  if (file.size > MAX_FILE_BYTES) {
    const expected = `at most ${MAX_FILE_BYTES} bytes`;
    return refused([{ path: 'the whole file', found: `${file.size} bytes`, expected }]);
  }
  try {
    return openDocument(new Uint8Array(await file.arrayBuffer()));
  } catch (error) {
    const found = error instanceof Error ? error.message : String(error);
    return refused([{ path: 'the whole file', found, expected: 'a file this browser can read' }]);
  }
}
