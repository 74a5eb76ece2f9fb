/** The fronts of the invented team. */
import type { Front } from '../../../src/engine/index.ts';
import { bear, even } from '../../../src/starter/index.ts';
import { oddFronts } from './odd.ts';

export const fronts: readonly Front[] = [...oddFronts, even, bear];
