import type { Spot } from '../../../src/engine/index.ts';

const LINE_DEPTH = 0.8;
const BACKER_DEPTH = 4.5;
const on = (
  body: 'snapper' | 'guard' | 'tackle' | 'end',
  leverage: 'inside' | 'head' | 'outside',
  depth: number,
): Spot => ({ kind: 'technique', on: body, leverage, depth });

/**
 * Where a table says a man stands. The numbers are the common ones, backers' with a zero behind ("Defensive Numbering &
 * Defensive Line", Garnet and Black Attack, 27 Jul 2016; J. T. Reed, "Terms of Football"); depths are from memory.
 */
export const SPOTS = {
  '0': on('snapper', 'head', LINE_DEPTH),
  '2i': on('guard', 'inside', LINE_DEPTH),
  '3': on('guard', 'outside', LINE_DEPTH),
  '4i': on('tackle', 'inside', LINE_DEPTH),
  '4': on('tackle', 'head', LINE_DEPTH),
  '5': on('tackle', 'outside', LINE_DEPTH),
  '9': on('end', 'outside', LINE_DEPTH),
  // Two yards outside the end man's middle: there is room for a man on his outside shoulder (2 ft bodies; from memory).
  edge: { kind: 'edge', offset: 2, depth: LINE_DEPTH },
  'wide edge': { kind: 'edge', offset: 3.5, depth: LINE_DEPTH },
  '10': on('guard', 'inside', BACKER_DEPTH),
  '20': on('guard', 'head', BACKER_DEPTH),
  '30': on('guard', 'outside', BACKER_DEPTH),
  'widened 30': { kind: 'ball', offset: 4, depth: BACKER_DEPTH },
  'mugged A': on('guard', 'inside', 1.5),
  'over the ball': { kind: 'ball', offset: 0, depth: BACKER_DEPTH },
  'bumped into the box': on('tackle', 'outside', BACKER_DEPTH),
  'toward number three': { kind: 'apex', number: 3, depth: BACKER_DEPTH },
  'apex of number two': { kind: 'apex', number: 2, depth: BACKER_DEPTH },
  'over number two': { kind: 'receiver', number: 2, leverage: 'inside', depth: 5 },
  'outside number two': { kind: 'receiver', number: 2, leverage: 'outside', depth: 5 },
  'linebacker depth': { kind: 'ball', offset: 3, depth: 5 },
  high: { kind: 'ball', offset: 6, depth: 11 },
  'deep middle': { kind: 'ball', offset: 0, depth: 12 },
  off: { kind: 'receiver', number: 1, leverage: 'outside', depth: 7 },
  press: { kind: 'receiver', number: 1, leverage: 'head', depth: 1 },
} as const satisfies Readonly<Record<string, Spot>>;
export type SpotName = keyof typeof SPOTS;
