import type { CombinedStatus } from '../engine/index.ts';
import type { FindingRow, JobRow, LinemanRow, Report } from '../report/index.ts';
import { LEGEND, type LegendEntry } from '../scene/index.ts';
import { drawScene, sceneHeight } from './drawScene.ts';
import { artifact, tagged, type Block, type Flow } from './flow.ts';
import { FACES } from './page.ts';
import { lineHeight, type Face } from './pen.ts';
import { drawSign } from './signs.ts';
import { tableBlock, type Column, type Row } from './table.ts';
import type { PrintInput, Sheet } from './types.ts';

/** The picture takes at most this part of a page, and at least that one if it makes everything fit on one page. */
const PICTURE_SHARE = { most: 0.42, least: 0.31 } as const;

/** Space between two blocks. */
const BETWEEN = 6;

/** Everything on a sheet below its head. The picture gives way a little when that saves a page. */
export function drawSheet(flow: Flow, input: PrintInput, sheet: Sheet): void {
  const blocks = [
    legendBlock(flow),
    ...jobBlocks(flow, input, sheet.report),
    ...linemenBlocks(flow, sheet.report),
    ...findingBlocks(flow, sheet.report),
  ];
  const { top, bottom, width } = flow.area;
  const most = sceneHeight(sheet.scene, width, (bottom - top) * PICTURE_SHARE.most);
  const left = bottom - flow.y - 2 * BETWEEN - blocks.reduce((sum, block) => sum + block.height, 0);
  const least = Math.min(most, (bottom - top) * PICTURE_SHARE.least);
  drawPicture(flow, sheet, left < least ? most : Math.min(most, left));
  for (const block of blocks) block.draw();
}

function drawPicture(flow: Flow, { scene, flip, title }: Sheet, height: number): void {
  const { left, width } = flow.area;
  const alt = `Diagram of ${title.call} against ${title.look}. The tables below say the same in words.`;
  tagged(
    flow,
    flow.section,
    'Figure',
    () => {
      drawScene(flow.pen, scene, flip, { x: left, y: flow.y, width, height });
    },
    flow.pen.clean(alt),
  );
  flow.y += height + BETWEEN;
}

/** The key to the picture, in rows as full as they get. */
function legendBlock(flow: Flow): Block {
  const sample = { width: 18, height: 9 } as const;
  const { left, width } = flow.area;
  const rowHeight = sample.height + 1;
  const wide = (text: string) => sample.width + 2 + flow.pen.width(text, FACES.small);
  const total = LEGEND.reduce((sum, { text }) => sum + wide(text), 0);
  const step = Math.max(5, Math.min(12, (width - total) / Math.max(1, LEGEND.length - 1)));
  let [x, row] = [left, 0];
  const places = LEGEND.map(({ text }) => {
    if (x > left && x + wide(text) > left + width + 0.5) [x, row] = [left, row + 1];
    const place = { x, down: row * rowHeight };
    x += wide(text) + step;
    return place;
  });
  const height = (row + 1) * rowHeight + BETWEEN;
  const drawEntry = ({ text, scene }: LegendEntry, at: { x: number; down: number }) => {
    artifact(flow.pen, () => {
      drawScene(flow.pen, scene, false, { x: at.x, y: flow.y + at.down, ...sample });
    });
    tagged(flow, flow.section, 'P', () => {
      flow.pen.draw(text, FACES.small, at.x + sample.width + 2, flow.y + at.down + 0.4);
    });
  };
  return {
    height,
    draw: () => {
      flow.need(height);
      LEGEND.forEach((entry, index) => drawEntry(entry, places[index] ?? { x: left, down: 0 }));
      flow.y += height;
    },
  };
}

/** A heading, which stays with the beginning of what it heads. */
function headingBlock(flow: Flow, text: string, heads: Block): Block {
  const height = lineHeight(FACES.heading) + 2;
  return {
    height,
    draw: () => {
      flow.need(height + Math.min(40, heads.height));
      tagged(flow, flow.section, 'H2', () => {
        flow.pen.draw(flow.pen.clean(text), FACES.heading, flow.area.left, flow.y);
      });
      flow.y += height;
    },
  };
}

/** A table under its heading. */
function titled(flow: Flow, text: string, table: Block): readonly Block[] {
  return [headingBlock(flow, text, table), table, spaceBlock(flow, BETWEEN)];
}

/** Empty space. */
function spaceBlock(flow: Flow, height: number): Block {
  return {
    height,
    draw: () => {
      flow.y += height;
    },
  };
}

const JOB_COLUMNS: readonly Column[] = [
  { title: '', share: 22 },
  { title: 'Name', share: 82 },
  { title: 'Aligns', share: 98 },
  { title: 'Run', share: 104 },
  { title: 'Pass', share: 68 },
  { title: 'At the snap', share: 136 },
  { title: 'Told by', share: 38 },
];

/** The eleven; the room's men first, and heavy. */
function jobBlocks(flow: Flow, { room }: PrintInput, report: Report): readonly Block[] {
  const roles = new Set(room?.roles ?? []);
  const row = (job: JobRow): Row => ({
    cells: [job.letter, job.name, job.aligns, job.run, job.pass, job.job, job.toldBy],
    strong: roles.has(job.role),
  });
  const rows = report.jobs.map(row);
  const sorted = [...rows.filter((one) => one.strong), ...rows.filter((one) => !one.strong)];
  return titled(flow, room === null ? 'Jobs' : `Jobs: ${room.name} first`, tableBlock(flow, JOB_COLUMNS, sorted));
}

const TROUBLE: readonly CombinedStatus[] = ['conflict', 'two-manners', 'unresolved'];

/** What each pressure says to each lineman, in a call of two. */
function linemenBlocks(flow: Flow, report: Report): readonly Block[] {
  const [first, second] = report.sides;
  if (first === undefined || second === undefined || report.linemen.length === 0) return [];
  const columns: readonly Column[] = [
    { title: '', share: 22 },
    { title: 'Name', share: 82 },
    { title: `First: ${first.pressure}`, share: 180 },
    { title: `Second: ${second.pressure}`, share: 180 },
    { title: 'Verdict', share: 84 },
  ];
  const row = (man: LinemanRow): Row => ({
    cells: [man.letter, man.name, man.first, man.second, man.verdict],
    strong: TROUBLE.includes(man.status),
  });
  return titled(flow, 'Linemen: what each pressure says', tableBlock(flow, columns, report.linemen.map(row)));
}

function findingBlocks(flow: Flow, report: Report): readonly Block[] {
  const { findings, checked } = report;
  const count = findings.length === 1 ? '1 finding' : `${String(findings.length)} findings`;
  const blocks = findings.map((finding) => findingBlock(flow, finding));
  const [first] = blocks;
  return [
    ...(first === undefined ? [] : [headingBlock(flow, count, first)]),
    ...blocks,
    ...(checked.length === 0 ? [] : [paragraphBlock(flow, `Checked: ${checked.join('; ')}.`, FACES.small, 0)]),
  ];
}

/** A finding: its sign, what is wrong, and below it why it matters and what it follows from. */
function findingBlock(flow: Flow, finding: FindingRow): Block {
  const indent = 13;
  const reasons = [finding.matters, ...finding.why.map((each) => each.text)].filter((text) => text !== '');
  const why = reasons.length === 0 ? '' : `Why: ${reasons.map(asSentence).join(' ')}`;
  const parts = [
    paragraphBlock(flow, `${finding.title}: ${finding.text}`, FACES.strong, indent),
    paragraphBlock(flow, why, FACES.small, indent),
    spaceBlock(flow, 2),
  ];
  const height = parts.reduce((sum, part) => sum + part.height, 0);
  return {
    height,
    draw: () => {
      flow.need(Math.min(height, 4 * lineHeight(FACES.strong)));
      artifact(flow.pen, () => {
        drawSign(flow.pen, finding.severity, flow.area.left + 1, flow.y + 0.3, 9);
      });
      for (const part of parts) part.draw();
    },
  };
}

function asSentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

/** Words across the sheet, line by line, so that they can go over pages. */
function paragraphBlock(flow: Flow, text: string, face: Face, indent: number): Block {
  const lines = flow.pen.lines(text, face, flow.area.width - indent);
  const drawLine = (line: string) => {
    flow.need(lineHeight(face));
    tagged(flow, flow.section, 'P', () => {
      flow.pen.draw(line, face, flow.area.left + indent, flow.y);
    });
    flow.y += lineHeight(face);
  };
  return {
    height: lines.length * lineHeight(face),
    draw: () => lines.forEach(drawLine),
  };
}
