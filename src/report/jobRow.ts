import { assertNever } from '../base/index.ts';
import {
  gapsEqual,
  type Analysis,
  type Assignment,
  type Gap,
  type GapOwner,
  type Job,
  type PassColumn,
  type RoleId,
  type RunColumn,
} from '../engine/index.ts';
import { fill } from './fill.ts';
import type { JobRow, Why } from './types.ts';
import { NOTHING } from './words/cells.ts';
import type { Lexicon } from './words/lexicon.ts';
import { listed } from './words/lists.ts';
import { ROOM_WORDS } from './words/names.ts';

/** One of the eleven in the job table: where he stands, both columns, the whole job, and who told him. */
export function jobRow(assignment: Assignment, analysis: Analysis, lexicon: Lexicon): JobRow {
  const { aligned, combined, run, pass } = assignment;
  const role = combined.role;
  const job = wholeJob(assignment, lexicon);
  return {
    role: role.id,
    letter: role.letter,
    name: role.name,
    room: ROOM_WORDS[role.room],
    aligns: lexicon.aligned(aligned, analysis.facts),
    job,
    move: moveOf(assignment, lexicon),
    run: lexicon.run(run, looseGaps(assignment)),
    pass: lexicon.pass(pass, analysis.facts),
    toldBy: toldBy(assignment, analysis),
    why: { text: job, because: reasons(assignment, analysis, lexicon) },
  };
}

function reasons(assignment: Assignment, analysis: Analysis, lexicon: Lexicon): readonly Why[] {
  const { aligned, combined } = assignment;
  // Gaps he is sent to follow from what he is told, which is said first.
  const taken = ownedBy(combined.role.id, analysis).filter(({ owner }) => owner.how !== 'told');
  return [
    ...[combined.because, aligned.because].map((each) => fill(each, lexicon)),
    ...taken.map(({ gap, owner }): Why => {
      const why = fill(owner.because, lexicon);
      return { text: `${lexicon.gap(gap)}: ${why.text}`, because: why.because };
    }),
  ];
}

/** The gaps a man has, each with how he came to it. */
function ownedBy(role: RoleId, analysis: Analysis): readonly { readonly gap: Gap; readonly owner: GapOwner }[] {
  return analysis.gaps.flatMap(({ gap, owners }) =>
    owners.filter((owner) => owner.role === role).map((owner) => ({ gap, owner })),
  );
}

/** Gaps a coverage man takes only if nobody else has them; none once one of them became his, for he takes only one. */
function looseGaps({ combined, run }: Assignment): readonly Gap[] {
  const { job } = combined;
  if (job === null || !('run' in job) || job.run.firm || run.gaps.length > 0) return [];
  return job.run.fits;
}

function includes(gaps: readonly Gap[], gap: Gap): boolean {
  return gaps.some((each) => gapsEqual(each, gap));
}

function gapsOf(job: Job): readonly Gap[] {
  return 'run' in job ? job.run.fits : job.gaps;
}

/** What a pressure told him, with the gaps the engine gave him on top; or, untold, what both columns amount to. */
export function wholeJob({ combined, run, pass }: Assignment, lexicon: Lexicon): string {
  const told = combined.job;
  if (told === null) {
    const job = jobOfColumns(run, pass);
    return job === null ? 'No gap and no receiver of his own' : lexicon.job(job);
  }
  const more = run.gaps.filter((gap) => !includes(gapsOf(told), gap));
  const sentence = lexicon.job(told);
  return more.length === 0
    ? sentence
    : `${sentence}; also ${listed(
        more.map((gap) => `the ${lexicon.gap(gap)}`),
        '',
      )}`;
}

function moveOf({ combined, run, pass }: Assignment, lexicon: Lexicon): string {
  const job = combined.job ?? jobOfColumns(run, pass);
  return job === null ? NOTHING : lexicon.move(job);
}

/** Both columns as one job; null when he has neither gap, support nor anything against the pass. */
function jobOfColumns(run: RunColumn, pass: PassColumn): Job | null {
  const { gaps, edge, support } = run;
  const manner = run.twoGaps ? 'two-gap' : 'penetrate';
  const behind = { fits: gaps, firm: true, support };
  switch (pass.kind) {
    case 'rush':
      return { kind: 'rush', gaps, manner, track: { kind: 'straight' }, edge, peel: false, order: null };
    case 'contain':
      return { kind: 'contain', gaps, manner, track: { kind: 'straight' }, edge, peel: false, order: null };
    case 'zone':
      return { kind: 'drop', zone: pass.zone, side: pass.side, run: behind };
    case 'man':
      return { kind: 'man', receiver: pass.receiver, run: behind };
    case 'spy':
      return { kind: 'spy', run: behind };
    case 'none':
      if (gaps.length === 0 && support === null) return null;
      return { kind: 'fit', gaps, manner: run.twoGaps ? 'two-gap' : 'read', support };
    default:
      return assertNever(pass);
  }
}

/** Who a man has his job from: "first", "second", "both", "shell", "filled in" or "base". */
function toldBy({ combined }: Assignment, analysis: Analysis): string {
  const { from, first, second } = combined;
  if (from === 'both') return 'both';
  if (from === 'shell') return 'filled in';
  if (from !== null) {
    const telling = from === 'first' ? first : second;
    return telling?.kind === 'told' && telling.basis === 'coverage' ? 'shell' : from;
  }
  const filled = ownedBy(combined.role.id, analysis).some(({ owner }) => owner.how === 'filled');
  return filled ? 'filled in' : 'base';
}
