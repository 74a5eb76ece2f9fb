import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { RUN_CONCEPT_WORDS } from '../offenceVocabulary.ts';
import type { Played, RunAnswer } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { notHere } from './runsHere.ts';

/**
 * Outnumbered for a run the look is known for: a back who leads makes a gap nobody is left to fit. A man who pulls takes his
 * gap along, so he makes none more; whoever had the gap he leaves goes with him.
 */
export const boxNumbers = checkOfPlay({
  id: 'box.numbers',
  title: 'Outnumbered for a run this look is known for',
  severity: 'check',
  matters: 'The back who leads makes one gap more than there are men left to fit.',
  source:
    'gaps to own = blockers + 1: "Two Gap, One Gap Revisited", Football Is Life blog, 17 Aug 2015; that a gap goes with the man who pulls: from memory',
  needsSide: true,
  report: (draft) =>
    gather(draft.runs, (run): readonly Report[] =>
      run.kind === 'answered' ? outnumbered(run, draft) : [notHere(run)],
    ),
});

type Answered = Extract<RunAnswer, { readonly kind: 'answered' }>;

/** Free men less backs who lead; whoever pulls brings no gap more. */
function outnumbered(run: Answered, draft: Played): readonly Report[] {
  const leads = run.floating.filter((each) => each.floating.kind === 'lead').map((each) => each.floating);
  const short = leads.length - (run.spare + run.floating.length);
  if (short <= 0) return [];
  const players = leads.map((each) => each.player);
  return [
    {
      because: because(
        'against {run} to the {side} the box is {n} short with {players} leading',
        {
          run: datum.word(RUN_CONCEPT_WORDS[run.known.concept]),
          side: datum.side(run.known.side),
          n: datum.number(short),
          players: datum.players(players),
        },
        run.picture.because,
        fact('everybody near the box rushes or has a gap of his own'),
        ...goesWith(run, draft),
      ),
      gaps: leads.map((each) => each.near),
      players,
    },
  ];
}

/** Who loses his gap to a man who pulls, and so goes with him. */
function goesWith(run: Answered, draft: Played) {
  return gather(run.picture.pullers, (puller) => {
    const owned = draft.gaps.find(
      (each) => each.gap.side === puller.from.side && each.gap.letter === puller.from.letter,
    );
    const who = (owned?.owners ?? []).map((owner) => owner.role);
    if (who.length === 0) return [];
    return [
      because('{player} takes the {gap} along when he pulls, and {who} with it', {
        player: datum.player(puller.player),
        gap: datum.gap(puller.from),
        who: datum.roles(who),
      }),
    ];
  });
}
