import { gather } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import type { ResolvedPressure, RoleId, Telling } from '../types/index.ts';
import { checkOfTelling, pressuresRun, tieReport, type Report } from './defineCheck.ts';

type Which = 'first' | 'second';

/**
 * A rule points at somebody or something this look or front does not have: the classic breakdown. Of an either-or call only the
 * half that is run counts. Cannot tell of a pressure without a side.
 */
export const ruleUnresolved = checkOfTelling({
  id: 'rule.unresolved',
  title: 'A rule points at somebody who is not there',
  severity: 'stop',
  matters: 'The man who is told this has no job in this formation and will not know it until the snap.',
  source: 'A. Hovorka, "4-3 Blitz Checks to Attack Protections", X&O Labs, 2017',
  // A pressure that has its side is judged even when the other one has none.
  needsSide: false,
  report: (draft) => {
    const run = pressuresRun(draft);
    const men = gather(
      draft.assignments.filter(({ combined }) => isUnresolved(combined.first) || isUnresolved(combined.second)),
      ({ aligned }) => gather(run, ({ which, pressure }) => unresolved(aligned.role.id, which, pressure)),
    );
    return [...men, ...gather(run, ({ which, pressure }) => lost(which, pressure))];
  },
});

const isUnresolved = (telling: Telling | null): boolean => telling?.kind === 'unresolved';

function unresolved(role: RoleId, which: Which, { tellings }: ResolvedPressure): readonly Report[] {
  const telling = tellings.get(role);
  if (telling?.kind !== 'unresolved') return [];
  return [
    {
      because: because(
        'what {which} tells {who} cannot be done here',
        { which: datum.pressure(which), who: datum.role(role) },
        telling.because,
      ),
      who: [role],
    },
  ];
}

function lost(which: Which, pressure: ResolvedPressure): readonly Report[] {
  const tie = tieReport(which, pressure);
  if (tie !== null) return [tie];
  return pressure.lost.map((why) => ({
    because: because('{which} speaks to somebody who is not in this front', { which: datum.pressure(which) }, why),
  }));
}
