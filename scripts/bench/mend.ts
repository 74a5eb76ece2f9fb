/** What the search for the smallest mend of a call costs over all looks and spots. */
import type { Playbook } from '../../src/document/index.ts';
import { analyse, mend, mendingEdits, PLACES } from '../../src/engine/index.ts';
import { setupOf, some } from './cases.ts';
import type { Part } from './edits.ts';
import { cpuMs, quantile, table, told } from './measure.ts';

const CALLS = 5;
const BUDGET = { analyses: 600, edits: 2, sets: 1 } as const;

/** Kept calls of two pressures, each in every look at every spot. */
export function benchMend(playbook: Playbook): Part {
  const pairs = playbook.calls.filter(({ second, combination }) => second !== null && combination.kind === 'together');
  const outcomes = new Map<string, number>();
  const runs = some(pairs, CALLS).map((call) => {
    const setups = playbook.looks.flatMap((look) => PLACES.map((spot) => setupOf(playbook, { call, look, spot })));
    const edits = mendingEdits(
      setups.map((setup) => analyse(setup)),
      { coverages: playbook.coverages },
    );
    let analyses = 0;
    const ms = cpuMs(() => {
      const mending = mend(setups, edits, BUDGET);
      analyses = mending.analyses;
      outcomes.set(mending.kind, (outcomes.get(mending.kind) ?? 0) + 1);
    });
    return { ms, analyses };
  });
  const times = runs.map(({ ms }) => ms);
  return {
    text: `## Mending a call

The smallest set of up to ${BUDGET.edits} edits over ${String(playbook.looks.length * 3)} looks and spots, ${BUDGET.analyses} analyses at most, ${CALLS} calls.

${table(
  ['', ''],
  [
    [
      'median',
      `${told(quantile(times, 0.5))} ms, ${told(
        quantile(
          runs.map(({ analyses }) => analyses),
          0.5,
        ),
      )} analyses`,
    ],
    ['95 of 100', `${told(quantile(times, 0.95))} ms`],
    ['outcomes', [...outcomes].map(([kind, count]) => `${kind} ${count}`).join(', ')],
  ],
)}`,
    goals: [['a call mended, p95 under 50 ms', `${told(quantile(times, 0.95))} ms`, quantile(times, 0.95) < 50]],
  };
}
