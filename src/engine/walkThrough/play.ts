import type { Pace } from '../move/speed.ts';
import { SPEED_MODELS } from '../move/speed.ts';
import type { Stamp } from '../move/types.ts';
import type { Analysis, OffencePlayer, PlayerId, RoleId } from '../types/index.ts';
import type { Room } from '../vocabulary.ts';
import type { Moment } from './types.ts';

/** What a play changes: who goes where, and what happens when. Men who are not in a map are where they are without it. */
export interface PlayTracks {
  readonly defence: ReadonlyMap<RoleId, readonly Stamp[]>;
  readonly offence: ReadonlyMap<PlayerId, readonly Stamp[]>;
  readonly moments: readonly Moment[];
}

/** A man of the offence runs like the defender of his build (a guess; no published table has both). */
const RUNS_LIKE: Readonly<Record<OffencePlayer['kind'], Room>> = {
  snapper: 'line',
  lineman: 'line',
  'tight-end': 'linebackers',
  back: 'secondary',
  receiver: 'secondary',
  passer: 'secondary',
};

/** How a man of the offence runs at this rule level. */
export function offencePace({ setup }: Analysis, { kind }: OffencePlayer): Pace {
  return SPEED_MODELS[setup.level].rooms[RUNS_LIKE[kind]];
}
