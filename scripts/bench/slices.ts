/** How long the menu's worker works at a stretch, and how soon it hears that it is to stop; by the clock, as the page feels it. */
import { answerInSlices, SLICE_MS } from '../../src/app/menu/answering.ts';
import type { Playbook } from '../../src/document/index.ts';
import { createMenuJudge, gridOf } from '../../src/menu/index.ts';
import type { Part } from './edits.ts';
import { quantile, table, told } from './measure.ts';

const SECONDS = 3;

/** Answers the grid of all pairs out of the first front from nothing for a few seconds, then stops it at a random moment. */
export async function benchSlices(playbook: Playbook): Promise<Part> {
  const judge = createMenuJudge();
  const opened = judge.open(playbook);
  const [front] = opened.fronts;
  if (front === undefined) throw new Error('A playbook without a front');
  const lengths: number[] = [];
  const begun = performance.now();
  let [from, stopAt] = [begun, Infinity];
  const { done } = answerInSlices({
    grid: gridOf(opened, { kind: 'pairs', front: front.id, turn: 'own' }),
    isMine: () => true,
    judge: judge.judge,
    now: () => performance.now(),
    letNewerIn: async () => {
      lengths.push(performance.now() - from);
      await new Promise((resolve) => setImmediate(resolve));
      from = performance.now();
    },
    isWanted: () => {
      // It is told to stop in the middle of the last slice, and hears of it now.
      if (performance.now() - begun > SECONDS * 1000) stopAt = Math.min(stopAt, from - SLICE_MS / 2);
      return stopAt === Infinity;
    },
    tell: () => undefined,
  });
  await done;
  const stopped = stopAt === Infinity ? Number.NaN : performance.now() - stopAt;
  const warm = lengths.slice(Math.floor(lengths.length / 10));
  const over = warm.filter((ms) => ms > SLICE_MS).length / warm.length;
  return {
    text: `## Slices of the worker

${table(
  ['', 'ms by the clock'],
  [
    ['median slice', told(quantile(warm, 0.5))],
    ['95 of 100 are shorter than', told(quantile(warm, 0.95))],
    ['longest', told(Math.max(...warm))],
    ['from "stop" to having stopped', told(stopped)],
  ],
)}

${told(over * 100)} of 100 slices were longer than ${SLICE_MS} ms by the clock. The first tenth, while the program warms up, is left out.`,
    goals: [
      [
        'no slice over 8 ms',
        `95 of 100 under ${told(quantile(warm, 0.95))} ms, longest ${told(Math.max(...warm))}`,
        over === 0,
      ],
      ['cancel answered within 100 ms', `${told(stopped)} ms`, stopped <= 100],
    ],
  };
}
