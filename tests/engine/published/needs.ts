import type { ZoneNeed } from '../../../src/engine/index.ts';
import { who } from '../book.ts';

const need = (zone: ZoneNeed['zone'], side: ZoneNeed['side'], ...takers: readonly string[]): ZoneNeed => ({
  when: [],
  zone,
  side,
  takers: takers.map(who),
});

const THREE_DEEP = [need('third', 'call'), need('third', 'away'), need('middle', 'middle')];

/** Two seams, a hook and three deep ("Multiple 3-4 Fire Zone Blitz Coverages", Strong Football Coach). */
export const THREE_UNDER_THREE_DEEP: readonly ZoneNeed[] = [
  ...THREE_DEEP,
  need('seam', 'call'),
  need('seam', 'away'),
  need('hook', 'middle'),
];

/** Two hooks, two curl-flats and three deep ("3 Match Coverage Variation", Blitzology, 16 Jun 2019). */
export const FOUR_UNDER_THREE_DEEP: readonly ZoneNeed[] = [
  ...THREE_DEEP,
  need('curl-flat', 'call'),
  need('curl-flat', 'away'),
  need('hook', 'call'),
  need('hook', 'away'),
];

/** Two hot players and three deep (K. Bowers, "Shuffle to Sprint Technique", X&O Labs, 27 Feb 2022). */
export const TWO_UNDER_THREE_DEEP: readonly ZoneNeed[] = [...THREE_DEEP, need('hot', 'call'), need('hot', 'away')];

/** A hole player, two hooks and four deep ("Quarters Coverage Zone Pressure", Blitzology, 22 Dec 2016). */
export const THREE_UNDER_FOUR_DEEP: readonly ZoneNeed[] = [
  need('quarter', 'call'),
  need('quarter', 'call'),
  need('quarter', 'away'),
  need('quarter', 'away'),
  need('hook', 'call'),
  need('hook', 'away'),
  need('hole', 'middle'),
];

/** Two halves, a flat and a curl-flat, two hooks ("Blitz of the Week #9", Blitzology, 24 May 2010). */
export const FOUR_UNDER_TWO_DEEP: readonly ZoneNeed[] = [
  need('half', 'call'),
  need('half', 'away'),
  need('flat', 'call'),
  need('curl-flat', 'away'),
  need('hook', 'call'),
  need('hook', 'away'),
];

/** Man to man with a free man deep. */
export const A_POST: readonly ZoneNeed[] = [need('middle', 'middle')];
