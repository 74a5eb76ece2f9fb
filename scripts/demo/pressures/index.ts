/** The menu, in the order a list shows it. */
import type { Pressure } from '../../../src/engine/index.ts';
import { fiveManPressures } from './five.ts';
import { fourManPressures } from './four.ts';
import { otherPressures } from './otherFronts.ts';

export const pressures: readonly Pressure[] = [...fourManPressures, ...fiveManPressures, ...otherPressures];
