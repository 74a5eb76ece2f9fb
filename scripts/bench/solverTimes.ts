/** What two general solvers take for a part of a check: sharing out gaps, zones and receivers, and who is told two things. */
import { matchSeekers } from '../../src/engine/complete/matchGaps.ts';
import { analyse, type Setup } from '../../src/engine/index.ts';
import type { Part } from './edits.ts';
import { byTurns, cpuMs, table, told } from './measure.ts';
import { canDoAll, mostShared } from './solvers/milp.ts';
import { questionsOf, type Sharing } from './solvers/questions.ts';
import { createSat } from './solvers/sat.ts';

/** `menu` is what a case costs in a menu, all checks made. */
export function benchSolvers(setups: readonly Setup[], menu: number): Part {
  const asked = setups
    .map((setup) => analyse(setup))
    .filter(({ first }) => first.side.kind === 'decided')
    .map(questionsOf);
  const sat = createSat();
  const per = (work: () => void): number => cpuMs(work) / asked.length;
  const times = byTurns(3, {
    milp: () =>
      per(() => {
        for (const { gaps, zones, receivers, men } of asked) {
          for (const each of [gaps, zones, receivers]) mostShared(each);
          men.forEach(canDoAll);
        }
      }),
    // The engine's own step for the first three of the questions, costs and proofs with it.
    engine: () =>
      per(() => {
        for (const { gaps, zones, receivers } of asked) for (const each of [gaps, zones, receivers]) matchAll(each);
      }),
    sat: () =>
      per(() => {
        for (const { gaps, zones, receivers, men } of asked) {
          for (const each of [gaps, zones, receivers]) sat.allShared(each);
          men.forEach(sat.canDoAll);
        }
      }),
  });
  const { milp = NaN, sat: bySat = NaN, engine = NaN } = times;
  const best = Math.min(milp, bySat);
  return {
    text: `## General solvers

They answer four questions of a check: can all gaps, zones and receivers be taken care of, and who is told two things that
cannot both be done. The engine's own matching answers the first three, with who takes what and the proof of what falls short.
\`tests/engine/solvers\` holds the answers equal on 2,000 checks.

${table(
  ['', 'ms a check', "x the engine's matching"],
  [
    ['yalps 0.6.4, mixed integer linear program', told(milp), told(milp / engine)],
    ['logic-solver 2.0.1, boolean formulas', told(bySat), told(bySat / engine)],
    ["the engine's matching", told(engine), '1'],
    ['the engine in a menu, all its checks', told(menu), told(menu / engine)],
  ],
)}`,
    goals: [
      [
        '300 times as fast as the best general solver',
        `like for like ${told(best / engine)} times; all checks against its four questions ${told(best / menu)} times`,
        best / menu >= 300,
      ],
    ],
  };
}

function matchAll({ items, men }: Sharing): void {
  const seekers = men.flatMap(({ may, most }) =>
    Array.from({ length: most }, () => ({ name: 'he', costs: new Map(may.map((item) => [item, 0] as const)) })),
  );
  matchSeekers(items, seekers);
}
