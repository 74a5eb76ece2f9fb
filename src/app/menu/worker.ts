import { createMenuJudge, gridOf, NO_CASE, sizeOfGrid } from '../../menu/index.ts';
import { letNewerIn } from '../parts/letNewerIn.ts';
import type { Asked, Told } from './messages.ts';

/** How long it works before it tells what it has and looks whether something newer was asked, in milliseconds. */
const SLICE = 40;

const judge = createMenuJudge();
let newest = 0;
/** How many summaries have been told. */
let told = 0;

self.addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  newest = data.number;
  if (data.kind === 'cancel') return;
  void answer(data).catch((error: unknown) => {
    tell({ kind: 'failed', number: data.number, reason: error instanceof Error ? error.message : String(error) });
  });
});

async function answer({ number, playbook, grid: kind }: Extract<Asked, { kind: 'grid' }>): Promise<void> {
  const grid = gridOf(judge.open(playbook), kind);
  const size = sizeOfGrid(grid);
  const before = judge.worked();
  for (let from = 0; from < size;) {
    const until = performance.now() + SLICE;
    const answers: number[] = [];
    while (from + answers.length < size && performance.now() < until) {
      const menuCase = grid.caseAt(from + answers.length);
      answers.push(menuCase === null ? NO_CASE : judge.judge(menuCase));
    }
    const summaries = judge.summaries.slice(told);
    told = judge.summaries.length;
    tell({ kind: 'answers', number, from, answers: Int32Array.from(answers), summaries });
    from += answers.length;
    await letNewerIn();
    if (newest !== number) return;
  }
  judge.settle();
  tell({ kind: 'done', number, worked: judge.worked() - before });
}

function tell(message: Told): void {
  self.postMessage(message);
}
