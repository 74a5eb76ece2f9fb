import type { ReactElement } from 'react';
import type { GapRow as Row } from '../../report/index.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';

/** Who has each run gap, in the order of the picture. An open one says so by shape and word. */
export function GapRow({ gaps, turned }: { readonly gaps: readonly Row[]; readonly turned: boolean }): ReactElement {
  const shown = turned ? gaps.toReversed() : gaps;
  return (
    <ul className="gap-row" aria-label="Who has each run gap">
      {shown.map((row) => (
        <li key={row.name} className={row.open ? 'gap-cell is-open' : 'gap-cell'}>
          <span className="gap-name">{row.name}</span>
          <span className="gap-owner">
            {row.open && <VerdictMark verdict="stop" size={14} />} {row.owners}
          </span>
        </li>
      ))}
    </ul>
  );
}
