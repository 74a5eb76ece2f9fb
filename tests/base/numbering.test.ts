/** Things that say the same have one number, and the first of them stands for all. */
import { describe, expect, it } from 'vitest';
import { createNumbering } from '../../src/base/index.ts';

describe('numbering', () => {
  it('counts from 0 in the order in which things first come; the first thing of a number stays', () => {
    const { numberOf, things } = createNumbering(({ says }: { readonly says: string; readonly by: string }) => says);
    const list = [
      { says: 'A gap', by: 'first' },
      { says: 'B gap', by: 'first' },
      { says: 'A gap', by: 'second' },
      { says: '', by: 'nobody' },
    ];
    expect(list.map(numberOf)).toEqual([0, 1, 0, 2]);
    expect(things).toEqual([list[0], list[1], list[3]]);
    expect(things[numberOf({ says: 'A gap', by: 'third' })]).toBe(list[0]);
  });
});
