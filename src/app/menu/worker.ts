import { createMenuJudge, gridOf } from '../../menu/index.ts';
import { letNewerIn } from '../parts/letNewerIn.ts';
import { answerInSlices, type Answers } from './answering.ts';
import type { Asked, Told } from './messages.ts';

const judge = createMenuJudge();
let newest = 0;
let current: Answers | null = null;
/** How many summaries have been told. */
let told = 0;

self.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  if (data.kind === 'sight') {
    if (data.number === newest) current?.prefer(data.rows, data.columns);
    return;
  }
  newest = data.number;
  if (data.kind === 'cancel') return;
  void answer(data).catch((error: unknown) => {
    tell({ kind: 'failed', number: data.number, reason: error instanceof Error ? error.message : String(error) });
  });
});

async function answer({ number, playbook, grid: kind }: Extract<Asked, { kind: 'grid' }>): Promise<void> {
  const before = judge.worked();
  current = answerInSlices({
    grid: gridOf(judge.open(playbook), kind),
    judge: judge.judge,
    now: () => performance.now(),
    letNewerIn,
    isWanted: () => newest === number,
    tell: (at, answers) => {
      const summaries = judge.summaries.slice(told);
      told = judge.summaries.length;
      tell({ kind: 'answers', number, at, answers, summaries });
    },
  });
  if (!(await current.done)) return;
  judge.settle();
  tell({ kind: 'done', number, worked: judge.worked() - before });
}

function tell(message: Told): void {
  self.postMessage(message);
}
