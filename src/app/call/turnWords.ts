import type { Turn } from '../../engine/index.ts';

/** How the second pressure is turned, as a coach would say it. */
export const TURN_WORDS: Readonly<Record<Turn, string>> = {
  own: 'by its own rule',
  same: 'to the same side as the first',
  opposite: 'to the side opposite the first',
};
