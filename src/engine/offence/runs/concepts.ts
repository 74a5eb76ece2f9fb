import { fact } from '../../because.ts';
import type { Because, ReadOutcome } from '../../types/index.ts';
import type { ManPlace, Place } from './landmarks.ts';
import type { CarrierKind } from './people.ts';
import type { RunConcept } from '../../offenceVocabulary.ts';

/** One concept of the textbook, before look and side are known. */
export interface ConceptRule {
  readonly carrier: CarrierKind;
  readonly aims: readonly [Place, ...Place[]];
  readonly bounce?: Place;
  readonly cutback?: Place;
  readonly pulls?: readonly { readonly body: 'guard' | 'tackle'; readonly of: 'run' | 'away'; readonly to: Place }[];
  /** The man who leads: from behind the line, else an attached man of that side who leaves it, else an end who blocks out. */
  readonly lead?: {
    readonly to: Place;
    readonly attachedOf: 'run' | 'away' | null;
    readonly endBlocksOut: boolean;
  };
  /** Where any other back inserts. */
  readonly spare: Place;
  readonly keeper?: Place;
  readonly pitch?: { readonly to: Place; readonly by: 'carrier' | 'another' };
  readonly read?: ManPlace;
  readonly pitchRead?: ManPlace;
  readonly outcomes?: { readonly ifCrash: ReadOutcome; readonly ifWait: ReadOutcome };
  readonly unblocked?: { readonly words: Because; readonly man: ManPlace | null };
  readonly fit: Because;
}

const run = (at: Place['at']): Place => ({ of: 'run', at });
const away = (at: Place['at']): Place => ({ of: 'away', at });

const AWAY_END: ManPlace = {
  of: 'away',
  from: 'tackle',
  headUp: false,
  atLineOnly: false,
  which: 'first',
  words: fact('the first man outside the tackle away from the run'),
};
const RUN_SIDE_END: ManPlace = {
  ...AWAY_END,
  of: 'run',
  words: fact('the first man outside the tackle the run goes to'),
};
const ON_TACKLE: ManPlace = {
  ...RUN_SIDE_END,
  headUp: true,
  words: fact('the first man on or outside the tackle the run goes to'),
};
const NEXT_OUT: ManPlace = { ...ON_TACKLE, which: 'next', words: fact('the next man outside the one who is read') };
const END_OF_SURFACE: ManPlace = {
  ...ON_TACKLE,
  from: 'last',
  words: fact('the first man on or outside the last blocker the run goes to'),
};
const PAST_GUARD: ManPlace = {
  ...RUN_SIDE_END,
  from: 'guard',
  atLineOnly: true,
  words: fact('the first lineman outside the guard the run goes to'),
};
const PAST_SNAPPER: ManPlace = {
  ...PAST_GUARD,
  from: 'snapper',
  words: fact('the first lineman past the snapper on the side the run goes to'),
};

/** The read man takes the inner runner and the ball goes outside him, or he stays outside and it is handed off inside. */
const READ_INSIDE_OUT = {
  ifCrash: { takes: 'dive', ball: 'keep' },
  ifWait: { takes: 'quarterback', ball: 'give' },
} as const;

/*
 * From memory, unless a source stands beside the concept: no published table of this kind was found, and a staff should hold it
 * against its own book. Point of attack, movers and who is left are what coaches teach most often.
 */
const ZONES: Pick<
  Record<RunConcept, ConceptRule>,
  'inside-zone' | 'outside-zone' | 'split-zone' | 'duo' | 'zone-read'
> = {
  'inside-zone': {
    carrier: 'deepest',
    aims: [run('A'), run('B')],
    cutback: away('A'),
    spare: run('A'),
    fit: fact('A and B squeezed, the end squeezes, one man for the cutback'),
  },
  'outside-zone': {
    carrier: 'deepest',
    aims: [run('edge')],
    cutback: run('B'),
    spare: run('edge'),
    unblocked: { words: fact('the end away from the run'), man: AWAY_END },
    fit: fact('force sets the edge, pursuit inside out, one man for the cutback'),
  },
  'split-zone': {
    carrier: 'deepest',
    aims: [run('A'), run('B')],
    cutback: away('A'),
    lead: { to: away('outside-tackle'), attachedOf: 'run', endBlocksOut: false },
    spare: run('A'),
    fit: fact('the edge away from the run spills or boxes the slice block, a man outside it'),
  },
  duo: {
    carrier: 'deepest',
    aims: [run('A'), run('B')],
    bounce: run('edge'),
    spare: run('A'),
    unblocked: { words: fact('the safety or corner at the edge'), man: null },
    fit: fact('linebackers are slow to come, force tackles the bounce'),
  },
  // "Teaching Gap Exchanges & Defending the Zone Read", MatchQuarters.
  'zone-read': {
    carrier: 'deepest',
    aims: [run('A'), run('B')],
    cutback: away('A'),
    spare: run('A'),
    keeper: away('outside-tackle'),
    read: AWAY_END,
    outcomes: READ_INSIDE_OUT,
    unblocked: { words: fact('the man who is read'), man: AWAY_END },
    fit: fact('one man for the back, one for the passer'),
  },
};

const GAP_RUNS: Pick<
  Record<RunConcept, ConceptRule>,
  'power' | 'counter' | 'counter-with-back' | 'trap' | 'iso' | 'toss' | 'jet-sweep'
> = {
  // "3-4 Zone Pressure to Attack the Run", Blitzology, 2016; "Teaching spill overlap technique", Coach Kou.
  power: {
    carrier: 'deepest',
    aims: [run('off-tackle')],
    pulls: [{ body: 'guard', of: 'away', to: run('off-tackle') }],
    lead: { to: run('edge'), attachedOf: null, endBlocksOut: true },
    spare: run('off-tackle'),
    fit: fact('spill the kick-out block, overlap outside it, force'),
  },
  counter: {
    carrier: 'deepest',
    aims: [run('outside-tackle')],
    pulls: [
      { body: 'guard', of: 'away', to: run('edge') },
      { body: 'tackle', of: 'away', to: run('outside-tackle') },
    ],
    spare: away('B'),
    unblocked: { words: fact('the end away from the run, often read'), man: AWAY_END },
    fit: fact('one man spills both pullers, overlap outside him, the man away chases'),
  },
  'counter-with-back': {
    carrier: 'deepest',
    aims: [run('outside-tackle')],
    pulls: [{ body: 'guard', of: 'away', to: run('edge') }],
    lead: { to: run('outside-tackle'), attachedOf: 'away', endBlocksOut: false },
    spare: away('B'),
    fit: fact('one man spills both who come across, overlap outside him, the man away chases'),
  },
  // "Defending a Trap or Kick Block", Breakdown Sports, 2014.
  trap: {
    carrier: 'deepest',
    aims: [run('A'), run('B')],
    pulls: [{ body: 'guard', of: 'away', to: run('A') }],
    spare: run('A'),
    unblocked: { words: fact('the first lineman past the snapper, until he is trapped'), man: PAST_SNAPPER },
    fit: fact('the trapped man squeezes and meets the puller inside'),
  },
  iso: {
    carrier: 'deepest',
    aims: [run('B'), run('A')],
    lead: { to: run('B'), attachedOf: null, endBlocksOut: false },
    spare: run('B'),
    fit: fact('one backer takes the lead back with leverage, the other is free'),
  },
  toss: {
    carrier: 'deepest',
    aims: [run('edge')],
    pulls: [{ body: 'guard', of: 'run', to: run('edge') }],
    spare: run('edge'),
    fit: fact('if the force man is cracked the corner replaces him'),
  },
  // "Using Edge Pressure to Attack Jet Sweep", Blitzology, 2020.
  'jet-sweep': {
    carrier: 'motion',
    aims: [run('edge')],
    spare: run('edge'),
    unblocked: { words: fact('the edge away from the run'), man: AWAY_END },
    fit: fact('a hard edge, and the secondary rolls to it'),
  },
};

const PASSER_RUNS: Pick<
  Record<RunConcept, ConceptRule>,
  'power-read' | 'speed-option' | 'midline' | 'inside-veer' | 'quarterback-draw'
> = {
  // "3-4 Zone Pressure to Attack the Run", Blitzology, 2016: crashing flat forces the give.
  'power-read': {
    carrier: 'deepest',
    aims: [run('edge')],
    pulls: [{ body: 'guard', of: 'away', to: run('off-tackle') }],
    spare: run('edge'),
    keeper: run('off-tackle'),
    read: RUN_SIDE_END,
    outcomes: {
      ifCrash: { takes: 'quarterback', ball: 'give' },
      ifWait: { takes: 'dive', ball: 'keep' },
    },
    unblocked: { words: fact('the man who is read'), man: RUN_SIDE_END },
    fit: fact('one man for the back outside, one for the passer inside'),
  },
  'speed-option': {
    carrier: 'deepest',
    aims: [run('edge')],
    spare: run('edge'),
    keeper: run('edge'),
    pitch: { to: run('edge'), by: 'carrier' },
    read: END_OF_SURFACE,
    outcomes: {
      ifCrash: { takes: 'quarterback', ball: 'pitch' },
      ifWait: { takes: 'pitch', ball: 'keep' },
    },
    unblocked: { words: fact('the man who is read'), man: END_OF_SURFACE },
    fit: fact('one man for the passer, one for the pitch'),
  },
  midline: {
    carrier: 'nearest',
    aims: [run('A')],
    spare: run('B'),
    keeper: run('B'),
    read: PAST_GUARD,
    outcomes: READ_INSIDE_OUT,
    unblocked: { words: fact('the man who is read'), man: PAST_GUARD },
    fit: fact('one man for the dive, one for the passer'),
  },
  'inside-veer': {
    carrier: 'nearest',
    aims: [run('B')],
    spare: run('outside-tackle'),
    keeper: run('outside-tackle'),
    pitch: { to: run('edge'), by: 'another' },
    read: ON_TACKLE,
    pitchRead: NEXT_OUT,
    outcomes: READ_INSIDE_OUT,
    unblocked: { words: fact('the man who is read, and the next one outside him'), man: ON_TACKLE },
    fit: fact('one man each for the dive, the passer and the pitch'),
  },
  'quarterback-draw': {
    carrier: 'passer',
    aims: [run('A'), run('B')],
    spare: run('A'),
    keeper: run('A'),
    unblocked: { words: fact('rushers who run themselves out of the way'), man: null },
    fit: fact('rush lanes inside hold, the man in the middle comes up'),
  },
};

/** The textbook of concepts. */
export const CONCEPTS: Readonly<Record<RunConcept, ConceptRule>> = { ...ZONES, ...GAP_RUNS, ...PASSER_RUNS };
