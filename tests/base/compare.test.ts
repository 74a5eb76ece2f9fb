import { describe, expect, it } from 'vitest';
import { compareBy, firstInOrder } from '../../src/base/index.ts';

interface Man {
  readonly name: string;
  readonly depth: number;
}

const byDepth = compareBy<Man>(({ depth }) => depth);
const [nose, end, safety]: readonly [Man, Man, Man] = [
  { name: 'nose', depth: 1 },
  { name: 'end', depth: 1 },
  { name: 'safety', depth: 12 },
];

describe('firstInOrder', () => {
  it.each([
    { name: 'nobody', men: [], first: undefined },
    { name: 'the only one', men: [safety], first: safety },
    { name: 'the nearest, wherever he is in the list', men: [safety, end], first: end },
    { name: 'of two as near the first in the list', men: [safety, nose, end], first: nose },
    { name: 'and turned round the other one', men: [end, nose, safety], first: end },
  ])('$name', ({ men, first }) => {
    expect(firstInOrder(men, byDepth)).toBe(first);
    expect(firstInOrder(men, byDepth)).toBe([...men].sort(byDepth)[0]);
  });
});
