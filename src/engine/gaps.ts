import type { Gap } from './types/index.ts';

/** A gap as a stable text: "A left". Safe as a map key; not meant for readers. */
export function gapKey(gap: Gap): string {
  return `${gap.letter} ${gap.side}`;
}

/** Whether two names mean the same gap. */
export function gapsEqual(a: Gap, b: Gap): boolean {
  return a.side === b.side && a.letter === b.letter;
}
