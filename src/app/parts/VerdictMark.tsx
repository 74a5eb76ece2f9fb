import type { ReactElement } from 'react';
import type { Verdict } from '../../engine/index.ts';

/** The word that always stands beside a mark. */
export const VERDICT_NAMES: Readonly<Record<Verdict, string>> = {
  stop: 'Stop',
  check: 'Check',
  note: 'Note',
  clean: 'Clean',
  'left-out': 'Not run',
};

/**
 * A verdict as a shape: octagon, triangle, circle, square with a tick, broken square. The shape tells; the colour only
 * helps. It is decoration for a screen reader, since its word always stands beside it.
 */
export function VerdictMark({
  verdict,
  size = 18,
}: {
  readonly verdict: Verdict;
  readonly size?: number;
}): ReactElement {
  return (
    <svg
      className={`mark mark-${verdict}`}
      width={size}
      height={size}
      viewBox="0 0 20 20"
      aria-hidden="true"
      focusable="false"
    >
      {SHAPES[verdict]}
    </svg>
  );
}

const SHAPES: Readonly<Record<Verdict, ReactElement>> = {
  stop: (
    <>
      <path className="mark-body" d="M6.2 1h7.6L19 6.2v7.6L13.8 19H6.2L1 13.8V6.2z" />
      <path className="mark-sign" d="M10 5v6" />
      <circle className="mark-dot" cx="10" cy="14.6" r="1.3" />
    </>
  ),
  check: (
    <>
      <path className="mark-body" d="M10 1.4 19.2 18H.8z" />
      <path className="mark-sign" d="M10 7.4v4.8" />
      <circle className="mark-dot" cx="10" cy="15.1" r="1.2" />
    </>
  ),
  note: (
    <>
      <circle className="mark-body" cx="10" cy="10" r="9" />
      <circle className="mark-dot" cx="10" cy="5.8" r="1.3" />
      <path className="mark-sign" d="M10 9v6" />
    </>
  ),
  clean: (
    <>
      <rect className="mark-body" x="1.5" y="1.5" width="17" height="17" rx="2" />
      <path className="mark-sign" d="m5.5 10.4 3.2 3.2 6-7" />
    </>
  ),
  'left-out': (
    <>
      <rect className="mark-open" x="2" y="2" width="16" height="16" rx="2" />
      <path className="mark-slash" d="M5 15 15 5" />
    </>
  ),
};
