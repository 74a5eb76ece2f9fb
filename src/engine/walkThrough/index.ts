/** The snap walked through: who is where at what time, and what happens when. Every time is an estimate. */
export { AT_ARMS_LENGTH } from './tracks.ts';
export type * from './types.ts';
export { walkThrough } from './walkThrough.ts';
