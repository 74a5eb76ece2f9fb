import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import type { Because, Job, ToldMan } from '../types/index.ts';
import type { Account } from './account.ts';
import { checkOfTelling, type Report } from './defineCheck.ts';

/** A man is taken from a zone, a receiver or force by the other pressure, and nobody inherits it. */
export const playerOrphanedDuty = checkOfTelling({
  id: 'player.orphaned-duty',
  title: 'A duty is left behind',
  severity: 'stop',
  matters: 'The other pressure takes him away from something this one counts on.',
  source:
    '"Building a Better [Zone] Blitz", MatchQuarters; from memory: the three base duties of a man who leaves must be in somebody else\'s row',
  needsSide: true,
  report: ({ assignments }, account) =>
    gather(assignments.filter(yields), (man): readonly Report[] => {
      const given = yieldedJob(man);
      if (given === null) return [];
      const lost = lostDuty(given, man, account);
      if (lost === null) return [];
      return [
        {
          because: because(
            '{who} gives up {job}, and nobody takes it over',
            { who: datum.role(man.aligned.role.id), job: datum.job(given) },
            lost,
            man.combined.because,
          ),
          who: [man.aligned.role.id],
        },
      ];
    }),
});

const yields = ({ combined }: ToldMan): boolean => combined.status === 'yields';

/** The telling that gave way: what he would do if the other pressure were not called. */
function yieldedJob(man: ToldMan): Job | null {
  const { first, second, from } = man.combined;
  const loser = from === 'first' ? second : first;
  return loser?.kind === 'told' ? loser.job : null;
}

/** The part of a job given up that nobody has now; null: all of it is taken over. */
function lostDuty(job: Job, { aligned }: ToldMan, account: Account): Because | null {
  if (job.kind !== 'drop' && job.kind !== 'man') return null;
  if (job.kind === 'drop') {
    const empty = account.emptyZones.some(({ zone, side }) => zone === job.zone && side === job.side);
    if (empty) return fact('the shell needs that zone and nobody else drops there');
  } else if (account.openReceivers.includes(job.receiver)) {
    return fact('nobody else has that receiver');
  }
  const side = job.kind === 'drop' ? job.side : aligned.place;
  if (job.run.support !== 'force' || side === 'middle') return null;
  return account.turnedBack[side] ? null : fact('nobody else is force on that side');
}
