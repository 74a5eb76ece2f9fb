import type { ReactElement } from 'react';
import type { Playbook } from '../../document/index.ts';
import type { Question } from '../../quiz/index.ts';
import { ASKED_WORDS } from './words.ts';

/** A question and whether it was answered right. */
export interface Answered {
  readonly question: Question;
  readonly right: boolean;
}

interface Props {
  readonly playbook: Playbook;
  readonly answers: readonly Answered[];
  readonly kept: boolean;
  readonly onAgain: () => void;
}

/** What was asked is gone from the page: those who do not see it hear the result instead. */
function focused(heading: HTMLHeadingElement | null): void {
  heading?.focus();
}

/** How it went, and what to look at again. */
export function QuizResults({ playbook, answers, kept, onAgain }: Props): ReactElement {
  const missed = answers.filter(({ right }) => !right);
  return (
    <div className="quiz-plan">
      <h2 tabIndex={-1} ref={focused}>
        {answers.length === 0
          ? 'Nothing to ask: in these looks something stops each of these calls, or nobody of this room has a job in them.'
          : `${answers.length - missed.length} of ${answers.length} right`}
      </h2>
      {missed.length > 0 && (
        <>
          <h3>To look at again</h3>
          <ul className="use-list">
            {missed.map(({ question }) => (
              <li key={`${question.call} ${question.look}`}>{missedText(playbook, question)}</li>
            ))}
          </ul>
        </>
      )}
      {answers.length > 0 && (
        <p className="hint">
          {kept ? 'Kept on this device, without a name.' : 'This browser keeps nothing, so the result is not kept.'}
        </p>
      )}
      <div className="button-row">
        <button type="button" className="is-main" onClick={onAgain}>
          Another quiz
        </button>
      </div>
    </div>
  );
}

function missedText(playbook: Playbook, { call, look, role, asked }: Question): string {
  const letter = playbook.roles.find(({ id }) => id === role)?.letter ?? '';
  const callName = playbook.calls.find(({ id }) => id === call)?.name ?? '';
  const lookName = playbook.looks.find(({ id }) => id === look)?.name ?? '';
  return `${letter} against ${ASKED_WORDS[asked]}: ${callName} in ${lookName}`;
}
