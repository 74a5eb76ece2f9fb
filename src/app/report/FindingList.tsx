import type { ReactElement } from 'react';
import type { FindingRow } from '../../report/index.ts';
import { VERDICT_NAMES, VerdictMark } from '../parts/VerdictMark.tsx';
import { WhyFold } from '../parts/Why.tsx';

interface Props {
  readonly rows: readonly FindingRow[];
  /** The finding whose people and gaps are lit on the field. */
  readonly lit: string | null;
  readonly onLight: (key: string | null) => void;
}

/** What is wrong, worst first as the engine gives it. Pointing at one, or tabbing to it, lights it on the field. */
export function FindingList({ rows, lit, onLight }: Props): ReactElement {
  if (rows.length === 0) return <p className="quiet">Nothing found in this look.</p>;
  return (
    <ul className="finding-list">
      {rows.map((row) => (
        <li
          key={row.key}
          className={`finding finding-${row.severity}${lit === row.key ? ' is-lit' : ''}`}
          data-rule={row.rule}
          onPointerEnter={() => onLight(row.key)}
          onPointerLeave={() => onLight(null)}
          onFocus={() => onLight(row.key)}
          onBlur={() => onLight(null)}
        >
          <h4>
            <VerdictMark verdict={row.severity} />
            <span className="severity-word">{VERDICT_NAMES[row.severity]}</span> {row.title}
          </h4>
          <p className="finding-text">{row.text}</p>
          <p className="matters">{row.matters}</p>
          <div className="finding-tools">
            <ShowButton row={row} onLight={onLight} />
            <WhyFold of={`: ${row.title}`} reasons={row.why} />
          </div>
        </li>
      ))}
    </ul>
  );
}

/** For touch and keyboard, where nothing hovers. */
function ShowButton({ row, onLight }: { readonly row: FindingRow; readonly onLight: Props['onLight'] }): ReactElement {
  return (
    <button type="button" className="link-button" onClick={() => onLight(row.key)}>
      Show on the field<span className="unseen">: {row.title}</span>
    </button>
  );
}
