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
