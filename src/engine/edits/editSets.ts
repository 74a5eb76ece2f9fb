import { placeOf, sizeOf, type Edit } from './edit.ts';

/**
 * Every set of `count` of the edits that can be made together, as places in the list: the smaller total change first, then
 * by the order of the list. Lazy, for there may be many.
 */
export function* setsOf(edits: readonly Edit[], count: number): Generator<readonly number[]> {
  const sizes = edits.map(sizeOf);
  const places = edits.map(placeOf);
  const [least, most] = [Math.min(...sizes), Math.max(...sizes)];
  function* grow(set: readonly number[], from: number, total: number): Generator<readonly number[]> {
    const missing = count - set.length;
    if (missing === 0) {
      if (total === 0) yield set;
      return;
    }
    // Neither the smallest nor the largest edits can make up the rest.
    if (total < missing * least || total > missing * most) return;
    for (let index = from; index < edits.length; index += 1) {
      const place = places[index];
      if (set.some((other) => places[other] === place)) continue;
      yield* grow([...set, index], index + 1, total - (sizes[index] ?? 0));
    }
  }
  if (count === 0) yield [];
  else for (let total = count * least; total <= count * most; total += 1) yield* grow([], 0, total);
}
