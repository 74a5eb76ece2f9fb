/** The parts of a copied playbook that say the same are the very same objects; what was changed is not. */
import { describe, expect, it } from 'vitest';
import type { Playbook } from '../../src/document/index.ts';
import { keepSame } from '../../src/menu/index.ts';
import { demo } from '../store/demo.ts';

/** The kinds of parts an answer points at, each with one entry of the copy changed. */
const CHANGES: readonly (readonly [part: keyof Playbook, change: (copy: Playbook) => Playbook])[] = [
  ['pressures', (copy) => ({ ...copy, pressures: copy.pressures.map(renamedThird) })],
  ['coverages', (copy) => ({ ...copy, coverages: copy.coverages.map(renamedThird) })],
  ['looks', (copy) => ({ ...copy, looks: copy.looks.map(renamedThird) })],
  ['calls', (copy) => ({ ...copy, calls: copy.calls.map(renamedThird) })],
  ['fronts', (copy) => ({ ...copy, fronts: copy.fronts.map(renamedThird) })],
];

function renamedThird<Item extends { readonly name: string }>(item: Item, index: number): Item {
  return index === 2 ? { ...item, name: `${item.name} again` } : item;
}

describe('keepSame', () => {
  it('gives a copy the objects of what it was copied from', () => {
    const before = demo();
    const kept = keepSame(before, structuredClone(before));
    for (const part of [
      'roles',
      'fronts',
      'coverages',
      'pressures',
      'looks',
      'calls',
      'checkOuts',
      'dictionary',
    ] as const) {
      expect(kept[part], part).toBe(before[part]);
    }
  });

  it.each(CHANGES)('of %s only the changed entry is another object', (part, change) => {
    const before = demo();
    const kept = keepSame(before, change(structuredClone(before)));
    const [old, now] = [listOf(before, part), listOf(kept, part)];
    expect(now.map((item, index) => item === old[index])).toEqual(old.map((_, index) => index !== 2));
  });

  it('an entry put in front leaves the others what they were', () => {
    const before = demo();
    const copy = structuredClone(before);
    const [first] = copy.pressures;
    if (first === undefined) throw new Error('The demo has no pressures');
    const kept = keepSame(before, { ...copy, pressures: [{ ...first, name: 'Another' }, ...copy.pressures.slice(1)] });
    expect(kept.pressures.slice(1).every((item, index) => item === before.pressures[index + 1])).toBe(true);
  });

  it('says what the later version says', () => {
    const before = demo();
    for (const [, change] of CHANGES) {
      const after = change(structuredClone(before));
      expect(keepSame(before, after)).toEqual(after);
    }
  });
});

function listOf(playbook: Playbook, part: keyof Playbook): readonly unknown[] {
  const list: unknown = playbook[part];
  if (!Array.isArray(list)) throw new Error(`${part} is no list`);
  return list;
}
