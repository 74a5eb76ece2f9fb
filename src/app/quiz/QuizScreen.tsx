import { useState, type ReactElement } from 'react';
import { makeQuiz, type Question, type QuizPlan } from '../../quiz/index.ts';
import { ROOM_WORDS } from '../../report/index.ts';
import { dateText } from '../session/clock.ts';
import { useApp, useSession } from '../session/session.ts';
import { QuizPlanner } from './QuizPlanner.tsx';
import { QuizQuestion } from './QuizQuestion.tsx';
import { QuizResults, type Answered } from './QuizResults.tsx';
import { keepResult } from './results.ts';

interface Running {
  readonly plan: QuizPlan;
  readonly questions: readonly Question[];
  readonly answers: readonly Answered[];
  /** Whether the result is kept on this device; null: the quiz is not over. */
  readonly kept: boolean | null;
}

/** The coach picks a room and calls; a player points to his job; the engine marks it and says why. */
export function QuizScreen(): ReactElement {
  const { now } = useSession();
  const playbook = useApp((state) => state.playbook);
  const [running, setRunning] = useState<Running | null>(null);
  if (running === null) {
    return (
      <main className="quiz-screen">
        <QuizPlanner
          playbook={playbook}
          onBegin={(choice) => {
            const plan = { ...choice, seed: now().getTime() };
            setRunning({ plan, questions: makeQuiz(playbook, plan), answers: [], kept: null });
          }}
        />
      </main>
    );
  }

  const { plan, questions, answers } = running;
  const question = questions[answers.length];
  const end = (all: readonly Answered[]): void => {
    const right = all.filter((each) => each.right).length;
    const kept =
      all.length > 0 && keepResult({ on: dateText(now()), room: ROOM_WORDS[plan.room], right, of: all.length });
    setRunning({ ...running, answers: all, kept });
  };
  return (
    <main className="quiz-screen">
      {running.kept === null && question !== undefined ? (
        <QuizQuestion
          key={answers.length}
          playbook={playbook}
          question={question}
          number={answers.length + 1}
          of={questions.length}
          onNext={(right) => {
            const all = [...answers, { question, right }];
            if (all.length === questions.length) end(all);
            else setRunning({ ...running, answers: all });
          }}
          onStop={() => end(answers)}
        />
      ) : (
        <QuizResults
          playbook={playbook}
          answers={answers}
          kept={running.kept === true}
          onAgain={() => setRunning(null)}
        />
      )}
    </main>
  );
}
