import { forgetDevice, readDevice, writeDevice } from '../parts/device.ts';

/** How one quiz went, as it is kept on this device. */
export interface QuizResult {
  /** "2026-11-26". */
  readonly on: string;
  /** The room, as the coach says it. */
  readonly room: string;
  readonly right: number;
  readonly of: number;
}

const NAME = 'quiz';

/** More than a season of them is of no use. */
const MOST = 200;

/** The results kept on this device, the latest first. None: there are none, or this browser keeps nothing. */
export function keptResults(): readonly QuizResult[] {
  const value = parsed(readDevice(NAME) ?? '[]');
  return Array.isArray(value) ? value.filter(isResult) : [];
}

/** Keeps a result before those that are there. False: this browser keeps nothing. */
export function keepResult(result: QuizResult): boolean {
  return writeDevice(NAME, JSON.stringify([result, ...keptResults()].slice(0, MOST)));
}

/** Forgets every result. */
export function forgetResults(): void {
  forgetDevice(NAME);
}

/** Anybody may have written there: what cannot be read counts as nothing. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
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
