import { play } from './play.ts';
import { tell } from './tell.ts';
import type { Analysis, Setup } from './types/index.ts';

/** An analysis before it is judged, for one moment of a look. */
export type Worked = Omit<Analysis, 'findings' | 'undetermined' | 'verdict' | 'motion'>;

/** Stages 1 to 6 for the look as given, its motion not run. */
export function work(setup: Setup): Worked {
  const { men, shell, ...told } = tell(setup);
  return { ...play(men, told, shell, told.lean), ...told };
}
