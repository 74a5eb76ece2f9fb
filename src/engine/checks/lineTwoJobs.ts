import { checkOfTelling } from './defineCheck.ts';
import { toldTwiceByOne, twoTellings } from './twoTellings.ts';

/** A lineman sent to two places: the reason this tool exists. */
export const lineTwoJobs = checkOfTelling({
  id: 'line.two-jobs',
  title: 'A lineman is told two jobs',
  severity: 'stop',
  matters: 'He can only be right on one of the two pressures, so one of them has a hole in it from the snap.',
  source: '"usually paired … to prevent gap conflicts": J. Bellace, 3-3 stack clinic, Glazier Clinics',
  needsSide: true,
  report: (draft) => [...twoTellings(draft, 'conflict', true), ...toldTwiceByOne(draft, true)],
});
