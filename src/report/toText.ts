import { SEVERITIES, type Verdict } from '../engine/index.ts';
import type { ReportEntry } from './entry.ts';
import { SPOT_WORDS } from './words/names.ts';
import { SEVERITY_WORDS, VERDICT_WORDS } from './words/verdicts.ts';

const HEAD = ['Call', 'Look', 'Spot', 'Verdict'] as const;
const TALLY: readonly Verdict[] = [...SEVERITIES, 'clean', 'left-out'];

/**
 * A table for a terminal: one line for each call, look and spot in the order given, its findings below it one a line,
 * and a count at the end. Plain text with a final line break.
 */
export function toText(entries: readonly ReportEntry[]): string {
  const rows = entries.map((entry) => ({ cells: cellsOf(entry), findings: findingsOf(entry) }));
  const widths = HEAD.map((head, column) =>
    Math.max(...[head, ...rows.map((row) => row.cells[column] ?? '')].map(length)),
  );
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, column) => padded(cell, widths[column] ?? 0))
      .join('  ')
      .trimEnd();
  const body = rows.flatMap((row) => [line(row.cells), ...row.findings]);
  return [line(HEAD), line(widths.map((width) => '-'.repeat(width))), ...body, '', tally(entries), ''].join('\n');
}

function cellsOf({ call, analysis, report }: ReportEntry): readonly string[] {
  return [call.name, analysis.setup.look.name, SPOT_WORDS[analysis.setup.spot], report.verdictText].map(plain);
}

/** What stands, what could not be judged, and how much the coach lives with; the rest is in the sheets and the JSON. */
function findingsOf({ report }: ReportEntry): readonly string[] {
  const { findings, cannotTell, waived } = report;
  const line = (word: string, rule: string, text: string): string => `  ${padded(word, 5)}  ${rule}: ${plain(text)}`;
  return [
    ...findings.map((row) => line(SEVERITY_WORDS[row.severity], row.rule, row.text)),
    ...cannotTell.map((row) => line('?', row.rules.join(', '), row.text)),
    ...(waived.length === 0 ? [] : [`  ${padded('', 5)}  ${String(waived.length)} waived`]),
  ];
}

function tally(entries: readonly ReportEntry[]): string {
  const counts = TALLY.map((verdict) => ({
    words: VERDICT_WORDS[verdict].toLowerCase(),
    count: entries.filter((entry) => entry.report.verdict === verdict).length,
  }));
  const said = counts.filter(({ count }) => count > 0).map(({ words, count }) => `${String(count)} ${words}`);
  return `Checked: ${String(entries.length)}${said.length === 0 ? '' : ` (${said.join('; ')})`}`;
}

/** Names come from a file: line breaks and terminal controls in them must not reach the terminal. */
function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ');
}

function length(text: string): number {
  return Array.from(text).length;
}

function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - length(text)));
}
