import type { Place } from '../../engine/index.ts';

/** Where the ball lies, as it stands in a sentence. Left and right are the defence's. */
export const BALL_WORDS: Readonly<Record<Place, string>> = {
  left: 'ball on the left hash',
  middle: 'ball in the middle',
  right: 'ball on the right hash',
};
