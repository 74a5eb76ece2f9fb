import { artifact, group, tagged, type Block, type Flow, type Structure } from './flow.ts';
import { FACES } from './page.ts';
import { lineHeight, type Face } from './pen.ts';

/** A column: its heading, and its share of the width. */
export interface Column {
  readonly title: string;
  readonly share: number;
}

/** A row of words, heavy or not; a list says it for each cell. */
export interface Row {
  readonly cells: readonly string[];
  readonly strong: boolean | readonly boolean[];
}

const PAD = { x: 3, y: 1 } as const;

/** A cell of a row, broken into lines. */
interface Cell {
  readonly x: number;
  readonly face: Face;
  readonly lines: readonly string[];
}

/**
 * A table across the sheet. Words wrap inside their cells; a row that does not fit goes to the next page, where the headings
 * come again, and a row longer than a page goes on over as many as it takes.
 */
export function tableBlock(flow: Flow, columns: readonly Column[], rows: readonly Row[]): Block {
  const titles = columns.map((column) => column.title);
  const head = cellsOf(flow, columns, titles, () => FACES.head);
  const body = rows.map(({ cells, strong }) => {
    const isStrong = (column: number) => (typeof strong === 'boolean' ? strong : strong[column] === true);
    return cellsOf(flow, columns, cells, (column) => (isStrong(column) ? FACES.strong : FACES.cell));
  });
  return {
    height: [head, ...body].reduce((sum, cells) => sum + heightOf(longest(cells)), 0),
    draw: () => {
      drawTable(flow, head, body);
    },
  };
}

function drawTable(flow: Flow, head: readonly Cell[], body: readonly (readonly Cell[])[]): void {
  const table = group(flow, flow.section, 'Table');
  const drawHead = () => {
    drawCells(flow, table, head, 0, longest(head), 'TH');
    ruleAt(flow, 0.8, '#000000');
  };
  // Never a heading alone at the foot of a page.
  flow.need(heightOf(longest(head)) + heightOf(Math.min(LONG_ROW, longest(body[0] ?? []))));
  drawHead();
  for (const cells of body) {
    const last = longest(cells);
    if (flow.need(heightOf(Math.min(last, LONG_ROW)))) drawHead();
    let from = 0;
    while (from < last) {
      if (from > 0 && flow.need(heightOf(1))) drawHead();
      const fits = Math.floor((flow.area.bottom - flow.y - 2 * PAD.y) / lineHeight(FACES.cell));
      const count = Math.max(1, Math.min(last - from, fits));
      drawCells(flow, table, cells, from, count, 'TD');
      from += count;
    }
    ruleAt(flow, 0.4, '#b0b0b0');
  }
  table.end();
}

/** A row of more lines than this may be split between pages. */
const LONG_ROW = 12;

function cellsOf(
  flow: Flow,
  columns: readonly Column[],
  texts: readonly string[],
  faceOf: (column: number) => Face,
): readonly Cell[] {
  const whole = columns.reduce((sum, column) => sum + column.share, 0);
  let x = flow.area.left;
  return columns.map((column, index) => {
    const width = (flow.area.width * column.share) / whole;
    const face = faceOf(index);
    const cell = { x: x + PAD.x, face, lines: flow.pen.lines(texts[index] ?? '', face, width - 2 * PAD.x) };
    x += width;
    return cell;
  });
}

function longest(cells: readonly Cell[]): number {
  return Math.max(1, ...cells.map((cell) => cell.lines.length));
}

function heightOf(lines: number): number {
  return lines * lineHeight(FACES.cell) + 2 * PAD.y;
}

/** Draws lines `from` to `from + count` of every cell, as one row of the structure. */
function drawCells(
  flow: Flow,
  table: Structure,
  cells: readonly Cell[],
  from: number,
  count: number,
  tag: 'TH' | 'TD',
): void {
  const row = group(flow, table, 'TR');
  for (const cell of cells) {
    tagged(flow, row, tag, () => {
      cell.lines.slice(from, from + count).forEach((line, index) => {
        flow.pen.draw(line, cell.face, cell.x, flow.y + PAD.y + index * lineHeight(FACES.cell));
      });
    });
  }
  row.end();
  flow.y += heightOf(count);
}

function ruleAt(flow: Flow, width: number, colour: string): void {
  artifact(flow.pen, () => {
    const { left } = flow.area;
    flow.pen.doc
      .moveTo(left, flow.y)
      .lineTo(left + flow.area.width, flow.y)
      .lineWidth(width)
      .stroke(colour);
  });
}
