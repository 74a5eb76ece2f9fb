/**
 * `npm run bench`: how dear one full check is, and what of a menu is worked out again after an edit, as CPU time and as ratios
 * to baselines measured in the same run. Wall time on a shared machine says little; ratios within one process are what to
 * compare.
 */
import { readFileSync } from 'node:fs';
import { openDocument, toSetup, type Playbook } from '../../src/document/index.ts';
import { analyse, PLACES, type Setup } from '../../src/engine/index.ts';
import { createMenuJudge, gridOf, sizeOfGrid, type MenuJudge } from '../../src/menu/index.ts';

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

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
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
  return works.map(({ name }, index) => ({ name, ms: median(times[index] ?? []) }));
}

/** All calls of a copy of the playbook, as the worker gets it; how many cases had to be worked out. */
function judgeAll(judge: MenuJudge, playbook: Playbook): number {
  const before = judge.worked();
  const grid = gridOf(judge.open(structuredClone(playbook)), { kind: 'calls' });
  for (let index = 0; index < sizeOfGrid(grid); index += 1) {
    const menuCase = grid.caseAt(index);
    if (menuCase !== null) judge.judge(menuCase);
  }
  judge.settle();
  return judge.worked() - before;
}

/** The playbook with one man of one look a quarter yard from where he stood, another man each time. */
function dragged(playbook: Playbook, round: number): Playbook {
  const looks = playbook.looks.map((look, at) =>
    at !== 0
      ? look
      : {
          ...look,
          players: look.players.map((man, index) => (index === 7 ? { ...man, x: man.x + 0.25 * (round + 1) } : man)),
        },
  );
  return { ...playbook, looks };
}

/** The playbook with one pressure told differently, another way each time. */
function retold(playbook: Playbook, round: number): Playbook {
  const pressures = playbook.pressures.map((each, at) =>
    at === 0 ? { ...each, rushers: 4 + (round % 2), name: `${each.name} ${String(round)}` } : each,
  );
  return { ...playbook, pressures };
}

function benchCheck(all: readonly Setup[]): void {
  const [baseline, ...rest] = measure(all.length, [
    { name: 'baseline: copy the setup (structuredClone)', run: () => all.forEach((setup) => structuredClone(setup)) },
    { name: 'one full check of one call in one look', run: () => all.forEach((setup) => analyse(setup)) },
  ]);
  if (baseline === undefined) throw new Error('Nothing was measured');
  console.log(
    `${String(all.length)} checks (calls x looks x ball spots of the demo playbook), ${String(ROUNDS)} rounds, CPU time`,
  );
  for (const { name, ms } of [baseline, ...rest]) {
    const frame = (ms / FRAME_MS) * 100;
    console.log(
      `${name}: ${ms.toFixed(3)} ms, ${(ms / baseline.ms).toFixed(2)} x baseline, ${frame.toFixed(1)} % of a frame`,
    );
  }
}

function benchMenu(playbook: Playbook): void {
  const judge = createMenuJudge();
  let worked = 0;
  const whole = cpuMs(() => (worked = judgeAll(judge, playbook)));
  console.log(`\nbaseline: the menu from nothing: ${String(worked)} cases, ${whole.toFixed(0)} ms`);
  const edits: readonly (readonly [string, (round: number) => Playbook])[] = [
    ['nothing changed', () => playbook],
    ['one man dragged in one look', (round) => dragged(playbook, round)],
    ['one pressure edited', (round) => retold(playbook, round)],
  ];
  for (const [name, edit] of edits) {
    const times = Array.from({ length: ROUNDS }, (_, round) => {
      const edited = edit(round);
      return cpuMs(() => (worked = judgeAll(judge, edited)));
    });
    const ms = median(times);
    console.log(`${name}: ${String(worked)} cases, ${ms.toFixed(1)} ms, 1/${(whole / ms).toFixed(0)} of the whole`);
  }
}

const playbook = demo();
benchCheck(setups(playbook));
benchMenu(playbook);
