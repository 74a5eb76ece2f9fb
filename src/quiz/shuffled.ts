/**
 * The list in an order that looks like chance and is the same for the same seed: Fisher and Yates' shuffle (Knuth, "The Art
 * of Computer Programming", volume 2, algorithm 3.4.2P) over the 32-bit linear congruential generator of "Numerical Recipes",
 * second edition, 1992, section 7.1 (both from memory).
 */
export function shuffled<Item>(list: readonly Item[], seed: number): readonly Item[] {
  const next = generator(seed);
  const mixed: Item[] = [];
  for (const [index, item] of list.entries()) {
    const at = next(index + 1);
    const moved = mixed[at];
    if (moved === undefined) mixed.push(item);
    else {
      mixed.push(moved);
      mixed[at] = item;
    }
  }
  return mixed;
}

/** Whole numbers from 0 up to but not including the bound. The high bits are used: the low ones of this kind repeat soon. */
function generator(seed: number): (bound: number) => number {
  let state = seed >>> 0;
  const step = (): void => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  };
  step();
  return (bound) => {
    step();
    return Math.floor((state / 2 ** 32) * bound);
  };
}
