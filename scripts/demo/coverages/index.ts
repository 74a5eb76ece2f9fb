/** The shells behind the rush. */
import type { Coverage } from '../../../src/engine/index.ts';
import { fourDeep } from './fourDeep.ts';
import { free, nobodyFree } from '../../../src/starter/index.ts';
import { threeDeep } from './threeDeep.ts';
import { twoDeep } from './twoDeep.ts';

export const coverages: readonly Coverage[] = [...threeDeep, ...twoDeep, ...fourDeep, free, nobodyFree];
