import type { Playbook } from '../document/index.ts';

/**
 * The later version of a playbook, with every part that says the same as in the earlier one being the earlier one's own
 * object, also when it came as a copy. What has not changed is then the very same object, which is how the menu knows that an
 * answer still holds.
 */
export function keepSame(before: Playbook, after: Playbook): Playbook {
  return {
    ...after,
    roles: keep(before.roles, after.roles),
    dictionary: keep(before.dictionary, after.dictionary),
    fronts: keepById(before.fronts, after.fronts, (old, front) => ({
      ...front,
      roles: keep(old.roles, front.roles),
      byHand: front.byHand.map((hand) => {
        const same = old.byHand.find((each) => each.look === hand.look && each.role === hand.role);
        return same === undefined ? hand : keep(same, hand);
      }),
    })),
    coverages: keepById(before.coverages, after.coverages, keep),
    pressures: keepById(before.pressures, after.pressures, keep),
    looks: keepById(before.looks, after.looks, keep),
    calls: keepById(before.calls, after.calls, keep),
    checkOuts: keep(before.checkOuts, after.checkOuts),
  };
}

/** The earlier of the two when they say the same. Both come from one schema, so their keys stand in one order. */
function keep<Part>(before: Part, after: Part): Part {
  return before === after || JSON.stringify(before) === JSON.stringify(after) ? before : after;
}

/** Each entry beside the one of its id; the earlier list itself when every entry is the same, in the same order. */
function keepById<Item extends { readonly id: string }>(
  before: readonly Item[],
  after: readonly Item[],
  keepItem: (before: Item, after: Item) => Item,
): readonly Item[] {
  const byId = new Map(before.map((item) => [item.id, item]));
  const kept = after.map((item) => {
    const old = byId.get(item.id);
    if (old === undefined) return item;
    const same = keepItem(old, item);
    return JSON.stringify(same) === JSON.stringify(old) ? old : same;
  });
  return kept.length === before.length && kept.every((item, index) => item === before[index]) ? before : kept;
}
