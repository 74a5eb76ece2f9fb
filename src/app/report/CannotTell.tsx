import type { ReactElement } from 'react';
import type { CannotTellRow } from '../../report/index.ts';
import { WhyFold } from '../parts/Why.tsx';
import { useSession } from '../session/session.ts';
import { lightProps } from './lighting.ts';
import { Section } from './Section.tsx';

/** What could not be judged, and why: that is not the same as clean. */
export function CannotTellSection({ rows }: { readonly rows: readonly CannotTellRow[] }): ReactElement | null {
  const { store } = useSession();
  if (rows.length === 0) return null;
  return (
    <Section title="Cannot tell" count={rows.length} note="not the same as clean">
      <ul className="plain-rows">
        {rows.map((row) => (
          <li key={row.key} {...lightProps(row.key, row, (lit) => store.setView({ lit }))}>
            <p>{row.text}</p>
            <p className="hint">Not judged here: {row.titles.join('; ')}</p>
            <WhyFold of={`: ${row.text}`} reasons={row.why} />
          </li>
        ))}
      </ul>
    </Section>
  );
}
