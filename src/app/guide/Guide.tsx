import { useEffect, useState, type ReactElement } from 'react';
import { useSettledState } from '../session/session.ts';
import { GUIDE_STEPS, type Seen } from './steps.ts';

interface Props extends Pick<Seen, 'screen' | 'printing'> {
  readonly onBoard: () => void;
  /** It is over, or not wanted: it does not come again by itself. */
  readonly onEnd: () => void;
}

/**
 * The first minutes: one thing to try after the other, each ticked off by itself when it was done. It stands above the board
 * and covers nothing.
 */
export function Guide({ screen, printing, onBoard, onEnd }: Props): ReactElement {
  const state = useSettledState();
  const now: Seen = { state, screen, printing };
  const [at, setAt] = useState(0);
  const [began, setBegan] = useState(now);
  const step = GUIDE_STEPS[at];
  // Once done it stays done: the print dialog closes again, a move may be undone.
  const [done, setDone] = useState(false);
  if (!done && step?.isDone(began, now) === true) setDone(true);
  const next = (): void => {
    setAt(at + 1);
    setBegan(now);
    setDone(false);
  };
  const last = at === GUIDE_STEPS.length - 1;
  useEffect(() => {
    if (step === undefined) onEnd();
  }, [step, onEnd]);
  return (
    <aside className="guide" aria-label="First steps">
      {step !== undefined && (
        <>
          <p role="status" className="guide-text">
            <strong>
              {at + 1} of {GUIDE_STEPS.length}: {step.title}.
            </strong>{' '}
            {done ? 'Done. ' : step.text}
          </p>
          {screen !== 'board' && (
            <button type="button" onClick={onBoard}>
              To the board
            </button>
          )}
          <button type="button" className={done ? 'is-main' : undefined} onClick={next}>
            {last ? 'Finish' : 'Next step'}
          </button>
          <button type="button" className="link-button" onClick={onEnd}>
            Skip these steps
          </button>
        </>
      )}
    </aside>
  );
}
