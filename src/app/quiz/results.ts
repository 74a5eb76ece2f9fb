/** How one quiz went, as it is kept on this device. */
export interface QuizResult {
  /** "2026-11-26". */
  readonly on: string;
  /** The room, as the coach says it. */
  readonly room: string;
  readonly right: number;
  readonly of: number;
}

const KEY = 'gapwright-quiz';

/** More than a season of them is of no use. */
const MOST = 200;

/** The results kept on this device, the latest first. None: there are none, or this browser keeps nothing. */
export function keptResults(): readonly QuizResult[] {
  const text = attempt(() => localStorage.getItem(KEY));
  if (text === null) return [];
  const value = attempt((): unknown => JSON.parse(text));
  return Array.isArray(value) ? value.filter(isResult) : [];
}

/** Keeps a result before those that are there. False: this browser keeps nothing. */
export function keepResult(result: QuizResult): boolean {
  const all = [result, ...keptResults()].slice(0, MOST);
  return (
    attempt(() => {
      localStorage.setItem(KEY, JSON.stringify(all));
      return true;
    }) === true
  );
}

/** Forgets every result. */
export function forgetResults(): void {
  attempt(() => localStorage.removeItem(KEY));
}

/** A browser may refuse storage altogether, or hold a text that somebody else wrote there: both mean that nothing is kept. */
function attempt<Value>(step: () => Value): Value | null {
  try {
    return step();
  } catch {
    return null;
  }
}

function isResult(value: unknown): value is QuizResult {
  if (typeof value !== 'object' || value === null) return false;
  return (
    'on' in value &&
    typeof value.on === 'string' &&
    'room' in value &&
    typeof value.room === 'string' &&
    'right' in value &&
    typeof value.right === 'number' &&
    'of' in value &&
    typeof value.of === 'number'
  );
}
