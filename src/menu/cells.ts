import type { Verdict } from '../engine/index.ts';
import { rate, VERDICT_ORDER, type MenuFilter, type Rated } from './filter.ts';
import { caseIndex, sizeOfGrid, type Grid } from './grid.ts';
import type { Summary } from './types.ts';

/** The answers of a grid as they come in: for each case the number of its summary. */
export interface Answers {
  readonly summaries: readonly Summary[];
  /** By case; `WAITING` while it is not answered, `NO_CASE` where there is nothing to answer. */
  readonly numbers: Int32Array;
}

/** A case that is not answered yet. */
export const WAITING = -1;
/** A place of the grid without a case. */
export const NO_CASE = -2;

/** A grid of which nothing is answered yet. A cell has a case in every layer, or in none. */
export function unanswered(grid: Grid): Int32Array {
  const numbers = new Int32Array(sizeOfGrid(grid)).fill(WAITING);
  const depth = grid.layers.length;
  if (depth === 0) return numbers;
  for (let from = 0; from < numbers.length; from += depth) {
    if (grid.caseAt(from) === null) numbers.fill(NO_CASE, from, from + depth);
  }
  return numbers;
}

/** How many of these are cases, answered or not. */
export function countCases(numbers: Int32Array): number {
  let count = 0;
  for (const number of numbers) if (number !== NO_CASE) count += 1;
  return count;
}

/** One cell as it is shown. */
export interface Cell {
  /** The worst of the cases that are looked at; `waiting` while one is missing, null where there is no case. */
  readonly verdict: Verdict | 'waiting' | null;
  /** In how many of its cases it is the worst. */
  readonly cases: number;
  /** How many findings so grave the worst of its cases has. */
  readonly findings: number;
  /** The layer of the first of the worst cases: where to look. */
  readonly layer: number;
  /** How many cases have each verdict, in `VERDICT_ORDER`. */
  readonly tally: readonly number[];
}

/**
 * Reads cells through one filter. Every different summary is rated once, however large the grid; a cell whose answers are
 * all in is read once, for they do not change any more. `answers` may go on growing meanwhile.
 */
export function cellReader(grid: Grid, layers: readonly number[], { summaries, numbers }: Answers, filter: MenuFilter) {
  const rated: Rated[] = [];
  const ratedAt = (number: number): Rated => {
    const known = rated[number];
    if (known !== undefined) return known;
    const summary = summaries[number];
    if (summary === undefined) throw new Error(`There is no summary ${String(number)}`);
    const made = rate(summary, filter);
    rated[number] = made;
    return made;
  };
  const read = (row: number, column: number): Cell => {
    const from = caseIndex(grid, row, column, 0);
    const tally = VERDICT_ORDER.map(() => 0);
    let [worst, findings, layer] = [VERDICT_ORDER.length, 0, layers[0] ?? 0];
    for (const each of layers) {
      const number = numbers[from + each] ?? NO_CASE;
      if (number < 0) return { ...EMPTY, verdict: number === WAITING ? 'waiting' : null, layer: each };
      const { verdict, count } = ratedAt(number);
      const rank = VERDICT_ORDER.indexOf(verdict);
      tally[rank] = (tally[rank] ?? 0) + 1;
      if (rank < worst || (rank === worst && count > findings)) [worst, findings, layer] = [rank, count, each];
    }
    return { verdict: VERDICT_ORDER[worst] ?? null, cases: tally[worst] ?? 0, findings, layer, tally };
  };
  const whole = new Map<number, Cell>();
  return (row: number, column: number): Cell => {
    const place = row * grid.columns.length + column;
    const known = whole.get(place);
    if (known !== undefined) return known;
    const cell = read(row, column);
    if (cell.verdict !== 'waiting') whole.set(place, cell);
    return cell;
  };
}

const EMPTY = { cases: 0, findings: 0, tally: VERDICT_ORDER.map(() => 0) };

/** How rows are put in order: as the playbook has them, or by how many of their cases are at stop, then check, then note. */
export const ROW_ORDERS = ['kept', 'gravest', 'soundest'] as const;
export type RowOrder = (typeof ROW_ORDERS)[number];

/** The rows of a grid in that order; those alike as they stood. `columns` are the ones that are looked at. */
export function rowsInOrder(
  grid: Grid,
  columns: readonly number[],
  cellAt: (row: number, column: number) => Cell,
  order: RowOrder,
): readonly number[] {
  const rows = grid.rows.map((_, row) => row);
  if (order === 'kept') return rows;
  const weights = rows.map((row) => {
    const cells = columns.map((column) => cellAt(row, column));
    return WEIGHED.map((rank) => cells.reduce((sum, { tally }) => sum + (tally[rank] ?? 0), 0));
  });
  const sign = order === 'gravest' ? -1 : 1;
  return rows.sort((a, b) => {
    for (const at of WEIGHED.keys()) {
      const difference = (weights[a]?.[at] ?? 0) - (weights[b]?.[at] ?? 0);
      if (difference !== 0) return sign * difference;
    }
    return a - b;
  });
}

/** The verdicts that weigh, by their place in the order. */
const WEIGHED = [VERDICT_ORDER.indexOf('stop'), VERDICT_ORDER.indexOf('check'), VERDICT_ORDER.indexOf('note')];
