/** All checks of a call in a look without their words: what a menu and a search over many looks ask. */
export { briefOf } from './brief.ts';
export { inBrief, wholeOf } from './say.ts';
export type { Brief, Doubt, Said, Spoken } from './types.ts';
