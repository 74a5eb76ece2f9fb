/**
 * The formations of the tables, the call side on the right. Letters: X, Z the wide ones, Y the tight end or inside receiver,
 * H the slot, R the one back beside the passer, F and T the two of an I.
 */
export const LOOKS = {
  /** Ten personnel, two receivers on each side. */
  doubles: 'line wr:X@-15 wr:H@-8,-1.5 wr:Y@8,-1.5 wr:Z@15 qb:Q@0,-5 rb:R@1.5,-5',
  /** Ten personnel, three receivers to the call. */
  trips: 'line wr:X@-15 wr:H@6,-1.5 wr:Y@11,-1.5 wr:Z@16 qb:Q@0,-5 rb:R@1.5,-5',
  /** Eleven personnel: tight end and flanker to the call, slot and split end away. */
  'doubles tight end': 'line te:Y@4 wr:X@-15 wr:H@-8,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:R@1.5,-5',
  /** Twenty-one personnel: tight end and flanker to the call, split end away, two backs behind the ball. */
  'two backs': 'line te:Y@4 wr:X@-15 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:T@0,-7',
  /** Eleven personnel: three receivers to the call, the tight end the third of them. */
  'trips tight end': 'line te:Y@4 wr:X@-15 wr:H@8,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:R@1.5,-5',
  /** Eleven personnel: three receivers to the call, the tight end alone away. */
  'trips nub': 'line te:Y@-4 wr:H@6,-1.5 wr:X@11,-1.5 wr:Z@16 qb:Q@0,-5 rb:R@1.5,-5',
  /** Tight end to the call, the flanker on the line outside him: he is covered and may not catch a pass. */
  'covered tight end': 'line te:Y@4 wr:X@-15 wr:H@-8,-1.5 wr:Z@14 qb:Q@0,-5 rb:R@1.5,-5',
} as const;
export type LookName = keyof typeof LOOKS;
