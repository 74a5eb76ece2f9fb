import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { gapKey } from '../gaps.ts';
import type { Gap, Played, PlayedMan } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { inConflict, outcomesOf, rushes, type Outcome } from './outcomes.ts';

/** Inside lanes: the passer steps up through them. */
const INSIDE: readonly Gap['letter'][] = ['A', 'B'];

/**
 * Two rushers in one lane beside an empty one inside, or nobody inside at all. The lane of a rusher is the gap he is in, that
 * of a man who is told to contain the outermost one of his side, whatever gap he has against the run. A man who is told two
 * things may be in either lane and is counted for neither of two in one.
 */
export const laneEmpty = checkOfPlay({
  id: 'lane.empty',
  title: 'A rush lane is empty',
  severity: 'check',
  matters: 'The passer steps up, or runs, through the lane nobody rushes.',
  source:
    'from memory: draw and step-up lane; the inside move that vacates one: "Align to Win Part 3", Blitzology, 28 Apr 2019',
  needsSide: true,
  report: (draft) => {
    const lanes = lanesByGap(draft);
    const comers = (gap: Gap): readonly PlayedMan[] => lanes.get(gapKey(gap)) ?? [];
    const inside = draft.gaps.map((each) => each.gap).filter((gap) => INSIDE.includes(gap.letter));
    const empty = inside.filter((gap) => comers(gap).length === 0);
    if (empty.length === inside.length && draft.passCount.rush > 0) {
      return [{ because: fact('nobody rushes inside the tackles'), gaps: inside }];
    }
    return gather(draft.gaps, ({ gap }, index): readonly Report[] => {
      const beside = gather([draft.gaps[index - 1], draft.gaps[index + 1]], (each) =>
        each !== undefined && empty.includes(each.gap) ? [each.gap] : [],
      );
      const two = comers(gap).filter((man) => !inConflict(man));
      return two.length < 2 || beside.length === 0 ? [] : [reportTwo(two, gap, beside)];
    });
  },
});

function reportTwo(two: readonly PlayedMan[], gap: Gap, beside: readonly Gap[]): Report {
  const who = two.map((man) => man.aligned.role.id);
  const said = { who: datum.roles(who), beside: datum.gaps(beside) };
  return {
    because: two.every((man) => man.pass.kind === 'contain')
      ? because('{who} contain on one side, {side}, and nobody rushes the {beside} inside them', {
          ...said,
          side: datum.side(gap.side),
        })
      : because('{who} rush one lane, the {gap}, and nobody rushes the {beside} next to it', {
          ...said,
          gap: datum.gap(gap),
        }),
    who,
    gaps: [gap, ...beside],
  };
}

/** Who rushes each lane, or may. */
function lanesByGap(draft: Played): ReadonlyMap<string, readonly PlayedMan[]> {
  const lanes = new Map<string, PlayedMan[]>();
  for (const man of draft.assignments) {
    for (const outcome of outcomesOf(man, draft)) {
      for (const gap of lanesOf(man, outcome, draft)) {
        const comers = lanes.get(gapKey(gap));
        if (comers === undefined) lanes.set(gapKey(gap), [man]);
        else if (!comers.includes(man)) comers.push(man);
      }
    }
  }
  return lanes;
}

/** An end who would contain at base and is told nothing rushes inside as soon as another man is told to contain outside him. */
function lanesOf(man: PlayedMan, outcome: Outcome, draft: Played): readonly Gap[] {
  if (!rushes(outcome)) return [];
  const { pass } = outcome;
  if (pass.kind !== 'contain') return outcome.gaps;
  const relieved =
    man.combined.job === null &&
    draft.assignments.some(
      (other) =>
        other.combined.job?.kind === 'contain' && other.pass.kind === 'contain' && other.pass.side === pass.side,
    );
  return relieved ? outcome.gaps : [{ side: pass.side, letter: draft.facts.edge[pass.side] }];
}
