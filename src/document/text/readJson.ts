import { ok, refused, type Result } from '../../base/index.ts';
import { MAX_DEPTH, MAX_FILE_BYTES, MAX_KEYS } from '../limits.ts';
import { quoted, type Refusal } from '../refusal.ts';
import { decodeUtf8, utf8Offset } from './decodeUtf8.ts';
import { scanJson, type JsonFault } from './scanJson.ts';

const WHOLE_FILE = 'the whole file';
const A_PLAYBOOK = 'a Gapwright playbook';
const BYTE_ORDER_MARK = '\uFEFF';

/**
 * From the bytes or the text of a file to a value of JSON. Refused, in this order: too large, zero-filled, not UTF-8, empty,
 * nested too deep or not JSON. A byte order mark at the start is dropped.
 */
export function readJson(file: string | Uint8Array): Result<unknown, Refusal> {
  const size = sizeInBytes(file);
  if (size > MAX_FILE_BYTES) return refuseFile(`${size} bytes`, `at most ${MAX_FILE_BYTES} bytes`);
  if (isZeroFilled(file)) {
    const found = `${size} zero bytes: probably a crash while it was being saved`;
    return refuseFile(found, `${A_PLAYBOOK}; look for an earlier copy of this file`);
  }
  const decoded = typeof file === 'string' ? ok(file) : decodeUtf8(file);
  if (!decoded.ok) {
    const { at, cut } = decoded.problem;
    return cut ? endsEarly(size) : refuseFile(`a byte that is not UTF-8 at byte ${at}`, 'text in UTF-8');
  }
  const mark = decoded.value.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : '';
  const text = decoded.value.slice(mark.length);
  if (/^[ \t\r\n]*$/.test(text)) return refuseFile('nothing: the file is empty', A_PLAYBOOK);
  const fault = scanJson(text, { depth: MAX_DEPTH, keys: MAX_KEYS });
  if (fault !== null) return refuseJson(text, fault, utf8Offset(mark, mark.length));
  const value: unknown = JSON.parse(text);
  return ok(value);
}

/** `skipped` bytes stand in the file before the text. */
function refuseJson(text: string, fault: JsonFault, skipped: number): Result<never, Refusal> {
  if (fault.kind === 'ends-early') return endsEarly(skipped + utf8Offset(text, text.length));
  const before = text.slice(0, fault.index);
  const line = before.split('\n').length;
  const column = fault.index - before.lastIndexOf('\n');
  const path = `line ${line}, column ${column}`;
  if (fault.kind === 'too-deep') {
    const found = `lists and objects nested too deep at byte ${skipped + utf8Offset(text, fault.index)}`;
    return refused({ path, found, expected: `at most ${MAX_DEPTH} inside each other` });
  }
  if (fault.kind === 'too-many-keys') {
    return refused({ path, found: `more than ${MAX_KEYS} keys in one object`, expected: `at most ${MAX_KEYS}` });
  }
  return refused({ path, found: quoted(foundAt(text, fault.index)), expected: fault.expected });
}

/** The word or the one character that stands there. */
function foundAt(text: string, index: number): string {
  const here = text.slice(index, index + 100);
  return /^[-\w.]+/.exec(here)?.[0] ?? String.fromCodePoint(here.codePointAt(0) ?? 0);
}

function endsEarly(bytes: number): Result<never, Refusal> {
  return refuseFile(
    `a file that ends too early at byte ${bytes}`,
    `the rest of ${A_PLAYBOOK}; fetch or save the file again`,
  );
}

function refuseFile(found: string, expected: string): Result<never, Refusal> {
  return refused({ path: WHOLE_FILE, found, expected });
}

function sizeInBytes(file: string | Uint8Array): number {
  return typeof file === 'string' ? utf8Offset(file, file.length) : file.length;
}

function isZeroFilled(file: string | Uint8Array): boolean {
  if (file.length === 0) return false;
  return typeof file === 'string' ? /^\0*$/.test(file) : file.every((byte) => byte === 0);
}
