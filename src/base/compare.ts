/** Compares two values by several keys, the first that differs deciding: numbers by size, text by code point. */
export function compareBy<Item>(
  ...keys: readonly ((item: Item) => number | string)[]
): (first: Item, second: Item) => number {
  return (first, second) => {
    for (const key of keys) {
      const a = key(first);
      const b = key(second);
      if (a < b) return -1;
      if (a > b) return 1;
    }
    return 0;
  };
}
