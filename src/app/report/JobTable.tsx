import type { ReactElement } from 'react';
import type { RoleId } from '../../engine/index.ts';
import type { JobRow } from '../../report/index.ts';
import { useWhyRow } from './useWhyRow.tsx';

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
          <Row key={row.role} row={row} placedBy={placedBy} selected={row.role === selected} onSelect={onSelect} />
        ))}
      </tbody>
    </table>
  );
}

interface RowProps extends Pick<Props, 'placedBy' | 'onSelect'> {
  readonly row: JobRow;
  readonly selected: boolean;
}

function Row({ row, placedBy, selected, onSelect }: RowProps): ReactElement {
  const className = selected ? 'is-selected' : undefined;
  const why = useWhyRow({ of: `for the ${row.name}`, reasons: [row.why], columns: 4, className });
  return (
    <>
      <tr className={className} data-role={row.role}>
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
          {row.toldBy} {why.button}
        </td>
      </tr>
      {why.row}
    </>
  );
}
