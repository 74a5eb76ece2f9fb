import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { optionDuties } from '../offence/runs/optionDuties.ts';
import type { OptionMan } from '../offence/runs/types.ts';
import { READ_REACTIONS, RUN_CONCEPT_WORDS } from '../offenceVocabulary.ts';
import { CONCEPTS } from '../offence/runs/concepts.ts';
import type { Played, PlayedMan, RoleId, RunAnswer } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { decisions, inConflict } from './outcomes.ts';
import { notHere } from './runsHere.ts';

type Answered = Extract<RunAnswer, { readonly kind: 'answered' }>;

/**
 * Against an option or zone-read look nobody has the dive, the quarterback or the pitch. Cannot tell where nobody stands who
 * would be read, or where it hangs on a man who is told two things.
 */
export const optionUnassigned = checkOfPlay({
  id: 'option.unassigned',
  title: 'An option has a man nobody takes',
  severity: 'stop',
  matters: 'Somebody has to take the dive, the quarterback and the pitch; the one nobody has goes to the end zone.',
  source: '"Teaching Gap Exchanges & Defending the Zone Read", MatchQuarters',
  needsSide: true,
  report: (draft) =>
    gather(draft.runs, (run): readonly Report[] => {
      if (run.kind === 'not-here') return CONCEPTS[run.known.concept].outcomes === undefined ? [] : [notHere(run)];
      return run.picture.option === null ? [] : judgeOption(run, draft);
    }),
});

function judgeOption(run: Answered, draft: Played): readonly Report[] {
  const { option, picture } = run;
  const against = { run: datum.word(RUN_CONCEPT_WORDS[run.known.concept]), side: datum.side(run.known.side) };
  if (option === null) {
    const why = fact(
      'nobody stands where the man who is read should be',
      ...(picture.read === null ? [] : [picture.read.words]),
    );
    const sentence = because('who has what against {run} to the {side} cannot be told', against, why);
    return [{ undetermined: true, because: sentence }];
  }
  const who = hangsOn(picture, draft);
  if (who.length > 0) {
    return [
      {
        undetermined: true,
        because: because(
          'whether all of {run} to the {side} is taken depends on {who}',
          { ...against, who: datum.roles(who) },
          fact('he is told two things, and one of them leaves a man of the option to nobody'),
        ),
        who,
      },
    ];
  }
  if (option.missing.length === 0) return [];
  return [
    {
      because: because(
        'against {run} to the {side} nobody has {missing}',
        { ...against, missing: datum.word(option.missing.map((phase) => `the ${phase}`).join(' or ')) },
        option.because,
      ),
      who: run.read === null ? [] : [run.read],
    },
  ];
}

/** The men told two things on whom it hangs: each by himself where that is so, else all of them together. */
function hangsOn(picture: Answered['picture'], draft: Played): readonly RoleId[] {
  const torn = draft.assignments.filter(inConflict).map((man) => man.aligned.role.id);
  const varies = (roles: readonly RoleId[]): boolean =>
    new Set(decisions(draft, roles).map((men) => isTaken(picture, men))).size > 1;
  if (!varies(torn)) return [];
  const alone = torn.filter((role) => varies([role]));
  return alone.length > 0 ? alone : torn;
}

/** Whether the read man can play so that every phase has somebody. */
function isTaken(picture: Answered['picture'], men: readonly PlayedMan[]): boolean {
  const told = men.map(({ aligned, run }): OptionMan => ({
    role: aligned.role.id,
    x: aligned.x,
    y: aligned.y,
    gaps: run.gaps,
  }));
  return READ_REACTIONS.some((reaction) => {
    const duties = optionDuties(picture, told, reaction);
    return duties.ok && duties.value.missing.length === 0;
  });
}
