/** The trade's words for what the offence calls, each list once: protections first, then runs. Types come from the lists. */

/**
 * How the line shares out the rushers. `half-slide`: man on the side away from the slide up to the first uncovered lineman,
 * who starts the slide ("Understanding 1/2 Slide Protection", Blitzology, 2010). `full-slide`: everybody takes the gap toward
 * the slide and a back has the edge left behind ("What GT Does - Pass Blocking", GTSwarm). `man`: big on big, back on backer
 * ("Pass Protection 101", Dawgs By Nature, 2011).
 */
export const PROTECTION_SCHEMES = ['half-slide', 'full-slide', 'man'] as const;
export type ProtectionSchemeName = (typeof PROTECTION_SCHEMES)[number];

/** What the backs do: all of them release, one stays in, or two do (one for each side). */
export const BACK_JOBS = ['releases', 'stays', 'both-stay'] as const;
export type BackJob = (typeof BACK_JOBS)[number];

/** What the attached tight ends and wings do, all of them alike. */
export const TIGHT_END_JOBS = ['release', 'stay'] as const;
export type TightEndJob = (typeof TIGHT_END_JOBS)[number];

/** A protection of the vocabulary, before its side is known. */
export interface Protection {
  readonly scheme: ProtectionSchemeName;
  readonly back: BackJob;
  readonly tightEnds: TightEndJob;
  /** Stable; never changes its meaning. */
  readonly id: string;
  readonly name: string;
}

/**
 * The protections a coach hears about, simplest first. Free release ("scat"): "Safety Firezone Pressure", Blitzology, 2020.
 * Two backs, a side each: "Pass Protection 101", Dawgs By Nature, 2011. Everybody in ("max"): from memory.
 */
export const PROTECTIONS = [
  {
    id: 'half-slide-five',
    name: 'half slide, free release',
    scheme: 'half-slide',
    back: 'releases',
    tightEnds: 'release',
  },
  { id: 'half-slide-six', name: 'half slide with the back', scheme: 'half-slide', back: 'stays', tightEnds: 'release' },
  {
    id: 'half-slide-end',
    name: 'half slide with the back and the tight end',
    scheme: 'half-slide',
    back: 'stays',
    tightEnds: 'stay',
  },
  {
    id: 'half-slide-backs',
    name: 'half slide with two backs',
    scheme: 'half-slide',
    back: 'both-stay',
    tightEnds: 'release',
  },
  { id: 'full-slide-six', name: 'full slide with the back', scheme: 'full-slide', back: 'stays', tightEnds: 'release' },
  {
    id: 'full-slide-end',
    name: 'full slide with the back and the tight end',
    scheme: 'full-slide',
    back: 'stays',
    tightEnds: 'stay',
  },
  { id: 'man-five', name: 'man, free release', scheme: 'man', back: 'releases', tightEnds: 'release' },
  { id: 'man-six', name: 'man with the back (big on big)', scheme: 'man', back: 'stays', tightEnds: 'release' },
  { id: 'man-end', name: 'man with the back and the tight end', scheme: 'man', back: 'stays', tightEnds: 'stay' },
  { id: 'man-backs', name: 'man with two backs', scheme: 'man', back: 'both-stay', tightEnds: 'release' },
  { id: 'max', name: 'everybody stays in', scheme: 'half-slide', back: 'both-stay', tightEnds: 'stay' },
] as const satisfies readonly Protection[];
export type ProtectionId = (typeof PROTECTIONS)[number]['id'];

/** Run concepts a coach hears about, as plain words of the trade. The list grows; a word never changes its meaning. */
export const RUN_CONCEPTS = [
  'inside-zone',
  'outside-zone',
  'split-zone',
  'duo',
  'power',
  'counter',
  'counter-with-back',
  'trap',
  'iso',
  'toss',
  'zone-read',
  'power-read',
  'speed-option',
  'midline',
  'inside-veer',
  'quarterback-draw',
  'jet-sweep',
] as const;
export type RunConcept = (typeof RUN_CONCEPTS)[number];

/** How a concept is said. */
export const RUN_CONCEPT_WORDS: Readonly<Record<RunConcept, string>> = {
  'inside-zone': 'inside zone',
  'outside-zone': 'outside zone',
  'split-zone': 'split zone',
  duo: 'duo',
  power: 'power',
  counter: 'counter',
  'counter-with-back': 'counter with the back',
  trap: 'trap',
  iso: 'iso',
  toss: 'toss',
  'zone-read': 'zone read',
  'power-read': 'power read',
  'speed-option': 'speed option',
  midline: 'midline',
  'inside-veer': 'inside veer',
  'quarterback-draw': 'quarterback draw',
  'jet-sweep': 'jet sweep',
};

/** What makes a gap that is not there before the snap: a lead back, a puller, the passer who runs, the man he pitches to. */
export const FLOATING_KINDS = ['lead', 'puller', 'passer', 'pitch'] as const;
export type FloatingKind = (typeof FLOATING_KINDS)[number];

/** Where the ball can go in an option: handed off, kept, pitched. Each needs a defender. */
export const OPTION_PHASES = ['dive', 'quarterback', 'pitch'] as const;
export type OptionPhase = (typeof OPTION_PHASES)[number];

/** What the read man does: comes down hard on the inner runner, or stays outside him, square or upfield. */
export const READ_REACTIONS = ['crash', 'square', 'upfield'] as const;
export type ReadReaction = (typeof READ_REACTIONS)[number];
