import { useVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useRef, useState, type KeyboardEvent, type ReactElement, type SyntheticEvent } from 'react';
import { COLUMN, GridRow, placeIn, ROW, type Spot } from './GridRow.tsx';
import type { MenuView } from './useMenu.ts';

/** Sizes of the heads, in CSS pixels, as in the style sheet. */
const HEAD = 148;
const NAMES = 184;

interface Props {
  readonly view: MenuView;
  /** What the grid shows, for those who hear it. */
  readonly label: string;
  /** The cell that is pointed at or stood in. */
  readonly onPoint: (spot: Spot) => void;
  readonly onOpen: (spot: Spot) => void;
  /** The rows and columns of the whole grid that are in sight, whenever they are others. */
  readonly onSight: (rows: readonly number[], columns: readonly number[]) => void;
}

/** Every cell as a shape and a number. Only what is in sight is in the page; arrow keys walk, Enter opens the board. */
export function VerdictGrid({ view, label, onPoint, onOpen, onSight }: Props): ReactElement {
  const { rows, columns, state } = view;
  const pairs = state.kind.kind === 'pairs';
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

  /** The cell an event comes from: one listener for all of them, so that a cell is drawn again only when it changes. */
  const cellOf = ({ target }: SyntheticEvent): Spot | null => {
    const cell = target instanceof Element ? target.closest('[role="gridcell"]') : null;
    const row = cell?.closest('[role="row"]')?.getAttribute('aria-rowindex');
    const column = cell?.getAttribute('aria-colindex');
    return row === null || row === undefined || column === null || column === undefined
      ? null
      : { row: Number(row) - 2, column: Number(column) - 2 };
  };
  const point = (event: SyntheticEvent): void => {
    const spot = cellOf(event);
    if (spot !== null) onPoint(placeIn(view, spot));
  };
  const open = (event: SyntheticEvent): void => {
    const spot = cellOf(event);
    if (spot === null) return;
    const place = placeIn(view, spot);
    const { verdict } = view.cellAt(place.row, place.column);
    if (verdict !== null && verdict !== 'waiting') onOpen(place);
  };
  const press = (event: KeyboardEvent): void => {
    if ((event.key === 'Enter' || event.key === ' ') && cellOf(event) !== null) {
      event.preventDefault();
      open(event);
    } else walk(event);
  };

  const width = across.getTotalSize();
  const seen = across.getVirtualItems();
  const drawn = down.getVirtualItems();
  useSight(
    view,
    drawn.map(({ index }) => index),
    seen.map(({ index }) => index),
    onSight,
  );
  return (
    <div
      ref={frame}
      className="verdict-grid"
      role="grid"
      aria-label={label}
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length + 1}
      onKeyDown={press}
      onClick={open}
      onPointerOver={point}
      onFocus={(event) => {
        const spot = cellOf(event);
        if (spot === null) return;
        setAt(spot);
        onPoint(placeIn(view, spot));
      }}
    >
      <div className="grid-row grid-head" role="row" aria-rowindex={1}>
        <div className="grid-corner" role="columnheader" aria-colindex={1}>
          {pairs ? 'First ↓ second →' : 'Call ↓ look →'}
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
        {drawn.map(({ index, start }) => (
          <GridRow
            key={index}
            view={view}
            row={index}
            top={start}
            width={width}
            columns={seen}
            stood={stand.row === index ? stand.column : null}
          />
        ))}
      </div>
    </div>
  );
}

/** Tells which part of the whole grid is in sight, as often as it is another. */
function useSight(
  view: MenuView,
  rows: readonly number[],
  columns: readonly number[],
  onSight: Props['onSight'],
): void {
  const told = useRef<{ readonly answers: unknown; readonly key: string } | null>(null);
  useEffect(() => {
    const places = [
      rows.map((row) => view.rows[row] ?? 0),
      columns.map((column) => view.columns[column] ?? 0),
    ] as const;
    const key = JSON.stringify(places);
    const { answers } = view.state;
    if (told.current?.answers === answers && told.current.key === key) return;
    told.current = { answers, key };
    onSight(...places);
  });
}

/** Scrolls no further than it must for the cell to stand clear of the heads. */
function bringIntoSight(frame: HTMLElement, { row, column }: Spot): void {
  const [top, left] = [row * ROW, column * COLUMN];
  frame.scrollTop = Math.max(Math.min(frame.scrollTop, top), top + ROW + HEAD - frame.clientHeight);
  frame.scrollLeft = Math.max(Math.min(frame.scrollLeft, left), left + COLUMN + NAMES - frame.clientWidth);
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
