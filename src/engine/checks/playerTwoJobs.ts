import { checkOfTelling } from './defineCheck.ts';
import { toldTwiceByOne, twoTellings } from './twoTellings.ts';

/** A linebacker or a back told two things of the same weight. */
export const playerTwoJobs = checkOfTelling({
  id: 'player.two-jobs',
  title: 'A linebacker or a back is told two jobs',
  severity: 'stop',
  matters: 'He cannot be in two places, so one of the two jobs is left undone.',
  source:
    'from memory, reasoned from "usually paired … to prevent gap conflicts", J. Bellace, 3-3 stack clinic, Glazier Clinics',
  needsSide: true,
  report: (draft) => [...twoTellings(draft, 'conflict', false), ...toldTwiceByOne(draft, false)],
});
