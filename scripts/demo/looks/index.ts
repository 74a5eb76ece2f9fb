/** The formations, an ordinary one first. */
import type { Look } from '../../../src/engine/index.ts';
import { heavy, spread } from '../../../src/starter/index.ts';

export const looks: readonly Look[] = [...spread, ...heavy];
