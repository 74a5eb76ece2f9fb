import { because, datum } from '../because.ts';
import { checkOfPlay } from './defineCheck.ts';

/** The formation drawn is not legal at the playbook's rule level, so no opponent will show it as drawn. */
export const lookIllegal = checkOfPlay({
  id: 'look.illegal',
  title: 'The formation is not legal as drawn',
  severity: 'check',
  matters: 'The check is only worth something against a formation you can really meet.',
  source: 'NFHS 2-14-1, 7-2-5; NCAA 7-1-4; NFL 7-5-1; on the line or not: NFHS 2-25-2, 2-32-9, NCAA 2-27-4',
  needsSide: false,
  report: (draft) =>
    draft.facts.faults.map((fault) => ({
      because: because(
        'at the {level} level this formation is not legal',
        { level: datum.word(draft.setup.level.replace('-', ' ')) },
        fault.because,
      ),
      players: fault.players,
    })),
});
