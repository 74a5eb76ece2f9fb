/** What is worked out again after an edit, and how the whole grows. */
import type { Playbook } from '../../src/document/index.ts';
import { createMenuJudge, type MenuCase } from '../../src/menu/index.ts';
import { dragged, grown, judgeAll, pairCases, retold } from './cases.ts';
import type { GoalRow } from './main.ts';
import { cpuMs, quantile, table, told } from './measure.ts';

/** A part of the report. */
export interface Part {
  readonly text: string;
  readonly goals: readonly GoalRow[];
}

const ROUNDS = 2;

/** One pressure told differently, one man of the offence dragged: only the cases that depend on it. */
export function benchEdits(playbook: Playbook): Part {
  const judge = createMenuJudge();
  judge.open(playbook);
  const kinds: readonly (readonly [
    name: string,
    edit: (before: Playbook, round: number) => Playbook,
    isHit: (each: MenuCase, after: Playbook) => boolean,
  ])[] = [
    ['one pressure told differently', retold, ({ call }, { pressures }) => hits(call, pressures, playbook.pressures)],
    ['one man dragged in one look', dragged, ({ look }, { looks }) => look.id === looks[0]?.id],
  ];
  const measured = kinds.map(([name, edit, isHit]) => {
    // The grid has been answered before somebody edits: the same cases as they were.
    const first = edit(playbook, 0);
    judgeAll(
      judge,
      pairCases(judge.open(playbook)).filter((each) => isHit(each, first)),
    );
    let count = 0;
    const times = Array.from({ length: ROUNDS }, (_, round) => {
      const copy = structuredClone(edit(playbook, round));
      let opening = 0;
      let all = 0;
      opening = cpuMs(() => {
        const after = judge.open(copy);
        const cases = pairCases(after).filter((each) => isHit(each, after));
        count = cases.length;
        all = cpuMs(() => judgeAll(judge, cases));
      });
      return { all, opening: opening - all };
    });
    const ms = quantile(
      times.map(({ all }) => all),
      0.5,
    );
    return {
      name,
      count,
      ms,
      opening: quantile(
        times.map(({ opening }) => opening),
        0.5,
      ),
    };
  });
  const [pressure, drag] = measured;
  return {
    text: `## After an edit

${table(
  ['', 'cases', 'ms', 'ms a case', 'ms to find out what changed'],
  measured.map(({ name, count, ms, opening }) => [name, told(count), told(ms), told(ms / count), told(opening)]),
)}`,
    goals: [
      ['one pressure edited: under 8 ms', `${told(pressure?.ms ?? NaN)} ms`, (pressure?.ms ?? NaN) < 8],
      ['one man dragged: under 4 ms', `${told(drag?.ms ?? NaN)} ms`, (drag?.ms ?? NaN) < 4],
    ],
  };
}

/** Whether a pair has a pressure that is not as it was. */
function hits(call: MenuCase['call'], after: Playbook['pressures'], before: Playbook['pressures']): boolean {
  const changed = after.find((each, at) => each.name !== before[at]?.name);
  return changed !== undefined && (call.first === changed.id || call.second === changed.id);
}

/** Milliseconds a case as pressures and looks become more. */
export function benchGrowth(): Part {
  const sizes = [
    [20, 24],
    [40, 24],
    [80, 48],
  ] as const;
  const measured = sizes.map(([pressures, looks]) => {
    const judge = createMenuJudge();
    const opened = judge.open(grown(pressures, looks));
    const all = pairCases(opened);
    // Whole rows, so that as much is shared as in the whole grid.
    const part = all.slice(0, 5_000);
    const ms = cpuMs(() => judgeAll(judge, part)) / part.length;
    return { pressures, looks, cases: all.length, ms };
  });
  const [first, last] = [measured[0], measured.at(-1)];
  const exponent =
    first === undefined || last === undefined
      ? NaN
      : 1 + Math.log(last.ms / first.ms) / Math.log(last.cases / first.cases);
  return {
    text: `## Growth

${table(
  ['pressures', 'looks', 'cases of one front and turn', 'ms a case (first 5,000)'],
  measured.map(({ pressures, looks, cases, ms }) => [String(pressures), String(looks), told(cases), told(ms)]),
)}

Time grows with the number of cases to the power of ${exponent.toFixed(2)}.`,
    goals: [['growth: exponent at most 1.05', exponent.toFixed(2), exponent <= 1.05]],
  };
}
