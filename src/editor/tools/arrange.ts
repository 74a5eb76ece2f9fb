import { compareBy } from '../../base/index.ts';
import type { Standing } from '../../store/index.ts';

/** What can be done with several men at once, besides moving them. */
export const ARRANGEMENTS = ['same-depth', 'same-width', 'spread', 'mirror'] as const;
export type Arrangement = (typeof ARRANGEMENTS)[number];

/**
 * Where the men come to stand. `same-depth` and `same-width` go by the first of them, who stays; `spread` leaves the two
 * outermost where they are and puts the others at even distances across the field between them; `mirror` puts everybody
 * on the other side of the ball.
 */
export function arranged(men: readonly Standing[], how: Arrangement): readonly Standing[] {
  const [first] = men;
  if (first === undefined) return [];
  switch (how) {
    case 'same-depth':
      return men.map(({ man, at }) => ({ man, at: { x: at.x, y: first.at.y } }));
    case 'same-width':
      return men.map(({ man, at }) => ({ man, at: { x: first.at.x, y: at.y } }));
    case 'spread':
      return spread(men);
    case 'mirror':
      // Adding zero turns -0 into 0: the two are written alike.
      return men.map(({ man, at }) => ({ man, at: { x: 0 - at.x + 0, y: at.y } }));
  }
}

function spread(men: readonly Standing[]): readonly Standing[] {
  const across = men.toSorted(compareBy(({ at }) => at.x));
  const [left, right] = [across[0], across.at(-1)];
  if (left === undefined || right === undefined || across.length < 3) return men;
  const step = (right.at.x - left.at.x) / (across.length - 1);
  return across.map(({ man, at }, index) => ({ man, at: { x: left.at.x + step * index, y: at.y } }));
}
