import type { ReactElement } from 'react';
import type { CombinedStatus, Verdict } from '../../engine/index.ts';
import type { PairRow } from '../../report/index.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { useWhyRow } from './useWhyRow.tsx';

/** The mark of a lineman's verdict; null where there is nothing to look at. */
const MARKS: Readonly<Record<CombinedStatus, Verdict | null>> = {
  untold: null,
  one: 'clean',
  same: 'clean',
  yields: 'note',
  'two-manners': 'check',
  conflict: 'stop',
  either: 'clean',
  unresolved: 'stop',
};

interface Props {
  readonly rows: readonly PairRow[];
  /** Names of the two pressures; null when the first is called alone. */
  readonly first: string;
  readonly second: string | null;
}

/** What each pressure tells each lineman, side by side: the question this app exists for. */
export function LinemanTable({ rows, first, second }: Props): ReactElement {
  return (
    <table className="lineman-table">
      <caption className="unseen">What each pressure tells each lineman</caption>
      <thead>
        <tr>
          <th scope="col">Man</th>
          <th scope="col">
            First says <span className="said-by">{first}</span>
          </th>
          {second !== null && (
            <th scope="col">
              Second says <span className="said-by">{second}</span>
            </th>
          )}
          <th scope="col">Verdict</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.role} row={row} paired={second !== null} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ row, paired }: { readonly row: PairRow; readonly paired: boolean }): ReactElement {
  const mark = MARKS[row.status];
  const className = `lineman lineman-${row.status}`;
  const why = useWhyRow({ of: `for the ${row.name}`, reasons: [row.why], columns: paired ? 4 : 3, className });
  return (
    <>
      <tr className={className} data-role={row.role}>
        <th scope="row">
          <span className="letter">{row.letter}</span> <span className="man-name">{row.name}</span>
        </th>
        <td>{row.first}</td>
        {paired && <td>{row.second}</td>}
        <td>
          <span className="verdict-word">
            {mark !== null && <VerdictMark verdict={mark} size={16} />} {row.verdict}
          </span>
          {why.button}
        </td>
      </tr>
      {why.row}
    </>
  );
}
