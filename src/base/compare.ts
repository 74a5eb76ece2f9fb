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

/** The item that comes first in an order, without putting the others in it; of equals the first in the list. */
export function firstInOrder<Item>(items: readonly Item[], order: (a: Item, b: Item) => number): Item | undefined {
  let [first] = items;
  for (const item of items) if (first !== undefined && order(item, first) < 0) first = item;
  return first;
}
