/** The clock of this machine. Nothing but the app reads it. */
export function now(): Date {
  return new Date();
}

/** "14:02". */
export function timeText(at: Date): string {
  return `${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** "2026-09-04", the same on every machine. */
export function dateText(at: Date): string {
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
