/**
 * `npm run bench:menu`: what a check costs alone and within a menu, what an edit costs, how it grows, how long the page's worker
 * works at a stretch, and what general solvers take for a part of the same; as ratios measured in one run, beside the goals.
 * `npm run --silent bench:menu > docs/bench.md` keeps the report.
 */
import { cpus, loadavg } from 'node:os';
import { analyse } from '../../src/engine/index.ts';
import { createMenuJudge } from '../../src/menu/index.ts';
import { grown, judgeAll, pairCases, setupOf, some } from './cases.ts';
import { benchEdits, benchGrowth } from './edits.ts';
import { byTurns, cpuMs, table, told } from './measure.ts';
import { benchMend } from './mend.ts';
import { benchSlices } from './slices.ts';
import { benchSolvers } from './solverTimes.ts';

/** A goal, what was measured, and whether it is reached. */
export type GoalRow = readonly [goal: string, measured: string, reached: boolean];

const FRAME_MS = 1000 / 60;
const SAMPLE = 300;
/** Looks of which all pairs are judged, as in the whole grid: what cases share hangs on the look. */
const LOOKS = [0, 8, 16];

const rows: GoalRow[] = [];
const playbook = grown(40, 24);

// One check: alone, on copies of which nothing is known; and within a menu, what its cases share being worked out once.
const judge = createMenuJudge();
const opened = judge.open(playbook);
const all = pairCases(opened);
const byLook = LOOKS.map((at) => all.filter(({ look }) => look === opened.looks[at]));
const cases = byLook.flat();
const setups = some(cases, SAMPLE).map((each) => setupOf(opened, each));
const copies = (): typeof setups => setups.map((setup) => structuredClone(setup));
const per = (work: () => void, count: number): number => cpuMs(work) / count;
// Once to warm up.
copies().forEach((setup) => analyse(setup));
const one = byTurns(LOOKS.length, {
  copy: () => per(() => copies(), SAMPLE),
  alone: () => {
    const fresh = copies();
    return per(() => fresh.forEach((setup) => analyse(setup)), SAMPLE);
  },
  menu: (round) => {
    const part = byLook[round] ?? [];
    return per(() => judgeAll(judge, part), part.length);
  },
});
const { copy = Number.NaN, alone = Number.NaN, menu = Number.NaN } = one;
rows.push(
  ['a case in a menu: 15 times cheaper than alone', `${told(alone / menu)} times`, alone / menu >= 15],
  ['1,000,000 verdicts a second', told(1000 / menu), 1000 / menu >= 1_000_000],
);

const edits = benchEdits(playbook);
const growth = benchGrowth();
const slices = await benchSlices(playbook);
const solvers = benchSolvers(setups, menu);
const mend = benchMend(playbook);
for (const part of [edits, growth, slices, solvers, mend]) rows.push(...part.goals);

const [cpu] = cpus();
console.log(`# What checking costs

Written by \`npm run --silent bench:menu > docs/bench.md\`: one run, CPU time of the process, medians. On ${cpu?.model ?? 'an unknown processor'}, ${cpus().length} cores, Node ${process.versions.node}; at a load of ${told(loadavg()[0] ?? NaN)} when it ended: compare ratios, not milliseconds.

The playbook is the demo grown to 40 pressures and 24 looks at 3 ball spots (\`scripts/demo/grow\`). A case is one call against one
look at one spot, all checks made.

## One case

${table(
  ['', 'ms', 'x copying its setup', '% of a frame'],
  (
    [
      ['baseline: copy the setup', copy],
      ['the whole analysis, words and all, nothing known', alone],
      ['its verdict within a menu', menu],
    ] as const
  ).map(([name, ms]) => [name, told(ms), told(ms / copy), told((ms / FRAME_MS) * 100)]),
)}

Within a menu a case is ${told(alone / menu)} times cheaper: ${told(1000 / menu)} verdicts a second.

${[edits, growth, slices, solvers, mend].map(({ text }) => text).join('\n\n')}

## Goals

${table(
  ['goal', 'measured', 'reached'],
  rows.map(([goal, measured, reached]) => [goal, measured, reached ? 'yes' : 'no']),
)}`);
