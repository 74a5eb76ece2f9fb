/** Where and how a text stops being JSON. `index` counts UTF-16 units of the text. */
export type JsonFault =
  | { readonly kind: 'too-deep'; readonly index: number }
  | { readonly kind: 'too-many-keys'; readonly index: number }
  | { readonly kind: 'ends-early' }
  | { readonly kind: 'unexpected'; readonly index: number; readonly expected: string };

/** What the grammar allows next. */
type Next = 'value' | 'value-or-close' | 'key' | 'key-or-close' | 'colon' | 'comma-or-close' | 'end';

const EXPECTED: { readonly [Each in Next]: string } = {
  value: 'a value: text in double quotes, a number, true, false, null, "[" or "{"',
  'value-or-close': 'a value or "]"',
  key: 'a key in double quotes',
  'key-or-close': 'a key in double quotes or "}"',
  colon: '":"',
  'comma-or-close': '"," or the closing bracket',
  end: 'the end of the file',
};

const NUMBER = /-?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?(?:[eE][+-]?[0-9]+)?/y;
/** The start of a number that only lacks its next digit. */
const NUMBER_CUT = /-?(?:(?:0|[1-9][0-9]*)(?:\.|(?:\.[0-9]+)?[eE][+-]?))?$/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const WORDS = ['true', 'false', 'null'] as const;

/** How far a text may go before it is refused unread: brackets inside each other, and keys in one object. */
export interface JsonLimits {
  readonly depth: number;
  readonly keys: number;
}

/** The end of a piece of the text, or the fault in it. */
type Read = { readonly end: number } | JsonFault;

/**
 * Reads a text by the grammar of JSON without building anything, and returns the first fault, or null. It goes before
 * `JSON.parse` because that has no limits and words its errors differently in every browser.
 * Source of the grammar: RFC 8259, "The JavaScript Object Notation (JSON) Data Interchange Format", 2017, sections 2-7.
 */
export function scanJson(text: string, limits: JsonLimits): JsonFault | null {
  const open: ('{' | '[')[] = [];
  const keys: number[] = [];
  let next: Next = 'value';
  let at = skipSpace(text, 0);
  while (at < text.length) {
    const character = text.charAt(at);
    if (!allows(next, character, open.at(-1))) return { kind: 'unexpected', index: at, expected: EXPECTED[next] };
    if (character === '{' || character === '[') {
      if (open.length === limits.depth) return { kind: 'too-deep', index: at };
      open.push(character);
      keys.push(0);
      next = character === '{' ? 'key-or-close' : 'value-or-close';
      at += 1;
    } else if (character === '}' || character === ']') {
      open.pop();
      keys.pop();
      next = open.length === 0 ? 'end' : 'comma-or-close';
      at += 1;
    } else if (character === ',') {
      next = open.at(-1) === '{' ? 'key' : 'value';
      at += 1;
    } else if (character === ':') {
      const count = (keys.pop() ?? 0) + 1;
      if (count > limits.keys) return { kind: 'too-many-keys', index: at };
      keys.push(count);
      next = 'value';
      at += 1;
    } else {
      const read = readScalar(text, at);
      if ('kind' in read) return read;
      next = afterScalar(next, open.length);
      at = read.end;
    }
    at = skipSpace(text, at);
  }
  return next === 'end' ? null : { kind: 'ends-early' };
}

function afterScalar(next: Next, depth: number): Next {
  if (next === 'key' || next === 'key-or-close') return 'colon';
  return depth === 0 ? 'end' : 'comma-or-close';
}

/** Whether a character may begin what comes next. */
function allows(next: Next, character: string, inside: '{' | '[' | undefined): boolean {
  switch (next) {
    case 'value':
      return '"-0123456789tfn{['.includes(character);
    case 'value-or-close':
      return ']"-0123456789tfn{['.includes(character);
    case 'key':
      return character === '"';
    case 'key-or-close':
      return character === '"' || character === '}';
    case 'colon':
      return character === ':';
    case 'comma-or-close':
      return character === ',' || character === (inside === '{' ? '}' : ']');
    case 'end':
      return false;
  }
}

function readScalar(text: string, at: number): Read {
  const character = text.charAt(at);
  if (character === '"') return readString(text, at);
  const word = WORDS.find((each) => each.startsWith(character));
  return word === undefined ? readNumber(text, at) : readWord(text, at, word);
}

function readString(text: string, start: number): Read {
  let at = start + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return { end: at + 1 };
    if (code < 0x20)
      return { kind: 'unexpected', index: at, expected: 'text without raw line breaks or control characters' };
    if (code === 0x5c) {
      ESCAPE.lastIndex = at;
      if (!ESCAPE.test(text)) {
        const isCut = /^\\(?:u[0-9a-fA-F]{0,3})?$/.test(text.slice(at, at + 6));
        if (isCut && at + 6 > text.length) return { kind: 'ends-early' };
        return { kind: 'unexpected', index: at, expected: 'an escape such as \\n, \\" or \\u0041' };
      }
      at = ESCAPE.lastIndex;
    } else {
      at += 1;
    }
  }
  return { kind: 'ends-early' };
}

function readNumber(text: string, at: number): Read {
  NUMBER_CUT.lastIndex = at;
  if (NUMBER_CUT.test(text)) return { kind: 'ends-early' };
  NUMBER.lastIndex = at;
  // What follows a number that stops too soon, as in `1.x` or `01`, is then found where a comma should stand.
  return NUMBER.test(text) ? { end: NUMBER.lastIndex } : { kind: 'unexpected', index: at, expected: 'a number' };
}

function readWord(text: string, at: number, word: string): Read {
  const found = text.slice(at, at + word.length);
  if (found === word) return { end: at + word.length };
  if (word.startsWith(found)) return { kind: 'ends-early' };
  return { kind: 'unexpected', index: at, expected: EXPECTED.value };
}

function skipSpace(text: string, start: number): number {
  let at = start;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) break;
    at += 1;
  }
  return at;
}
