import { createMenuJudge, gridOf } from '../../menu/index.ts';
import { answerInSlices, type Answering, type Answers } from './answering.ts';
import type { ShareAsked, Told } from './messages.ts';

/** What a worker does with what it is asked: one question at a time, a newer one puts an end to the one before. */
export function createAnswerer(
  { now, letNewerIn }: Pick<Answering, 'now' | 'letNewerIn'>,
  tell: (message: Told) => void,
): (asked: ShareAsked) => void {
  const judge = createMenuJudge();
  /** The question that is wanted; null when it was cancelled. */
  let newest: number | null = null;
  let current: Answers | null = null;
  /** How many summaries have been told. */
  let told = 0;

  const answer = async (asked: Extract<ShareAsked, { kind: 'grid' }>): Promise<void> => {
    const { number } = asked;
    const looks = new Set(asked.looks);
    const before = judge.worked();
    current = answerInSlices({
      grid: gridOf(judge.open(asked.playbook), asked.grid),
      isMine: ({ look }) => looks.has(look.id),
      judge: judge.judge,
      now,
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
  };

  return (asked) => {
    if (asked.kind === 'sight') {
      if (asked.number === newest) current?.prefer(asked.rows, asked.columns);
      return;
    }
    newest = asked.kind === 'cancel' ? null : asked.number;
    if (asked.kind === 'cancel') return;
    void answer(asked).catch((error: unknown) => {
      tell({ kind: 'failed', number: asked.number, reason: error instanceof Error ? error.message : String(error) });
    });
  };
}
