import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { arrival } from '../move/arrival.ts';
import { movesOfDraft } from '../move/draftMoves.ts';
import { tenth } from '../move/estimate.ts';
import { likelySpot, THROW_TIMES } from '../move/throws.ts';
import { PROTECTIONS } from '../offenceVocabulary.ts';
import type { Because, Played, ProtectionAnswer, RoleId } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';

/** Against each protection the look is known for: who comes free, how soon, and whether the hot throw beats him. */
export const rushUnblockedAnswer = checkOfPlay({
  id: 'rush.unblocked-answer',
  title: 'Who comes free',
  severity: 'note',
  matters: 'A free man only counts if he is there before the ball is gone.',
  source:
    '"Understanding 1/2 Slide Protection", Blitzology, 2 Mar 2010; "Under Pressure: Splitting Seconds", Football Outsiders, 2011; arrival times derived',
  needsSide: true,
  report: (draft) => gather(draft.protections, (answer) => reportsOf(answer, draft)),
});

function reportsOf(answer: ProtectionAnswer, draft: Played): readonly Report[] {
  if (answer.kind !== 'answered') return [];
  const name = PROTECTIONS.find((each) => each.id === answer.known.protection)?.name ?? answer.known.protection;
  return answer.picture.unblocked.map(({ rusher, endGap, because: why }): Report => {
    const seconds = secondsTo(rusher, draft);
    const data = { who: datum.role(rusher), name: datum.word(name), side: datum.side(answer.known.slideSide) };
    return {
      because: because('{who} comes free against {name}, turned {side}', data, ...timeBecause(seconds), why),
      who: [rusher],
      gaps: [endGap],
    };
  });
}

function secondsTo(rusher: RoleId, draft: Played): number | null {
  const spot = likelySpot(draft.facts);
  const move = movesOfDraft(draft).find((each) => each.role === rusher);
  return spot === null || move === undefined ? null : arrival(move, spot);
}

/** How soon, and against which throw that is soon enough; an estimate, and it says so. */
function timeBecause(arrives: number | null): readonly Because[] {
  if (arrives === null) return [fact('how soon cannot be told: in this look it is open who passes')];
  const seconds = tenth(arrives);
  const at = { n: datum.number(seconds) };
  if (seconds <= THROW_TIMES.quick)
    return [because('he is there in about {n} s, before even a quick throw (an estimate)', at)];
  return seconds <= THROW_TIMES['five-step']
    ? [because('he is there in about {n} s: the hot throw beats him, a deeper one does not (an estimate)', at)]
    : [because('he is there in about {n} s, after the ball is gone (an estimate)', at)];
}
