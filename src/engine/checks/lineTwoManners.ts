import { checkOfTelling } from './defineCheck.ts';
import { twoTellings } from './twoTellings.ts';

/** The same gap, but the two pressures teach him to play it differently. */
export const lineTwoManners = checkOfTelling({
  id: 'line.two-manners',
  title: 'A lineman is taught one gap two ways',
  severity: 'check',
  matters: 'He ends in the right gap, but he must know before the snap which of the two ways he plays it.',
  source: 'common practice, no source',
  needsSide: true,
  report: (draft) => twoTellings(draft, 'two-manners', true),
});
