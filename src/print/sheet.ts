import { BETWEEN } from './blocks.ts';
import { briefBlocks } from './brief.ts';
import { coverageBlocks } from './coverage.ts';
import { drawScene, sceneHeight } from './drawScene.ts';
import { otherFindings } from './findings.ts';
import { tagged, type Flow } from './flow.ts';
import { legendBlock } from './legendBlock.ts';
import { playBlocks } from './plays.ts';
import { jobBlocks, pairBlocks } from './tables.ts';
import type { PrintInput, Sheet } from './types.ts';

/** The picture takes at most this part of a page, and at least that one if it makes everything fit on one page. */
const PICTURE_SHARE = { most: 0.42, least: 0.24 } as const;

/**
 * Everything on a sheet below its head: what decides, the picture, the jobs, and then the rest. The picture gives way a little
 * when that saves a page. A call that is not run against this look has no coverage and no plays to judge.
 */
export function drawSheet(flow: Flow, input: PrintInput, sheet: Sheet): void {
  const { report, scene } = sheet;
  const { room } = input;
  const judged = report.verdict !== 'left-out';
  const before = briefBlocks(flow, report);
  const after = [
    legendBlock(flow, scene),
    ...jobBlocks(flow, room, report),
    ...pairBlocks(flow, room, report),
    ...(judged ? coverageBlocks(flow, room, report) : []),
    ...(judged ? playBlocks(flow, report) : []),
    ...otherFindings(flow, room, report),
  ];
  const { top, bottom, width } = flow.area;
  const most = sceneHeight(scene, width, (bottom - top) * PICTURE_SHARE.most);
  const words = [...before, ...after].reduce((sum, block) => sum + block.height, 0);
  const left = bottom - flow.y - 2 * BETWEEN - words;
  const least = Math.min(most, (bottom - top) * PICTURE_SHARE.least);
  for (const block of before) block.draw();
  drawPicture(flow, sheet, left < least ? most : Math.min(most, left));
  for (const block of after) block.draw();
}

function drawPicture(flow: Flow, { scene, flip, title }: Sheet, height: number): void {
  flow.need(height);
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
