import type { FormationClass } from '../../engine/index.ts';

/** How a class of formations is said: "against trips", "trips: turn it". */
export const FORMATION_WORDS: Readonly<Record<FormationClass, string>> = {
  unbalanced: 'unbalanced',
  'empty-four-by-one': 'empty, four by one',
  'empty-three-by-two': 'empty, three by two',
  heavy: 'heavy',
  'two-backs': 'two backs',
  quads: 'quads',
  bunch: 'bunch',
  'trips-nub': 'trips with a nub tight end',
  'trips-tight-end': 'trips with the tight end',
  trips: 'trips',
  wing: 'wing',
  'two-tight-ends': 'two tight ends',
  'doubles-tight-end': 'doubles with a tight end',
  doubles: 'doubles',
};
