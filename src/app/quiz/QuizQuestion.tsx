import { useEffect, useMemo, useRef, useState, type ReactElement } from 'react';
import { toSetup, type Playbook } from '../../document/index.ts';
import { analyse, type Analysis } from '../../engine/index.ts';
import { choices, isRight, rightAnswers, type Question, type Spotted } from '../../quiz/index.ts';
import { buildReport, makeLexicon, type Lexicon } from '../../report/index.ts';
import { capital } from '../parts/capital.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { WhyTree } from '../parts/Why.tsx';
import { BALL_WORDS } from '../session/words.ts';
import { QuizField } from './QuizField.tsx';
import { ASKED_SENTENCES, spottedText } from './words.ts';

interface Props {
  readonly playbook: Playbook;
  readonly question: Question;
  readonly number: number;
  readonly of: number;
  /** The next one; whether this one was answered right. */
  readonly onNext: (right: boolean) => void;
  readonly onStop: () => void;
}

/** One question: the field without jobs, what can be pointed at as buttons too, and after the answer what is right and why. */
export function QuizQuestion({ playbook, question, number, of, onNext, onStop }: Props): ReactElement {
  const analysis = useMemo(() => analysed(playbook, question), [playbook, question]);
  const lexicon = useMemo(() => makeLexicon(analysis.setup, playbook.words), [analysis, playbook.words]);
  const [given, setGiven] = useState<Spotted | null>(null);
  const { setup } = analysis;
  const offered = useMemo(() => choices(analysis, question.asked), [analysis, question.asked]);
  const right = rightAnswers(analysis, question.role, question.asked);
  const isGood = given !== null && isRight(right, given);
  return (
    <div className="quiz-question">
      <QuizField
        analysis={analysis}
        role={question.role}
        asked={question.asked}
        offered={offered}
        answered={given !== null}
        nameOf={(spotted) => spottedText(spotted, lexicon)}
        onPoint={setGiven}
      />
      <section className="quiz-side" aria-labelledby="quiz-title">
        <p className="hint">
          Question {number} of {of}
        </p>
        <h2 id="quiz-title">
          You are {lexicon.letter(question.role)}, the {lexicon.roleName(question.role).toLowerCase()}
        </h2>
        <p>
          <strong>{playbook.calls.find(({ id }) => id === question.call)?.name}</strong> against {setup.look.name},{' '}
          {BALL_WORDS[setup.spot]}.
        </p>
        {given === null ? (
          <>
            <p>{ASKED_SENTENCES[question.asked]}</p>
            <div className="quiz-choices" role="group" aria-label="Or pick it here">
              {offered.map((spotted, index) => (
                // The choices of one question stay as they are.
                <button key={index} type="button" onClick={() => setGiven(spotted)}>
                  {capital(spottedText(spotted, lexicon).replace(/^the /, ''))}
                </button>
              ))}
            </div>
            <button type="button" className="link-button" onClick={onStop}>
              Stop here
            </button>
          </>
        ) : (
          <Marked
            good={isGood}
            given={given}
            right={right}
            analysis={analysis}
            question={question}
            lexicon={lexicon}
            words={playbook.words}
            last={number === of}
            onNext={() => onNext(isGood)}
          />
        )}
      </section>
    </div>
  );
}

interface MarkedProps {
  readonly good: boolean;
  readonly given: Spotted;
  readonly right: readonly Spotted[];
  readonly analysis: Analysis;
  readonly question: Question;
  readonly lexicon: Lexicon;
  readonly words: Playbook['words'];
  readonly last: boolean;
  readonly onNext: () => void;
}

function Marked(props: MarkedProps): ReactElement {
  const { good, given, right, analysis, question, lexicon, words, last, onNext } = props;
  const next = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    next.current?.focus();
  }, []);
  const row = useMemo(
    () => buildReport(analysis, words).jobs.find(({ role }) => role === question.role),
    [analysis, words, question.role],
  );
  return (
    <>
      <p role="status" className="quiz-mark">
        <VerdictMark verdict={good ? 'clean' : 'stop'} />{' '}
        {good ? 'Right: ' : `No, not ${spottedText(given, lexicon)}: `}
        {right.map((each) => spottedText(each, lexicon)).join(' or ')}
      </p>
      {row !== undefined && (
        <>
          <p>{row.job}</p>
          <WhyTree reasons={row.why.because} />
        </>
      )}
      <div className="button-row">
        <button ref={next} type="button" className="is-main" onClick={onNext}>
          {last ? 'See the result' : 'Next question'}
        </button>
      </div>
    </>
  );
}

/** The case of a question; a quiz only asks what can be set up. */
function analysed(playbook: Playbook, { call: id, look, spot }: Question): Analysis {
  const call = playbook.calls.find((each) => each.id === id);
  const setup = call === undefined ? null : toSetup(playbook, { call, look, spot });
  if (setup?.ok !== true) throw new Error('A question about a call that cannot be set up');
  return analyse(setup.value);
}
