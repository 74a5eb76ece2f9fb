import { isObject } from './refusal.ts';
import type { Playbook } from './schema/playbook.ts';

/** These come first in their object, for a person who reads the file; the others follow by the alphabet. */
const FIRST_KEYS = ['format', 'version', 'id', 'kind', 'name', 'letter', 'who', 'role', 'when'];

/**
 * The text of a playbook file: the same playbook gives the same bytes, in whatever order its entries were made.
 * Throws on a number that JSON cannot hold, since writing it would lose it without a word.
 */
export function saveDocument(playbook: Playbook): string {
  return `${JSON.stringify(playbook, canonical, 2)}\n`;
}

function canonical(key: string, value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${key} is not a number that can be saved`);
  if (!isObject(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([first], [second]) => rank(first, second)));
}

function rank(first: string, second: string): number {
  const leads = leadOf(first) - leadOf(second);
  if (leads !== 0) return leads;
  return first < second ? -1 : 1;
}

function leadOf(key: string): number {
  const at = FIRST_KEYS.indexOf(key);
  return at === -1 ? FIRST_KEYS.length : at;
}
