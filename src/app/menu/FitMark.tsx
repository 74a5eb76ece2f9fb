import type { ReactElement } from 'react';
import { VerdictMark } from '../parts/VerdictMark.tsx';

interface Props {
  /** In how many looks a pair is run at all, and in how many of them nothing stops it. */
  readonly looks: number;
  readonly fits: number;
}

/** In how many looks a pair fits, in words. */
export function fitWords({ looks, fits }: Props): string {
  if (looks === 0) return 'run in no look';
  const of = looks === 1 ? 'the 1 look' : `${String(looks)} looks`;
  if (fits === looks) return looks === 1 ? `fits ${of}` : `fits all ${of}`;
  return fits === 0 ? `fits none of ${of}` : `fits ${String(fits)} of ${of}`;
}

/**
 * How much of the looks a pair fits, as a shape: a square with a tick for all of them, a square filled as far as it fits, an
 * octagon for none. Its words always stand beside it.
 */
export function FitMark({ looks, fits }: Props): ReactElement {
  if (looks === 0) return <VerdictMark verdict="left-out" />;
  if (fits === looks) return <VerdictMark verdict="clean" />;
  if (fits === 0) return <VerdictMark verdict="stop" />;
  // Seen to be neither empty nor full, however little is in it or missing.
  const height = Math.min(Math.max((15 * fits) / looks, 2.5), 12.5);
  return (
    <svg className="mark mark-part" width={18} height={18} viewBox="0 0 20 20" aria-hidden="true" focusable="false">
      <rect className="mark-frame" x="2" y="2" width="16" height="16" rx="2" />
      <rect className="mark-body" x="2.5" y={17.5 - height} width="15" height={height} />
    </svg>
  );
}
