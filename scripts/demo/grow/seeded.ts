/** Chance that comes out the same every time: the same seed, the same numbers. */
export interface Chance {
  /** A whole number from 0 up to, and without, `below`. */
  readonly below: (below: number) => number;
  /** One of a list. */
  readonly pick: <Item>(list: readonly Item[]) => Item;
}

/** A small generator of 32 bits ("mulberry32", T. Ettinger, public domain). */
export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  const below = (limit: number): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * limit);
  };
  return {
    below,
    pick: (list) => {
      const item = list[below(list.length)];
      if (item === undefined) throw new Error('Nothing to pick from');
      return item;
    },
  };
}
