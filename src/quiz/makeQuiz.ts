import type { Playbook } from '../document/index.ts';
import { toSetup } from '../document/index.ts';
import { analyse, PLACES, type CallId, type LookId, type Place, type Room } from '../engine/index.ts';
import { rightAnswers } from './answers.ts';
import { shuffled } from './shuffled.ts';
import { ASKED, type Question } from './types.ts';

/** What a coach picks for a quiz. */
export interface QuizPlan {
  readonly room: Room;
  /** At least one, else there is nothing to ask. */
  readonly calls: readonly CallId[];
  readonly looks: readonly LookId[];
  /** How many questions, at most. */
  readonly count: number;
  /** Another number, another quiz; the same number, the same quiz. */
  readonly seed: number;
}

/**
 * The questions of a quiz: every call as often as every other, as far as there is something to ask, no question twice, and
 * of each call in a look one question only. A call is not asked in a look where it is not run, or where something stops it:
 * it must be mended before it is taught. Fewer than asked for: there are no more.
 */
export function makeQuiz(playbook: Playbook, plan: QuizPlan): readonly Question[] {
  const cases = shuffled(casesOf(plan), plan.seed);
  const questions: Question[] = [];
  for (const [index, each] of evenly(cases, plan.calls).entries()) {
    if (questions.length >= plan.count) break;
    const question = questionOf(playbook, plan, each, index);
    if (question !== null) questions.push(question);
  }
  return questions;
}

interface Case {
  readonly call: CallId;
  readonly look: LookId;
  readonly spot: Place;
}

/** One case for each call in each look; the ball lies left, in the middle and right in turn. */
function casesOf({ calls, looks }: QuizPlan): readonly Case[] {
  return calls.flatMap((call, row) =>
    looks.map((look, column): Case => ({ call, look, spot: PLACES[(row + column) % PLACES.length] ?? 'middle' })),
  );
}

/** The first case of each call, then the second of each, and so on. */
function evenly(cases: readonly Case[], calls: readonly CallId[]): readonly Case[] {
  const rows = calls.map((call) => cases.filter((each) => each.call === call));
  const longest = Math.max(0, ...rows.map((row) => row.length));
  return Array.from({ length: longest }, (_, at) => rows.flatMap((row) => row.slice(at, at + 1))).flat();
}

function questionOf(playbook: Playbook, plan: QuizPlan, { call: id, look, spot }: Case, turn: number): Question | null {
  const call = playbook.calls.find((each) => each.id === id);
  const setup = call === undefined ? null : toSetup(playbook, { call, look, spot });
  if (setup?.ok !== true) return null;
  const analysis = analyse(setup.value);
  if (analysis.verdict === 'left-out' || analysis.verdict === 'stop') return null;
  const asked = analysis.assignments
    .filter(({ aligned }) => aligned.role.room === plan.room)
    .flatMap(({ aligned }) => ASKED.map((column) => ({ role: aligned.role.id, asked: column })))
    .filter((each) => rightAnswers(analysis, each.role, each.asked).length > 0);
  const [first] = shuffled(asked, plan.seed + turn + 1);
  return first === undefined ? null : { call: id, look, spot, ...first };
}
