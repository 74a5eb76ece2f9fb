import type { Ground } from '../../engine/index.ts';
import type { Picture } from '../picture.ts';

/** Where every job leads, the engine knows; marks only draw it. */
export { fitJob, lanesOf, passJob, waysOf, type Together, type Way } from '../../engine/index.ts';

/** What the ways of a picture refer to. */
export function groundOf({ analysis, field, gapX, manAt, passer }: Picture): Ground {
  const { players } = analysis.facts;
  return { field, gapX, manAt, passer, playerAt: (player) => players.get(player) ?? null };
}
