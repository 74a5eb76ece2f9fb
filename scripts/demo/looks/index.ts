/** The formations, an ordinary one first. */
import type { Look } from '../../../src/engine/index.ts';
import { heavy } from './heavy.ts';
import { spread } from './spread.ts';

export const looks: readonly Look[] = [...spread, ...heavy];
