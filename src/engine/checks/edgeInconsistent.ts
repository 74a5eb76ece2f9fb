import { gather } from '../../base/index.ts';
import { because, datum, fact } from '../because.ts';
import { GAP_LETTERS, SIDES, type Side } from '../vocabulary.ts';
import type { Played, PlayedMan } from '../types/index.ts';
import { checkOfPlay, type Report } from './defineCheck.ts';
import { turnsBack } from './edges.ts';
import { inConflict } from './outcomes.ts';

/**
 * Spill with no force outside, box with nobody in the gap inside, two who box on one side. Two who box can be taught as long as
 * the gaps inside them are owned, so that is for the coach to decide.
 */
export const edgeInconsistent = checkOfPlay({
  id: 'edge.inconsistent',
  title: 'The edge does not fit together',
  severity: 'stop',
  matters: 'If he spills it somebody must be outside him; if he boxes it somebody must be inside him.',
  source:
    'follows from "Force, Spill and Leverage", a staff handout, and Coach Kou, "Teaching spill overlap technique"; two who box as a check: from memory',
  needsSide: true,
  report: (draft) => gather(SIDES, (side) => judgeSide(draft, side)),
});

function judgeSide(draft: Played, side: Side): readonly Report[] {
  const told = draft.assignments.filter((man) => !inConflict(man) && letterIndex(man, side) !== null);
  const spillers = told.filter((man) => man.run.edge === 'spill' && isOutermost(man, draft, side));
  const boxers = told.filter((man) => man.run.edge === 'box');
  const { sure, maybe } = turnsBack(draft, side);
  const forced = sure.length > 0 || maybe.length > 0;
  return [
    ...(forced ? [] : spillers).map((man) => spillReport(man, side)),
    ...boxers.filter((man) => insideIsOpen(man, draft, side)).map((man) => boxReport(man, side)),
    ...(boxers.length < 2 ? [] : [twoBoxReport(boxers, side)]),
  ];
}

function spillReport(man: PlayedMan, side: Side): Report {
  return {
    because: because(
      '{who} spills on the {side} and nobody is outside him',
      { who: datum.role(man.aligned.role.id), side: datum.side(side) },
      man.combined.because,
      fact('nobody is force on that side'),
    ),
    who: [man.aligned.role.id],
    gaps: man.run.gaps,
  };
}

function boxReport(man: PlayedMan, side: Side): Report {
  return {
    because: because(
      '{who} boxes on the {side} and the gap inside him is open',
      { who: datum.role(man.aligned.role.id), side: datum.side(side) },
      man.combined.because,
    ),
    who: [man.aligned.role.id],
    gaps: man.run.gaps,
  };
}

function twoBoxReport(boxers: readonly PlayedMan[], side: Side): Report {
  const who = boxers.map((man) => man.aligned.role.id);
  return {
    severity: 'check',
    because: because(
      '{who} are told to box on one side, {side}',
      { who: datum.roles(who), side: datum.side(side) },
      fact('the outer one turns the ball back to the inner one, who keeps outside as well'),
    ),
    who,
    gaps: gather(boxers, (man) => man.run.gaps),
  };
}

/** How far out his outermost gap of that side is; null: he has none there. */
function letterIndex(man: PlayedMan, side: Side): number | null {
  const mine = man.run.gaps.filter((gap) => gap.side === side).map((gap) => GAP_LETTERS.indexOf(gap.letter));
  return mine.length === 0 ? null : Math.max(...mine);
}

/** Whether no man with a gap of that side is in a gap farther out. */
function isOutermost(man: PlayedMan, draft: Played, side: Side): boolean {
  const mine = letterIndex(man, side) ?? 0;
  return draft.assignments.every((other) => (letterIndex(other, side) ?? 0) <= mine);
}

function insideIsOpen(man: PlayedMan, draft: Played, side: Side): boolean {
  const letter = GAP_LETTERS[(letterIndex(man, side) ?? 0) - 1];
  return draft.gaps.some(
    (owned) => owned.gap.side === side && owned.gap.letter === letter && owned.owners.length === 0,
  );
}
