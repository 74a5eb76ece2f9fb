import { because, datum } from '../because.ts';
import type { ResolvedPressure } from '../types/index.ts';
import { defineCheck, type Report } from './defineCheck.ts';

/** The rule of the call side ends in a tie: nobody knows which way to run it. */
export const sideUndecided = defineCheck({
  id: 'side.undecided',
  title: 'The call side is a tie',
  severity: 'stop',
  matters: 'Half the defence runs it left and half runs it right.',
  source:
    '"Setting a Strength", The Call Sheet newsletter no. 004; that every basis needs tie-breaks: common practice, no source',
  judge: (draft) => {
    const tie = (which: 'first' | 'second', pressure: ResolvedPressure | null): readonly Report[] =>
      pressure?.side.kind === 'tie'
        ? [
            {
              because: because(
                'nothing decides the call side of {which}',
                { which: datum.pressure(which) },
                pressure.side.because,
              ),
            },
          ]
        : [];
    return [...tie('first', draft.first), ...tie('second', draft.second)];
  },
});
