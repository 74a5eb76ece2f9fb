import type { VirtualItem } from '@tanstack/react-virtual';
import { memo, type ReactElement } from 'react';
import type { Cell } from '../../menu/index.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { cellNumber, cellWords } from './cellWords.ts';
import type { MenuView } from './useMenu.ts';

/** Sizes of a cell, in CSS pixels. Columns are wide enough for a finger. */
export const ROW = 34;
export const COLUMN = 46;

/** A place in the grid as it is shown. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** The row and column of the whole grid that stand at a place of the part that is shown. */
export function placeIn({ rows, columns }: MenuView, { row, column }: Spot): Spot {
  return { row: rows[row] ?? 0, column: columns[column] ?? 0 };
}

interface RowProps {
  readonly view: MenuView;
  readonly row: number;
  readonly top: number;
  readonly width: number;
  readonly columns: readonly VirtualItem[];
  /** The column that is stood in; null: in another row. */
  readonly stood: number | null;
}

/** One row, drawn again only when it is another part of the grid, more is known, or one walks into or out of it. */
export const GridRow = memo(function GridRow({ view, row, top, width, columns, stood }: RowProps): ReactElement {
  const { state, rows } = view;
  const pairs = state.kind.kind === 'pairs';
  return (
    <div className="grid-row" role="row" aria-rowindex={row + 2} style={{ top, height: ROW }}>
      <div className="grid-row-name" role="rowheader" aria-colindex={1}>
        {state.grid.rows[rows[row] ?? -1]?.name}
      </div>
      <div className="grid-cells" role="presentation" style={{ width }}>
        {columns.map(({ index, start }) => {
          const place = placeIn(view, { row, column: index });
          const cell = view.cellAt(place.row, place.column);
          return (
            <GridCell
              key={index}
              verdict={cell.verdict}
              number={cellNumber(cell, pairs)}
              words={cellWords(cell, pairs)}
              left={start}
              index={index}
              stood={stood === index}
            />
          );
        })}
      </div>
    </div>
  );
});

interface CellProps {
  readonly verdict: Cell['verdict'];
  readonly number: string;
  readonly words: string;
  readonly left: number;
  readonly index: number;
  readonly stood: boolean;
}

/** One cell. Hundreds are in sight and most stay as they are from drawing to drawing: only what changes is drawn again. */
const GridCell = memo(function GridCell({ verdict, number, words, left, index, stood }: CellProps): ReactElement {
  return (
    <div
      className={`grid-cell cell-${verdict ?? 'none'}`}
      role="gridcell"
      aria-colindex={index + 2}
      aria-label={words}
      tabIndex={stood ? 0 : -1}
      style={{ left, width: COLUMN }}
    >
      {verdict === null ? (
        <span className="quiet">–</span>
      ) : verdict === 'waiting' ? (
        <span className="quiet">…</span>
      ) : (
        <>
          <VerdictMark verdict={verdict} size={16} />
          <span className="cell-number">{number}</span>
        </>
      )}
    </div>
  );
});
