import { caseIndex, sizeOfGrid, type Grid } from './grid.ts';

/** In which order the cases of a grid are answered: what is in sight first, then the rest as it stands. */
export interface WorkOrder {
  /** The place of the next case in the list; null when all have been given out. A cell is finished before the next. */
  readonly next: () => number | null;
  /** From now on the cells of these rows and columns come first, row by row. */
  readonly prefer: (rows: readonly number[], columns: readonly number[]) => void;
}

/** The order of a grid of which nothing is answered yet. */
export function createWorkOrder(grid: Grid): WorkOrder {
  const { rows, columns, layers } = grid;
  const size = sizeOfGrid(grid);
  const given = new Uint8Array(rows.length * columns.length);
  let wanted: readonly number[] = [];
  let [wantedAt, restAt] = [0, 0];
  let [at, end] = [0, 0];

  const nextCell = (): number | null => {
    for (; wantedAt < wanted.length; wantedAt += 1) {
      const cell = wanted[wantedAt];
      if (cell !== undefined && given[cell] === 0) return cell;
    }
    for (; restAt < given.length; restAt += 1) if (given[restAt] === 0) return restAt;
    return null;
  };

  return {
    next: () => {
      if (size === 0) return null;
      if (at === end) {
        const cell = nextCell();
        if (cell === null) return null;
        given[cell] = 1;
        at = cell * layers.length;
        end = at + layers.length;
      }
      at += 1;
      return at - 1;
    },
    prefer: (seenRows, seenColumns) => {
      wanted = seenRows.flatMap((row) => seenColumns.map((column) => caseIndex(grid, row, column, 0) / layers.length));
      wantedAt = 0;
    },
  };
}
