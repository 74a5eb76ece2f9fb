/** `gather` does what the built-in `flatMap` does. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gather } from '../../src/base/index.ts';

describe('gather', () => {
  it.each<
    readonly [what: string, list: readonly number[], work: (item: number, index: number) => number | readonly number[]]
  >([
    ['nothing of nothing', [], (item) => [item]],
    ['lists one after the other', [1, 2, 3], (item) => [item, item * 10]],
    ['an item that gives nothing', [1, 2, 3], (item) => (item === 2 ? [] : [item])],
    ['a result that is no list', [1, 2, 3], (item) => item * 2],
    ['the place of an item', [7, 7, 7], (item, index) => [item + index]],
  ])('%s', (_what, list, work) => {
    expect(gather(list, work)).toEqual(list.flatMap(work));
  });

  it('lists in lists are opened once, and what is not there stays', () => {
    const lists = [[[1], undefined], [], [[2, 3]]];
    expect(gather(lists, (each) => each)).toEqual(lists.flatMap((each) => each));
  });

  it('is flatMap for anything', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.anything())), (lists) => {
        expect(gather(lists, (list) => list)).toEqual(lists.flatMap((list) => list));
      }),
    );
  });
});
