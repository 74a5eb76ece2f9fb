import type { LookFacts } from '../../types/index.ts';
import { GAP_LETTERS } from '../../vocabulary.ts';
import { gapAt, gapIndex, thousandths } from '../row.ts';
import type { Rusher } from './types.ts';

/** A rusher as a blocker meets him. */
export interface Comer {
  readonly rusher: Rusher;
  /** The gap his path ends in, as a place in `LookFacts.gaps`. */
  readonly end: number;
  /** That gap counted from the ball outward. */
  readonly outward: number;
  /** Told to go first in it: 0; told nothing: 1; told to go second: 2. */
  readonly turn: number;
  /** How far he has to it, in thousandths of a yard. */
  readonly way: number;
}

const TURNS = { first: 0, none: 1, second: 2 } as const;

/** All who come, each with the gap he comes to. A gap this look has not is a broken promise. */
export function comersOf(rushers: readonly Rusher[], facts: LookFacts): readonly Comer[] {
  return rushers.map((rusher) => {
    const { endGap, from, order } = rusher;
    const end = gapIndex(endGap, facts);
    return {
      rusher,
      end,
      outward: GAP_LETTERS.indexOf(endGap.letter),
      turn: TURNS[order ?? 'none'],
      way: thousandths(Math.hypot(gapAt(end, facts).x - from.x, from.y)),
    };
  });
}
