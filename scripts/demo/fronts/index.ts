/** The fronts of the invented team. */
import type { Front } from '../../../src/engine/index.ts';
import { oddFronts } from './odd.ts';
import { otherLines } from './otherLines.ts';

export const fronts: readonly Front[] = [...oddFronts, ...otherLines];
