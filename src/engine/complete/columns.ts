import { remembered } from '../../base/index.ts';
import { gapsEqual } from '../gaps.ts';
import type {
  Aligned,
  BaseJob,
  Job,
  OwnedGap,
  PassColumn,
  PlayedMan,
  RoleId,
  RunColumn,
  Settled,
} from '../types/index.ts';
import type { Man } from './ownGaps.ts';

/** The run column: the gaps he ends up with, and what his job says beyond them. */
function runColumn(role: RoleId, job: Job | null, gaps: readonly OwnedGap[]): RunColumn {
  const mine = gaps.filter((each) => each.owners.some((owner) => owner.role === role));
  const own = mine.filter((each) => each.owners.some((owner) => owner.role === role && owner.sure));
  const shown = (own.length > 0 ? own : mine).map((each) => each.gap);
  const kept = job === null ? [] : jobGaps(job);
  return {
    // A man in conflict shows the gaps of the job that stands for now, not both.
    gaps: own.length > 0 ? shown : shown.filter((gap) => kept.some((one) => gapsEqual(one, gap))),
    twoGaps: shown.length > 1 && own.some((each) => each.owners.some((owner) => owner.role === role && owner.shared)),
    edge: job?.kind === 'rush' || job?.kind === 'contain' ? job.edge : null,
    support: supportOf(job),
  };
}

function jobGaps(job: Job): Job extends unknown ? RunColumn['gaps'] : never {
  return job.kind === 'rush' || job.kind === 'contain' || job.kind === 'fit' ? job.gaps : job.run.fits;
}

/** His part in the run beyond his gaps. */
export function supportOf(job: Job | null): RunColumn['support'] {
  if (job === null || job.kind === 'rush' || job.kind === 'contain') return null;
  return job.kind === 'fit' ? job.support : job.run.support;
}

/** The pass column: what the job says, else what the base front says. */
export function passColumn(job: Job | null, base: BaseJob, place: Aligned['place']): PassColumn {
  if (job === null || job.kind === 'fit') {
    return base.pass === 'contain' && place !== 'middle' ? { kind: 'contain', side: place } : atBase(base);
  }
  switch (job.kind) {
    case 'rush':
      return { kind: 'rush' };
    case 'contain': {
      const [gap] = job.gaps;
      return gap === undefined ? { kind: 'rush' } : { kind: 'contain', side: gap.side };
    }
    case 'drop':
      return { kind: 'zone', zone: job.zone, side: job.side };
    case 'man':
      return { kind: 'man', receiver: job.receiver };
    case 'spy':
      return { kind: 'spy' };
  }
}

function atBase(base: BaseJob): PassColumn {
  return base.pass === 'none' ? { kind: 'none' } : { kind: 'rush' };
}

/** Both columns of one man's job. The same man with the same gaps is the same one again, for many calls come to him. */
export function assign<Known extends Settled>(man: Man<Known>, gaps: readonly OwnedGap[]): Assigned<Known> {
  const { aligned, combined, base } = man;
  const known = assignedTo(man);
  const share = shareOf(aligned.role.id, gaps);
  const same = known.get(share);
  if (same !== undefined) return same;
  const made = {
    aligned,
    combined,
    run: runColumn(aligned.role.id, combined.job, gaps),
    pass: passColumn(combined.job, base, aligned.place),
  };
  known.set(share, made);
  return made;
}

/** One of the eleven as he goes into the play, with as much of what he is told as is known of the man. */
export type Assigned<Known extends Settled> = PlayedMan & { readonly combined: Known };

const assignedTo = remembered(
  <Known extends Settled>(_man: Man<Known>): Map<string, Assigned<Known>> => new Map<string, Assigned<Known>>(),
);

/** Which gaps a man owns, and how, as a text. */
function shareOf(role: RoleId, gaps: readonly OwnedGap[]): string {
  let share = '';
  for (const { gap, owners } of gaps) {
    for (const owner of owners) {
      if (owner.role === role) share += `${gap.letter}${gap.side}${owner.sure ? '' : '?'}${owner.shared ? '/' : ''} `;
    }
  }
  return share;
}
