import { ok, refused, type Result } from '../../base/index.ts';

/** Where bytes stop being UTF-8: at byte `at`; `cut` when they only stop in the middle of a character. */
export interface Utf8Fault {
  readonly at: number;
  readonly cut: boolean;
}

/** Lead bytes of UTF-8, with what may follow. Source: The Unicode Standard 15.0, chapter 3, table 3-7. */
const LEADS = [
  { from: 0xc2, to: 0xdf, tail: 1, low: 0x80, high: 0xbf },
  { from: 0xe0, to: 0xe0, tail: 2, low: 0xa0, high: 0xbf },
  { from: 0xe1, to: 0xec, tail: 2, low: 0x80, high: 0xbf },
  { from: 0xed, to: 0xed, tail: 2, low: 0x80, high: 0x9f },
  { from: 0xee, to: 0xef, tail: 2, low: 0x80, high: 0xbf },
  { from: 0xf0, to: 0xf0, tail: 3, low: 0x90, high: 0xbf },
  { from: 0xf1, to: 0xf3, tail: 3, low: 0x80, high: 0xbf },
  { from: 0xf4, to: 0xf4, tail: 3, low: 0x80, high: 0x8f },
] as const;

/** Units turned into text at once; far below the number of arguments any engine takes. */
const CHUNK = 4096;

/** Reads bytes as UTF-8, strictly: nothing is replaced, and the first byte that does not fit is named. */
export function decodeUtf8(bytes: Uint8Array): Result<string, Utf8Fault> {
  const parts: string[] = [];
  let chunk: number[] = [];
  let at = 0;
  while (at < bytes.length) {
    const lead = bytes[at] ?? 0;
    if (lead < 0x80) {
      chunk.push(lead);
      at += 1;
    } else {
      const character = readLong(bytes, at);
      if (!character.ok) return character;
      chunk.push(character.value.code);
      at += character.value.length;
    }
    if (chunk.length >= CHUNK) {
      parts.push(String.fromCodePoint(...chunk));
      chunk = [];
    }
  }
  parts.push(String.fromCodePoint(...chunk));
  return ok(parts.join(''));
}

/** The byte at which a unit of the text would stand in UTF-8. */
export function utf8Offset(text: string, index: number): number {
  let bytes = 0;
  for (let at = 0; at < index; at += 1) {
    const unit = text.charCodeAt(at);
    // Each half of a surrogate pair stands for two of the pair's four bytes.
    const isHalf = unit >= 0xd800 && unit <= 0xdfff;
    bytes += unit < 0x80 ? 1 : unit < 0x800 || isHalf ? 2 : 3;
  }
  return bytes;
}

function readLong(
  bytes: Uint8Array,
  at: number,
): Result<{ readonly code: number; readonly length: number }, Utf8Fault> {
  const first = bytes[at] ?? 0;
  const lead = LEADS.find(({ from, to }) => first >= from && first <= to);
  if (lead === undefined) return refused({ at, cut: false });
  let code = first & (0x3f >> lead.tail);
  for (let step = 1; step <= lead.tail; step += 1) {
    const byte = bytes[at + step];
    if (byte === undefined) return refused({ at, cut: true });
    const { low, high } = step === 1 ? lead : { low: 0x80, high: 0xbf };
    if (byte < low || byte > high) return refused({ at, cut: false });
    code = (code << 6) | (byte & 0x3f);
  }
  return ok({ code, length: lead.tail + 1 });
}
