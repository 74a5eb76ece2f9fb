import type { ReactElement } from 'react';
import type { Why } from '../../report/index.ts';

/** Reasons as an open list, the conclusion first and what it follows from below it. */
export function WhyTree({ reasons }: { readonly reasons: readonly Why[] }): ReactElement | null {
  if (reasons.length === 0) return null;
  return (
    <ul className="why-tree">
      {reasons.map((reason, index) => (
        // Reasons have no id; their order is fixed by the engine.
        <li key={index}>
          {reason.text}
          <WhyTree reasons={reason.because} />
        </li>
      ))}
    </ul>
  );
}

interface FoldProps {
  /** What is explained, for those who hear the button out of its place. */
  readonly of: string;
  /** Why a player should care, said before the reasons. */
  readonly matters?: string;
  readonly reasons: readonly Why[];
}

/** "Why" that opens the reasons. */
export function WhyFold({ of, matters, reasons }: FoldProps): ReactElement | null {
  if (reasons.length === 0 && matters === undefined) return null;
  return (
    <details className="why">
      <summary>
        Why<span className="unseen"> {of}</span>
      </summary>
      {matters !== undefined && <p className="matters">{matters}</p>}
      <WhyTree reasons={reasons} />
    </details>
  );
}
