import { BY_RULE, type DutyRow, type ProtectionRow, type Report, type RunRow } from '../report/index.ts';
import { spaceBlock, titled } from './blocks.ts';
import type { Block, Flow } from './flow.ts';
import { tableBlock, type Column, type Row } from './table.ts';

const RUN_COLUMNS: readonly Column[] = [
  { title: 'Run', share: 136 },
  { title: 'Where it goes, and who is there', share: 254 },
  { title: 'Read, not blocked, to spare', share: 160 },
];

const PROTECTION_COLUMNS: readonly Column[] = [
  { title: 'Protection', share: 136 },
  { title: 'Who comes free', share: 164 },
  { title: 'Who is blocked', share: 250 },
];

/** What the look is known for against this call, a row each. */
export function playBlocks(flow: Flow, { runs, protections }: Report): readonly Block[] {
  const tables = [
    ...(runs.length === 0 ? [] : [tableBlock(flow, RUN_COLUMNS, runs.map(runRow))]),
    ...(runs.length === 0 || protections.length === 0 ? [] : [spaceBlock(flow, 3)]),
    ...(protections.length === 0 ? [] : [tableBlock(flow, PROTECTION_COLUMNS, protections.map(protectionRow))]),
  ];
  return titled(flow, `What this look is known for. ${BY_RULE}`, tables);
}

function runRow(run: RunRow): Row {
  const name = run.passOption ? `${run.name}, with a pass` : run.name;
  const duty = ({ what, by }: DutyRow) => `${what}: ${by}`;
  return {
    cells: [name, run.here ? run.duties.map(duty).join('; ') : run.headline, run.notes.join('; ')],
    strong: run.open,
  };
}

function protectionRow({ name, headline, blocks, here }: ProtectionRow): Row {
  const blocked = blocks.map(({ rusher, blocker }) => `${rusher} by ${blocker}`).join(', ');
  return { cells: [name, headline, here ? blocked : ''], strong: false };
}
