/** Why a file is not opened: one place in it, what stands there, and what should. All three in plain words. */
export interface Refusal {
  /** `looks[3].players[2].x (Trips right)`: the name is that of the look, call, …, when it has one. */
  readonly path: string;
  readonly found: string;
  readonly expected: string;
}

/** A place in a value read from JSON: keys and indexes from the root. */
export type Path = readonly (string | number)[];

/** A problem as a check reports it; `found` null means: whatever stands at that path. */
export interface Problem {
  readonly path: Path;
  readonly found: string | null;
  readonly expected: string;
}

/** Problems listed; the rest are only counted. */
const MAX_LISTED = 50;

/** Characters of a found value that are shown. */
const MAX_SHOWN = 80;

/** Turns problems into refusals: the first 50, and one entry with the count of the others. */
export function toRefusals(root: unknown, problems: readonly Problem[]): readonly Refusal[] {
  const listed = problems.slice(0, MAX_LISTED).map(({ path, found, expected }) => ({
    path: pathText(root, path),
    found: found ?? describe(valueAt(root, path)),
    expected,
  }));
  const rest = problems.length - listed.length;
  if (rest === 0) return listed;
  return [...listed, { path: 'the rest of the file', found: `+ ${rest} more`, expected: 'no problems' }];
}

/** The one line a refusal is printed as. */
export function refusalText({ path, found, expected }: Refusal): string {
  return `${path}: found ${found}, expected ${expected}`;
}

/** A value read from JSON, in words: shortened, and with nothing in it that a screen or terminal would obey. */
export function describe(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'string') return value === '' ? 'an empty text' : `${quoted(value)} (text)`;
  if (typeof value === 'number' && !Number.isFinite(value)) return `a number too large to keep (${value})`;
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return String(value);
  return 'an object';
}

/** A text between quotation marks: at most 80 characters, what cannot be seen written as \uXXXX. */
export function quoted(text: string): string {
  const start = Array.from(text.slice(0, 2 * MAX_SHOWN + 2));
  const shown = start.slice(0, MAX_SHOWN).map(visible).join('');
  return `"${shown}${start.length > MAX_SHOWN ? '…' : ''}"`;
}

/** Whether the value is an object of JSON, neither a list nor null. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What an object of JSON holds under a key of its own, `__proto__` included; undefined when it has none. */
export function ownValue(value: unknown, key: string | number): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  return Object.getOwnPropertyDescriptor(value, key)?.value;
}

function valueAt(root: unknown, path: Path): unknown {
  return path.reduce<unknown>(ownValue, root);
}

function pathText(root: unknown, path: Path): string {
  if (path.length === 0) return 'the whole file';
  const name = ownValue(valueAt(root, path.slice(0, 2)), 'name');
  const bracket = typeof name === 'string' && path.length >= 2 && name !== '' ? ` (${quoted(name).slice(1, -1)})` : '';
  return path.map(stepText).join('') + bracket;
}

function stepText(step: string | number, at: number): string {
  if (typeof step === 'number') return `[${step}]`;
  if (!/^[A-Za-z]\w{0,39}$/.test(step)) return `[${quoted(step)}]`;
  return at === 0 ? step : `.${step}`;
}

/** Controls, format characters (text direction among them), line separators and lone surrogates are shown as codes. */
function visible(character: string): string {
  if (character === '"' || character === '\\') return `\\${character}`;
  if (!/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u.test(character)) return character;
  return `\\u${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}
