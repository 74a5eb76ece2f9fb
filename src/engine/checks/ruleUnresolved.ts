import { because, datum } from '../because.ts';
import type { ResolvedPressure, Telling } from '../types/index.ts';
import { defineCheck, type Report } from './defineCheck.ts';

/** A rule points at somebody or something this look or front does not have: the classic breakdown. */
export const ruleUnresolved = defineCheck({
  id: 'rule.unresolved',
  title: 'A rule points at somebody who is not there',
  severity: 'stop',
  matters: 'The man who is told this has no job in this formation and will not know it until the snap.',
  source: 'A. Hovorka, "4-3 Blitz Checks to Attack Protections", X&O Labs, 2017',
  judge: (draft) => {
    const men = draft.assignments.flatMap(({ aligned: { role }, combined }) => {
      const told = (which: 'first' | 'second', telling: Telling | null): readonly Report[] =>
        telling?.kind === 'unresolved'
          ? [
              {
                because: because(
                  'what {which} tells {who} cannot be done here',
                  { which: datum.pressure(which), who: datum.role(role.id) },
                  telling.because,
                ),
                who: [role.id],
              },
            ]
          : [];
      return [...told('first', combined.first), ...told('second', combined.second)];
    });
    return [...men, ...lost('first', draft.first), ...lost('second', draft.second)];
  },
});

function lost(which: 'first' | 'second', pressure: ResolvedPressure | null): readonly Report[] {
  return (pressure?.lost ?? []).map((why) => ({
    because: because('{which} speaks to somebody who is not in this front', { which: datum.pressure(which) }, why),
  }));
}
