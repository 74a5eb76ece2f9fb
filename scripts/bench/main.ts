/**
 * `npm run bench`: how dear one full check is, as CPU time and as ratios to baselines measured in the same run. Wall time
 * on a shared machine says little; ratios within one process are what to compare.
 */
import { readFileSync } from 'node:fs';
import { openDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import { analyse, PLACES, type Setup } from '../../src/engine/index.ts';

const ROUNDS = 5;
const FRAME_MS = 1000 / 60;

interface Measured {
  readonly name: string;
  /** CPU milliseconds for one unit of work: median over the rounds. */
  readonly ms: number;
}

function demo(): Playbook {
  const opened = openDocument(readFileSync(new URL('../../demo-data/playbook.json', import.meta.url), 'utf8'));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problem));
  return opened.value;
}

function setups(playbook: Playbook): readonly Setup[] {
  return playbook.calls.flatMap((call) =>
    playbook.looks.flatMap((look) =>
      PLACES.flatMap((spot) => {
        const setup = toSetup(playbook, { call, look: look.id, spot });
        return setup.ok ? [setup.value] : [];
      }),
    ),
  );
}

function cpuMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const used = process.cpuUsage(before);
  return (used.user + used.system) / 1000;
}

/** Runs the works by turns, so that whatever the machine is doing meets all of them alike. */
function measure(
  units: number,
  works: readonly { readonly name: string; readonly run: () => void }[],
): readonly Measured[] {
  const times = works.map(() => [] as number[]);
  for (const { run } of works) run();
  for (let round = 0; round < ROUNDS; round += 1) {
    works.forEach(({ run }, index) => times[index]?.push(cpuMs(run) / units));
  }
  return works.map(({ name }, index) => {
    const sorted = (times[index] ?? []).toSorted((a, b) => a - b);
    return { name, ms: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN };
  });
}

const playbook = demo();
const all = setups(playbook);
const [baseline, ...rest] = measure(all.length, [
  { name: 'baseline: copy the setup (structuredClone)', run: () => all.forEach((setup) => structuredClone(setup)) },
  { name: 'one full check of one call in one look', run: () => all.forEach((setup) => analyse(setup)) },
]);

console.log(
  `${String(all.length)} checks (calls x looks x ball spots of the demo playbook), ${String(ROUNDS)} rounds, CPU time`,
);
for (const each of [baseline, ...rest]) {
  if (each === undefined || baseline === undefined) continue;
  const ratio = each.ms / baseline.ms;
  const frame = (each.ms / FRAME_MS) * 100;
  console.log(
    `${each.name}: ${each.ms.toFixed(3)} ms, ${ratio.toFixed(2)} x baseline, ${frame.toFixed(1)} % of a frame`,
  );
}
