import { stringify } from 'csv-stringify/sync';
import { ok, refused, type Result } from '../base/index.ts';
import type { Playbook, Refusal } from '../document/index.ts';
import type { Call, Look, Place } from '../engine/index.ts';
import { gridOf, linesOf, summaryOf, type GridKind, type MenuLine } from '../menu/index.ts';
import type { GridOptions } from './args.ts';

/** A grid of verdicts that is asked for. */
export interface AskedGrid {
  readonly playbook: Playbook;
  readonly calls: readonly Call[];
  readonly looks: readonly Look[];
  readonly spots: readonly Place[];
  readonly kind: GridKind;
  readonly json: boolean;
}

const COLUMNS: readonly (keyof MenuLine)[] = [
  'call',
  'front',
  'first',
  'second',
  'turn',
  'look',
  'spot',
  'verdict',
  'stops',
  'checks',
  'notes',
  'doubts',
  'rules',
];

/** The grid the options name, its front found in the playbook. */
export function gridKind(playbook: Playbook, options: GridOptions): Result<GridKind, Refusal> {
  if (options.kind === 'calls') return ok(options);
  const { fronts } = playbook;
  const front = options.front === null ? fronts[0] : fronts.find(({ id }) => id === options.front);
  if (front !== undefined) return ok({ kind: 'pairs', front: front.id, turn: options.turn });
  const known = fronts.map(({ id }) => id).sort();
  return refused({
    path: '--front',
    found: options.front === null ? 'no front in the playbook' : JSON.stringify(options.front),
    expected: known.length === 0 ? 'a playbook with a front' : `one of ${known.join(', ')}`,
  });
}

/** Writes the verdicts as CSV (RFC 4180), or as JSON with a case a line. True when a case is at stop. */
export function writeGrid(
  { playbook, calls, looks, spots, kind, json }: AskedGrid,
  out: (text: string) => void,
): boolean {
  const grid = gridOf({ ...playbook, calls, looks }, kind);
  const lines = linesOf(
    grid,
    ({ spot }) => spots.includes(spot),
    (menuCase) => summaryOf(playbook, menuCase),
  );
  let stop = false;
  let written = 0;
  out(json ? '{"format":"gapwright-grid","version":1,"cases":[' : csv([COLUMNS]));
  for (const line of lines) {
    stop ||= line.verdict === 'stop';
    out(
      json
        ? `${written === 0 ? '' : ','}\n${JSON.stringify(line)}`
        : csv([COLUMNS.map((column) => valueOf(line, column))]),
    );
    written += 1;
  }
  if (json) out('\n]}\n');
  return stop;
}

function valueOf(line: MenuLine, column: keyof MenuLine): string | number {
  const value = line[column];
  if (value === null) return '';
  return typeof value === 'object' ? value.join(' ') : value;
}

/** What a spreadsheet would run as a formula is marked as text. */
function csv(rows: readonly (readonly (string | number)[])[]): string {
  return stringify(
    rows.map((row) => [...row]),
    { escape_formulas: true, record_delimiter: 'windows' },
  );
}
