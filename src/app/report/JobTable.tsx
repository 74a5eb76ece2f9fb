import type { ReactElement } from 'react';
import type { RoleId } from '../../engine/index.ts';
import type { JobRow } from '../../report/index.ts';
import { WhyFold } from '../parts/Why.tsx';

interface Props {
  readonly rows: readonly JobRow[];
  /** What put a man where he stands: "by hand". */
  readonly placedBy: (role: RoleId) => string;
  readonly selected: RoleId | null;
  readonly onSelect: (role: RoleId) => void;
}

/** All eleven: where each lines up, what he does, against the run and against the pass, and who told him. */
export function JobTable({ rows, placedBy, selected, onSelect }: Props): ReactElement {
  return (
    <table className="job-table">
      <caption className="unseen">The jobs of all eleven</caption>
      <thead>
        <tr>
          <th scope="col">Man, and where he lines up</th>
          <th scope="col">Run</th>
          <th scope="col">Pass</th>
          <th scope="col">Told by</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.role} className={row.role === selected ? 'is-selected' : undefined} data-role={row.role}>
            <th scope="row">
              <button type="button" className="man-button" onClick={() => onSelect(row.role)}>
                <span className="letter">{row.letter}</span> <span className="man-name">{row.name}</span>
              </button>
              <span className="aligns">
                {row.aligns}, {placedBy(row.role)}
              </span>
            </th>
            <td>{row.run}</td>
            <td>{row.pass}</td>
            <td>
              {row.toldBy}
              <WhyFold of={`for the ${row.name}`} reasons={[row.why]} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
