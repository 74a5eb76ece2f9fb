import { isObject } from '../refusal.ts';
import type { RawPlaybook } from './migration.ts';

/** Applies a step to every object of a list; what is not such a list stays what it is. */
export function eachOf(list: unknown, step: (entry: RawPlaybook) => RawPlaybook): unknown {
  return Array.isArray(list) ? list.map((entry: unknown) => (isObject(entry) ? step(entry) : entry)) : list;
}
