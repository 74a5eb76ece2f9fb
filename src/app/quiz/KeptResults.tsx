import { useState, type ReactElement } from 'react';
import { forgetResults, keptResults } from './results.ts';

/** How earlier quizzes on this device went. Nothing of it leaves the device, and it can be forgotten. */
export function KeptResults(): ReactElement | null {
  const [results, setResults] = useState(keptResults);
  if (results.length === 0) return null;
  return (
    <section aria-labelledby="quiz-kept">
      <h3 id="quiz-kept">Earlier on this device</h3>
      <ul className="quiz-kept">
        {results.slice(0, 10).map(({ on, room, right, of }, index) => (
          // Results have no id; their order only changes when all of them do.
          <li key={index}>
            {on}, {room}: {right} of {of}
          </li>
        ))}
      </ul>
      <button
        type="button"
        className="link-button"
        onClick={() => {
          forgetResults();
          setResults(keptResults());
        }}
      >
        Forget all results
      </button>
    </section>
  );
}
