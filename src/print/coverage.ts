import type { CoverageSection, Report, ReceiverRow, ZoneRow } from '../report/index.ts';
import { asSentences, paragraphBlock, titled } from './blocks.ts';
import type { Block, Flow } from './flow.ts';
import { FACES } from './page.ts';
import { tableBlock, type Column } from './table.ts';
import type { SheetRoom } from './types.ts';

/** Every receiver with who has him. The line's sheet has only what its own men do of it. */
export function coverageBlocks(flow: Flow, room: SheetRoom | null, report: Report): readonly Block[] {
  const { coverage, linemen } = report;
  const line = room !== null && linemen.some((man) => room.roles.includes(man.role));
  const mine = (row: ReceiverRow | ZoneRow) => !line || row.who.some((role) => room.roles.includes(role));
  const receivers = coverage.receivers.filter(mine);
  const zones = zoneText(coverage.zones.filter(mine), line);
  return titled(flow, line ? 'Linemen in coverage' : headingText(coverage), [
    ...(receivers.length === 0 ? [] : [receiverTable(flow, receivers)]),
    ...(zones === '' ? [] : [paragraphBlock(flow, zones, FACES.small)]),
  ]);
}

/** A column for each receiver, as a look has five at most who may catch a pass. */
function receiverTable(flow: Flow, receivers: readonly ReceiverRow[]): Block {
  const columns = receivers.map((row): Column => ({ title: row.receiver, share: 1 }));
  const cells = receivers.map(({ by, how }) => (how === null ? by : `${by}, ${how}`));
  return tableBlock(flow, columns, [{ cells, strong: receivers.map((row) => row.open) }]);
}

function headingText({ shell, count }: CoverageSection): string {
  return ['Coverage', ...(shell.trim() === '' ? [] : [shell]), count].join(' · ');
}

/** Zones the job table does not say: nobody's, and those the shell filled in. For the line, all its men drop to. */
function zoneText(zones: readonly ZoneRow[], line: boolean): string {
  const texts = zones.flatMap((row) => {
    if (row.open) return [`Nobody drops to the ${row.zone}`];
    if (row.how === 'filled in') return [`${row.by} fills in the ${row.zone}`];
    return line ? [`${row.by} drops to the ${row.zone}`] : [];
  });
  return asSentences(texts);
}
