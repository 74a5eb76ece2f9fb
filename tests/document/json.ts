/** Finding and changing places in plain JSON, for tests that spoil a file one place at a time. */
import type { Json } from './samplePlaybook.ts';

export type Step = string | number;

/** Every place in a value, the root first, with what stands there. */
export function places(
  value: Json,
  path: readonly Step[] = [],
): readonly { readonly path: readonly Step[]; readonly value: Json }[] {
  const here = { path, value };
  if (Array.isArray(value)) return [here, ...value.flatMap((each, index) => places(each, [...path, index]))];
  if (typeof value !== 'object' || value === null) return [here];
  return [here, ...Object.entries(value).flatMap(([key, each]) => places(each, [...path, key]))];
}

/** A copy in which another value stands at the path; `undefined` takes the entry away. */
export function withAt(root: Json, path: readonly Step[], value: Json | undefined): Json {
  const [step, ...rest] = path;
  if (step === undefined) {
    if (value === undefined) throw new Error('The root cannot be taken away');
    return value;
  }
  if (Array.isArray(root)) {
    return root.flatMap((each, index) => {
      if (index !== step) return [each];
      return rest.length === 0 && value === undefined ? [] : [withAt(each, rest, value)];
    });
  }
  if (typeof root !== 'object' || root === null) throw new Error(`Nothing at ${path.join('.')}`);
  // Own entries only, written as JSON text would make them: `__proto__` is a key like any other.
  const entries = Object.entries(root).filter(([key]) => key !== step);
  if (rest.length > 0 || value !== undefined) {
    const before = Object.getOwnPropertyDescriptor(root, step)?.value as Json | undefined;
    entries.push([String(step), rest.length === 0 ? (value as Json) : withAt(before ?? null, rest, value)]);
  }
  return Object.fromEntries(entries);
}

/** How a refusal names that place, the name in brackets left out. */
export function pathText(path: readonly Step[]): string {
  if (path.length === 0) return 'the whole file';
  return path.map((step, at) => (typeof step === 'number' ? `[${step}]` : at === 0 ? step : `.${step}`)).join('');
}
