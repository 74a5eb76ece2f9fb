import type { ReactElement, ReactNode } from 'react';

interface Props {
  readonly title: string;
  /** How many entries it has; null where counting says nothing. */
  readonly count?: number | null;
  /** What it comes down to, so that it need not be opened. */
  readonly note?: string;
  /** True: there is something in it the coach should not miss. */
  readonly open?: boolean;
  readonly children: ReactNode;
}

/** A part of the report that is folded: its heading says what is in it. */
export function Section({ title, count = null, note, open = false, children }: Props): ReactElement {
  return (
    <details className="section">
      <summary>
        <h3>{title}</h3>
        {count !== null && <span className="section-count">{count}</span>}
        {note !== undefined && <span className={open ? 'section-note is-open' : 'section-note'}>{note}</span>}
      </summary>
      <div className="section-body">{children}</div>
    </details>
  );
}
