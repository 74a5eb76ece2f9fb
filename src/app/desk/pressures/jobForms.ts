import {
  GAP_LETTERS,
  type GapRef,
  type Manner,
  type PreSnap,
  type RuleJob,
  type RunSupport,
  type TellCase,
} from '../../../engine/index.ts';

/** Kinds of jobs, as a coach says them. */
export const KIND_LABELS: Readonly<Record<RuleJob['kind'], string>> = {
  rush: 'Rush a gap',
  contain: 'Rush and contain',
  fit: 'Fit a gap after a read',
  drop: 'Drop to a zone',
  man: 'Man on a receiver',
  spy: 'Spy the passer',
};
export const JOB_KINDS = ['rush', 'contain', 'fit', 'drop', 'man', 'spy'] as const;

/** How a gap is played. */
export const MANNER_LABELS: Readonly<Record<Manner, string>> = {
  penetrate: 'Penetrate',
  slant: 'Slant',
  loop: 'Loop',
  'two-gap': 'Two-gap',
  read: 'Read first',
};

const A_GAP: GapRef = { kind: 'letter', side: 'call', letter: 'A' };
const NO_RUN: RunSupport<GapRef> = { fits: [], firm: false, support: null };

/** A case nobody has told yet. */
export const FIRST_CASE: TellCase = {
  when: [],
  basis: 'path',
  preSnap: null,
  job: {
    kind: 'rush',
    gaps: [A_GAP],
    manner: 'penetrate',
    track: { kind: 'straight' },
    edge: null,
    peel: false,
    order: null,
  },
};

/** The same man's job as another kind; what both kinds have is kept, what the new one needs besides is the plainest. */
export function jobAs(kind: RuleJob['kind'], from: RuleJob): RuleJob {
  if (kind === from.kind) return from;
  const gaps = 'gaps' in from ? from.gaps : [from.run.fits[0] ?? A_GAP];
  const run = 'run' in from ? from.run : NO_RUN;
  switch (kind) {
    case 'rush':
    case 'contain': {
      if (from.kind === 'rush' || from.kind === 'contain') return { ...from, kind };
      const manner = from.kind === 'fit' && from.manner === 'two-gap' ? 'two-gap' : 'penetrate';
      return { kind, gaps, manner, track: { kind: 'straight' }, edge: null, peel: false, order: null };
    }
    case 'fit': {
      const manner = 'manner' in from && from.manner === 'two-gap' ? 'two-gap' : 'read';
      return { kind, gaps, manner, support: run.support };
    }
    case 'drop':
      return { kind, zone: 'hook', side: 'mine', run };
    case 'man':
      return { kind, receiver: { kind: 'number', side: 'mine', number: 2 }, run };
    case 'spy':
      return { kind, run };
  }
}

/** The kinds of jobs that are played in a gap. */
export type GapJob = Extract<RuleJob, { readonly gaps: unknown }>;

/** The job played that way: a man who two-gaps has two gaps, anybody else one. */
export function withManner(job: GapJob, manner: Manner): GapJob {
  const [first = A_GAP, second = otherGap(first)] = job.gaps;
  return { ...job, manner, gaps: manner === 'two-gap' ? [first, second] : [first] };
}

/** The gap on the other side of the body he plays: A and B about the guard, B and C about the tackle; A and A about the snapper. */
function otherGap(gap: GapRef): GapRef {
  if (gap.kind !== 'letter') return A_GAP;
  const next = GAP_LETTERS[GAP_LETTERS.indexOf(gap.letter) + 1];
  return next === undefined ? A_GAP : { ...gap, letter: next };
}

/** What a man does before the snap, as a kind. */
export const PRE_SNAP_LABELS: Readonly<Record<'none' | PreSnap['kind'], string>> = {
  none: 'where the front has him',
  depth: 'at a depth of',
  heels: 'on the heels of',
};
