import { useVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useRef, useState, type KeyboardEvent, type ReactElement } from 'react';
import type { Cell } from '../../menu/index.ts';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { cellNumber, cellWords } from './cellWords.ts';
import type { MenuView } from './useMenu.ts';

/** Sizes of the grid, in CSS pixels, those of the heads as in the style sheet. Columns are wide enough for a finger. */
const ROW = 34;
const COLUMN = 46;
const HEAD = 148;
const NAMES = 184;

/** A place in the grid as it is shown. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

interface Props {
  readonly view: MenuView;
  /** What the grid shows, for those who hear it. */
  readonly label: string;
  /** The cell that is pointed at or stood in. */
  readonly onPoint: (spot: Spot) => void;
  readonly onOpen: (spot: Spot) => void;
}

/** Every cell as a shape and a number. Only what is in sight is in the page; arrow keys walk, Enter opens the board. */
export function VerdictGrid({ view, label, onPoint, onOpen }: Props): ReactElement {
  const { rows, columns, state } = view;
  const frame = useRef<HTMLDivElement>(null);
  const [at, setAt] = useState<Spot>({ row: 0, column: 0 });
  const stand: Spot = { row: Math.min(at.row, rows.length - 1), column: Math.min(at.column, columns.length - 1) };
  const down = useVirtualizer({
    count: rows.length,
    getScrollElement: () => frame.current,
    estimateSize: () => ROW,
    overscan: 6,
  });
  const across = useVirtualizer({
    count: columns.length,
    getScrollElement: () => frame.current,
    estimateSize: () => COLUMN,
    horizontal: true,
    overscan: 4,
  });
  const focusAt = useFocusAfterWalk(frame);

  const walk = (event: KeyboardEvent): void => {
    const next = step(event.key, stand, rows.length - 1, columns.length - 1, event.ctrlKey || event.metaKey);
    if (next === null) return;
    event.preventDefault();
    setAt(next);
    onPoint(placeIn(view, next));
    if (frame.current !== null) bringIntoSight(frame.current, next);
    focusAt(next);
  };

  const width = across.getTotalSize();
  const seen = across.getVirtualItems();
  return (
    <div
      ref={frame}
      className="verdict-grid"
      role="grid"
      aria-label={label}
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length + 1}
      onKeyDown={walk}
    >
      <div className="grid-row grid-head" role="row" aria-rowindex={1}>
        <div className="grid-corner" role="columnheader" aria-colindex={1}>
          {state.kind.kind === 'pairs' ? 'First ↓ second →' : 'Call ↓ look →'}
        </div>
        <div className="grid-cells" role="presentation" style={{ width }}>
          {seen.map(({ index, start }) => (
            <div
              key={index}
              className="grid-column-name"
              role="columnheader"
              aria-colindex={index + 2}
              style={{ left: start, width: COLUMN }}
            >
              <span>{state.grid.columns[columns[index] ?? -1]?.name}</span>
            </div>
          ))}
        </div>
      </div>
      <div className="grid-body" role="rowgroup" style={{ height: down.getTotalSize() }}>
        {down.getVirtualItems().map((item) => (
          <div
            key={item.index}
            className="grid-row"
            role="row"
            aria-rowindex={item.index + 2}
            style={{ top: item.start, height: ROW }}
          >
            <div className="grid-row-name" role="rowheader" aria-colindex={1}>
              {state.grid.rows[rows[item.index] ?? -1]?.name}
            </div>
            <div className="grid-cells" role="presentation" style={{ width }}>
              {seen.map(({ index, start }) => {
                const spot = { row: item.index, column: index };
                const place = placeIn(view, spot);
                return (
                  <GridCell
                    key={index}
                    cell={view.cellAt(place.row, place.column)}
                    pairs={state.kind.kind === 'pairs'}
                    left={start}
                    index={index}
                    stood={stand.row === spot.row && stand.column === spot.column}
                    onStand={() => {
                      setAt(spot);
                      onPoint(place);
                    }}
                    onPoint={() => onPoint(place)}
                    onOpen={() => onOpen(place)}
                  />
                );
              })}
            </div>
          </div>
        ))}
      </div>
    </div>
  );
}

interface CellProps {
  readonly cell: Cell;
  readonly pairs: boolean;
  readonly left: number;
  readonly index: number;
  readonly stood: boolean;
  readonly onStand: () => void;
  readonly onPoint: () => void;
  readonly onOpen: () => void;
}

function GridCell({ cell, pairs, left, index, stood, onStand, onPoint, onOpen }: CellProps): ReactElement {
  const { verdict } = cell;
  const open = verdict === null || verdict === 'waiting' ? undefined : onOpen;
  return (
    <div
      className={`grid-cell cell-${verdict ?? 'none'}`}
      role="gridcell"
      aria-colindex={index + 2}
      aria-label={cellWords(cell, pairs)}
      tabIndex={stood ? 0 : -1}
      style={{ left, width: COLUMN }}
      onFocus={onStand}
      onPointerEnter={onPoint}
      onClick={open}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        open?.();
      }}
    >
      {verdict === null ? (
        <span className="quiet">–</span>
      ) : verdict === 'waiting' ? (
        <span className="quiet">…</span>
      ) : (
        <>
          <VerdictMark verdict={verdict} size={16} />
          <span className="cell-number">{cellNumber(cell, pairs)}</span>
        </>
      )}
    </div>
  );
}

/** Scrolls no further than it must for the cell to stand clear of the heads. */
function bringIntoSight(frame: HTMLElement, { row, column }: Spot): void {
  const [top, left] = [row * ROW, column * COLUMN];
  frame.scrollTop = Math.max(Math.min(frame.scrollTop, top), top + ROW + HEAD - frame.clientHeight);
  frame.scrollLeft = Math.max(Math.min(frame.scrollLeft, left), left + COLUMN + NAMES - frame.clientWidth);
}

/** The row and column of the whole grid that stand at a place of the part that is shown. */
function placeIn({ rows, columns }: MenuView, { row, column }: Spot): Spot {
  return { row: rows[row] ?? 0, column: columns[column] ?? 0 };
}

/** Where a key leads: arrows by one, Home and End along the row, with Ctrl to the corners, Page by ten. */
function step(key: string, { row, column }: Spot, lastRow: number, lastColumn: number, far: boolean): Spot | null {
  const to = (nextRow: number, nextColumn: number): Spot => ({
    row: Math.max(0, Math.min(lastRow, nextRow)),
    column: Math.max(0, Math.min(lastColumn, nextColumn)),
  });
  switch (key) {
    case 'ArrowUp':
      return to(row - 1, column);
    case 'ArrowDown':
      return to(row + 1, column);
    case 'ArrowLeft':
      return to(row, column - 1);
    case 'ArrowRight':
      return to(row, column + 1);
    case 'Home':
      return to(far ? 0 : row, 0);
    case 'End':
      return to(far ? lastRow : row, lastColumn);
    case 'PageUp':
      return to(row - 10, column);
    case 'PageDown':
      return to(row + 10, column);
    default:
      return null;
  }
}

/** The cell walked to is in the page only after a later drawing; as soon as it is, it takes the focus. */
function useFocusAfterWalk(frame: { readonly current: HTMLDivElement | null }): (to: Spot) => void {
  const wanted = useRef<Spot | null>(null);
  useEffect(() => {
    if (wanted.current === null) return;
    const { row, column } = wanted.current;
    const place = `[aria-rowindex="${String(row + 2)}"] [aria-colindex="${String(column + 2)}"]`;
    const cell = frame.current?.querySelector<HTMLElement>(place);
    if (cell === null || cell === undefined) return;
    wanted.current = null;
    cell.focus({ preventScroll: true });
  });
  return (to) => {
    wanted.current = to;
  };
}
