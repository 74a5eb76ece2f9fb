import type { Assignment, Telling } from '../engine/index.ts';
import { fill } from './fill.ts';
import { wholeJob } from './jobRow.ts';
import type { PairRow } from './types.ts';
import { NOTHING } from './words/cells.ts';
import type { Lexicon } from './words/lexicon.ts';
import { ROOM_WORDS } from './words/names.ts';
import { STATUS_WORDS } from './words/verdicts.ts';

/** One man of the pair table; `paired` false: the call has one pressure. */
export function pairRow(assignment: Assignment, paired: boolean, lexicon: Lexicon): PairRow {
  const { role, first, second, status, from, because } = assignment.combined;
  const loser = from === 'first' ? second : first;
  const says = (telling: Telling | null): string => {
    if (telling === null) return 'Nothing';
    return telling.kind === 'told' ? lexicon.job(telling.job) : fill(telling.because, lexicon).text;
  };
  return {
    role: role.id,
    letter: role.letter,
    name: role.name,
    room: ROOM_WORDS[role.room],
    first: says(first),
    second: paired ? says(second) : NOTHING,
    stands: wholeJob(assignment, lexicon),
    status,
    shellGaveWay: status === 'yields' && loser?.kind === 'told' && loser.basis === 'coverage',
    verdict: STATUS_WORDS[status],
    why: fill(because, lexicon),
  };
}
