import { defineCheck } from './defineCheck.ts';
import { twoTellings } from './twoTellings.ts';

/** A linebacker or a back told two things of the same weight. */
export const playerTwoJobs = defineCheck({
  id: 'player.two-jobs',
  title: 'A linebacker or a back is told two jobs',
  severity: 'stop',
  matters: 'He cannot be in two places, so one of the two jobs is left undone.',
  source: 'FACTS-TRADE 9.3 (from memory, reasoned): two explicit jobs that differ are a conflict',
  judge: (draft) => twoTellings(draft, 'conflict', false),
});
