import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { RUN_CONCEPT_WORDS } from '../offenceVocabulary.ts';
import type { Answer, Played, PlayedMan, RunAnswer } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { inConflict } from './outcomes.ts';
import { notHere } from './runsHere.ts';

/** One defender owns a run gap and a split receiver whom a run with a pass option attacks at once. */
export const conflictRunPass = checkOfPlay({
  id: 'conflict.run-pass',
  title: 'One man has the run and the pass at once',
  severity: 'check',
  matters:
    'The passer looks at him alone and is right whatever he does; rush him and replace him from depth, or give the gap away.',
  source:
    '"Pressures to eliminate RPO conflict defenders", T. Gower, X&O Labs, 15 Feb 2021; "Understanding RPO", Blitzology, 13 Jun 2019',
  needsSide: true,
  report: (draft) => {
    const withPass = draft.runs.filter((run) => run.known.passOption);
    const unread = gather(withPass, (run) => (run.kind === 'not-here' ? [notHere(run)] : []));
    const runs = withPass.filter((run) => run.kind === 'answered');
    if (runs.length === 0) return unread;
    return [...gather(draft.assignments, (man) => reportMan(man, runs, draft)), ...unread];
  },
});

function reportMan(man: PlayedMan, runs: readonly RunAnswer[], draft: Played): readonly Report[] {
  const answer = receiverOf(man, draft);
  if (answer === null || man.run.gaps.length === 0 || inConflict(man)) return [];
  return [
    {
      because: because(
        '{who} has the {gaps} against the run and {receiver} against the pass, and {runs} can be thrown',
        {
          who: datum.role(man.aligned.role.id),
          gaps: datum.gaps(man.run.gaps),
          receiver: datum.player(answer.player),
          runs: datum.word([...new Set(runs.map((run) => RUN_CONCEPT_WORDS[run.known.concept]))].join(' or ')),
        },
        man.combined.because,
        answer.because,
        fact('the ball is run or thrown off what he does'),
      ),
      who: [man.aligned.role.id],
      gaps: man.run.gaps,
      players: [answer.player],
    },
  ];
}

/** The split receiver he answers out of a zone, if any. */
function receiverOf(man: PlayedMan, draft: Played): Answer | null {
  return (
    draft.answers.find((answer) => {
      const receiver = draft.facts.receivers.find((each) => each.player === answer.player);
      return answer.by === man.aligned.role.id && answer.how === 'zone' && receiver?.attached === false;
    }) ?? null
  );
}
