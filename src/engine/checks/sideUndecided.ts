import { gather } from '../../base/index.ts';
import { because, datum } from '../because.ts';
import { checkOfTelling, pressuresRun, type Report } from './defineCheck.ts';

/**
 * The rule of the call side ends in a tie: nobody knows which way to run it. Of an either-or call only the half that is run
 * counts, and the first one if the key asks about its side.
 */
export const sideUndecided = checkOfTelling({
  id: 'side.undecided',
  title: 'The call side is a tie',
  severity: 'stop',
  matters: 'Half the defence runs it left and half runs it right.',
  source:
    '"Setting a Strength", The Call Sheet newsletter no. 004; that every basis needs tie-breaks: common practice, no source',
  needsSide: false,
  report: (draft) =>
    gather(pressuresRun(draft), ({ which, pressure }): readonly Report[] =>
      pressure.side.kind === 'decided'
        ? []
        : [
            {
              because: because(
                'nothing decides the call side of {which}',
                { which: datum.pressure(which) },
                pressure.side.because,
              ),
            },
          ],
    ),
});
