import type { CombinedStatus, Severity, Verdict } from '../../engine/index.ts';

/** The verdict on a call in a look, as the coach reads it. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  stop: 'Stop: do not install',
  check: 'Check: you decide',
  note: 'Note',
  clean: 'Clean',
  'left-out': 'Not run against this look',
};

/** The verdict on one man's two tellings. */
export const STATUS_WORDS: Readonly<Record<CombinedStatus, string>> = {
  untold: 'Base job',
  one: 'Told once',
  same: 'Same',
  yields: 'Gives way',
  'two-manners': 'Two ways',
  conflict: 'Two jobs',
  either: 'By the key',
  unresolved: 'Nobody there',
};

/** A severity in one word. */
export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = { stop: 'Stop', check: 'Check', note: 'Note' };
