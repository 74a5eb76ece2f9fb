/** Fields that hold ids for programs; every other text of a report is for readers. */
const FOR_PROGRAMS = new Set(['id', 'role', 'who', 'players', 'key', 'rule', 'gap']);

/** Every text of a report or its JSON that somebody reads. */
export function readTexts(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (Array.isArray(value)) return value.flatMap(readTexts);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => (FOR_PROGRAMS.has(key) ? [] : readTexts(part)));
}

/** Freezes a value through and through; a change made to it later throws. */
export function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
    if (value instanceof Map) value.forEach(frozen);
  }
  return value;
}
