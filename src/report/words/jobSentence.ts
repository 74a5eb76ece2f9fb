import { assertNever } from '../../base/index.ts';
import type {
  ContainJob,
  EdgePlay,
  FitJob,
  JobOf,
  Manner,
  Names,
  RunSupport,
  RushJob,
  Support,
  Track,
  Zone,
} from '../../engine/index.ts';
import { listed } from './lists.ts';
import { EDGE_WORDS, MANNER_WORDS, PASSING_WORDS, SUPPORT_WORDS } from './names.ts';

/** How the names inside a job are said: absolute ones in a look, relative ones in a rule. */
export interface NameWords<N extends Names> {
  readonly gap: (gap: N['gap']) => string;
  readonly who: (who: N['who']) => string;
  readonly zone: (zone: Zone, side: N['side']) => string;
  readonly receiver: (receiver: N['receiver']) => string;
}

/** One job as a sentence without its full stop: "Rush the B gap right off the inside hip of the E". */
export function jobSentence<N extends Names>(job: JobOf<N>, words: NameWords<N>): string {
  return jobMove(job, words) + jobRest(job, words);
}

/** What he does at the snap, without what comes of it against a pass or a run: "Drop to the seam left". */
export function jobMove<N extends Names>(job: JobOf<N>, words: NameWords<N>): string {
  switch (job.kind) {
    case 'rush':
      return rushSentence(job, words);
    case 'contain':
      return containSentence(job, words);
    case 'fit':
      return fitSentence(job, words);
    case 'drop':
      return `Drop to the ${words.zone(job.zone, job.side)}`;
    case 'man':
      return `Man on ${words.receiver(job.receiver)}`;
    case 'spy':
      return 'Spy the passer';
    default:
      return assertNever(job);
  }
}

/** The rest of the sentence: contain on a pass, force, the gaps he has against the run. */
function jobRest<N extends Names>(job: JobOf<N>, words: NameWords<N>): string {
  switch (job.kind) {
    case 'rush':
      return '';
    case 'contain':
      return job.gaps.length === 0 ? '' : '; contain on a pass';
    case 'fit':
      return supportTail(job.support);
    case 'drop':
    case 'man':
    case 'spy':
      return runTail(job.run, words);
    default:
      return assertNever(job);
  }
}

const RUSH_VERBS: Readonly<Record<Exclude<Manner, 'two-gap'>, string>> = {
  penetrate: 'Rush',
  slant: 'Slant to',
  loop: 'Loop to',
  read: 'Rush',
};

function rushSentence<N extends Names>(job: RushJob<N>, words: NameWords<N>): string {
  const tail = trackTail(job.track, words) + edgeTail(job.edge) + orderTail(job, words);
  if (job.gaps.length === 0) return `Rush the passer${tail}`;
  if (job.manner === 'two-gap') return `Two-gap: ${gapList(job.gaps, words)}${tail}`;
  const read = job.manner === 'read' ? `, ${MANNER_WORDS.read}` : '';
  return `${RUSH_VERBS[job.manner]} ${theGaps(job.gaps, words)}${tail}${read}`;
}

function containSentence<N extends Names>(job: ContainJob<N>, words: NameWords<N>): string {
  const tail = trackTail(job.track, words) + edgeTail(job.edge) + orderTail(job, words);
  if (job.gaps.length === 0) return `Contain${tail}`;
  const where =
    job.manner === 'two-gap'
      ? `Two-gap: ${gapList(job.gaps, words)}`
      : `${RUSH_VERBS[job.manner]} ${theGaps(job.gaps, words)}`;
  return `${where}${tail}`;
}

function fitSentence<N extends Names>(job: FitJob<N>, words: NameWords<N>): string {
  const where =
    job.gaps.length === 0
      ? 'Fit the run'
      : job.manner === 'two-gap'
        ? `Fit both, two-gap: ${gapList(job.gaps, words)}`
        : `Fit ${theGaps(job.gaps, words)}`;
  // A fit is played after a read, so only another manner is worth saying.
  const manner = job.manner === 'read' || job.manner === 'two-gap' ? '' : `, ${MANNER_WORDS[job.manner]}`;
  return `${where}${manner}`;
}

function gapList<N extends Names>(gaps: readonly N['gap'][], words: NameWords<N>): string {
  return listed(gaps.map(words.gap), 'no gap');
}

function theGaps<N extends Names>(gaps: readonly N['gap'][], words: NameWords<N>): string {
  return listed(
    gaps.map((gap) => `the ${words.gap(gap)}`),
    'no gap',
  );
}

function trackTail<N extends Names>(track: Track<N['who']>, words: NameWords<N>): string {
  if (track.kind === 'straight') return '';
  return ` ${PASSING_WORDS[track.how]} ${words.who(track.neighbour)}`;
}

/** Who goes first where two paths meet, and whether he leaves with the back. */
function orderTail<N extends Names>(job: RushJob<N> | ContainJob<N>, words: NameWords<N>): string {
  const order =
    job.order === null
      ? ''
      : `, ${job.order.turn === 'first' ? 'first, before' : 'second, after'} ${words.who(job.order.neighbour)}`;
  return `${order}${job.peel ? ', leaves with the back if he flares' : ''}`;
}

function edgeTail(edge: EdgePlay | null): string {
  return edge === null ? '' : `, ${EDGE_WORDS[edge]}`;
}

function supportTail(support: Support | null): string {
  return support === null ? '' : `; ${SUPPORT_WORDS[support]}`;
}

function runTail<N extends Names>(run: RunSupport<N['gap']>, words: NameWords<N>): string {
  return supportTail(run.support) + fitsTail(run.fits.map(words.gap), run.firm);
}

/** Gaps of a coverage man: his own, or his only when nobody else has them, the first one first. */
export function fitsTail(gaps: readonly string[], firm: boolean): string {
  if (gaps.length === 0) return '';
  return firm ? `; ${listed(gaps, '')} against the run` : `; ${ifNobodyHas(gaps)}`;
}

/** Gaps in the order in which he takes one: "A, B gap left, then A gap right if nobody has them". Each is said once. */
export function ifNobodyHas(gaps: readonly string[]): string {
  const distinct = [...new Set(gaps)];
  const said = distinct.map((gap, index) => {
    const next = distinct[index + 1];
    const [tail, nextTail] = [gap, next].map((each) =>
      each !== undefined && /^[A-G] /.test(each) ? each.slice(1) : null,
    );
    // "A gap left, B gap left" is "A, B gap left".
    return tail !== null && tail === nextTail ? gap.slice(0, 1) : gap;
  });
  const before = said.slice(0, -1).join(', ');
  const last = said.at(-1) ?? '';
  return `${before === '' ? last : `${before}, then ${last}`} if nobody has ${distinct.length === 1 ? 'it' : 'them'}`;
}
