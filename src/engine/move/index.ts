/** Stage 8: where every job takes a man, and when. Every time here is an estimate. */
export { arrival, runTime } from './arrival.ts';
export { crossings, MEET_WITHIN, MEET_WITHIN_SECONDS, type Crossing } from './crossings.ts';
export { movesOfDraft } from './draftMoves.ts';
export { errandOf, fitJob, passJob } from './errands.ts';
export { tenth } from './estimate.ts';
export { landmarkOf } from './geometry/zones.ts';
export { bitsOfPiece, curvePiece, type Piece } from './geometry/curve.ts';
export type { Ground, Runner, Way } from './geometry/ground.ts';
export { lanesOf, type Lanes } from './geometry/lanes.ts';
export { distance, toward } from './geometry/points.ts';
export { waysOf, type Together } from './geometry/ways.ts';
export { EDGE_ARC, movesOf, type MoveInput } from './moves.ts';
export { positionAt } from './positionAt.ts';
export { DROP_SHARE, READ_TIME, SPEED_MODELS, SPRINTS, type Pace, type SpeedModel } from './speed.ts';
export {
  BALL_SPEEDS,
  likelySpot,
  PASSER_DEPTHS,
  THROW_TIMES,
  throwsFrom,
  type PasserDepth,
  type ThrowTime,
} from './throws.ts';
export { goesAfter, turnsOf } from './turns.ts';
export type { Errand, Move, MoveOrder, Stamp } from './types.ts';
