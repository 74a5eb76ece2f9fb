import type { CombinedStatus } from '../engine/index.ts';
import type { JobRow, PairRow, Report } from '../report/index.ts';
import { titled } from './blocks.ts';
import type { Block, Flow } from './flow.ts';
import { tableBlock, type Column, type Row } from './table.ts';
import type { SheetRoom } from './types.ts';

const JOB_COLUMNS: readonly Column[] = [
  { title: '', share: 22 },
  { title: 'Name', share: 82 },
  { title: 'Aligns', share: 96 },
  { title: 'At the snap', share: 128 },
  { title: 'Run', share: 114 },
  { title: 'Pass', share: 70 },
  { title: 'Told by', share: 38 },
];

/** The eleven; the room's men first, and heavy. */
export function jobBlocks(flow: Flow, room: SheetRoom | null, report: Report): readonly Block[] {
  const roles = new Set(room?.roles ?? []);
  const row = (job: JobRow): Row => ({
    cells: [job.letter, job.name, job.aligns, job.move, job.run, job.pass, job.toldBy],
    strong: roles.has(job.role),
  });
  const rows = report.jobs.map(row);
  const sorted = [...rows.filter((one) => one.strong), ...rows.filter((one) => !one.strong)];
  return titled(flow, room === null ? 'Jobs' : `Jobs: ${room.name} first`, [tableBlock(flow, JOB_COLUMNS, sorted)]);
}

const TROUBLE: readonly CombinedStatus[] = ['conflict', 'two-manners', 'unresolved'];

/** Statuses worth a row for a man who is no lineman: one who is told once, or the same twice, has it in the job table. */
const WORTH_A_ROW: readonly CombinedStatus[] = [...TROUBLE, 'yields', 'either'];

/** What each pressure says, in a call of two: to every lineman of the sheet, and to others where the two differ. */
export function pairBlocks(flow: Flow, room: SheetRoom | null, report: Report): readonly Block[] {
  const [first, second] = report.sides;
  if (first === undefined || second === undefined) return [];
  const linemen = new Set(report.linemen.map((man) => man.role));
  const rows = report.pair
    .filter((man) => room === null || room.roles.includes(man.role))
    .filter((man) => linemen.has(man.role) || (WORTH_A_ROW.includes(man.status) && !man.shellGaveWay));
  if (rows.length === 0) return [];
  const columns: readonly Column[] = [
    { title: '', share: 22 },
    { title: `First: ${first.pressure}`, share: 184 },
    { title: `Second: ${second.pressure}`, share: 184 },
    { title: 'What stands', share: 104 },
    { title: 'Verdict', share: 56 },
  ];
  const row = (man: PairRow): Row => ({
    cells: [man.letter, man.first, man.second, standsText(man), man.verdict],
    strong: TROUBLE.includes(man.status),
  });
  return titled(flow, 'What each pressure says', [tableBlock(flow, columns, rows.map(row))]);
}

/** A job that is word for word one of the two is not said again. */
function standsText({ first, second, stands, status }: PairRow): string {
  if (TROUBLE.includes(status)) return 'not decided';
  if (status === 'same') return 'both';
  if (stands === first) return 'the first';
  return stands === second ? 'the second' : stands;
}
