import { legendOf, type LegendEntry, type Scene } from '../scene/index.ts';
import { BETWEEN } from './blocks.ts';
import { drawScene } from './drawScene.ts';
import { artifact, tagged, type Block, type Flow } from './flow.ts';
import { FACES } from './page.ts';

const SAMPLE = { width: 18, height: 9 } as const;

/** The key to the signs of a picture, in rows as full as they get. */
export function legendBlock(flow: Flow, scene: Scene): Block {
  const { left, width } = flow.area;
  const entries = legendOf(scene);
  const rowHeight = SAMPLE.height + 1;
  const wide = (text: string) => SAMPLE.width + 2 + flow.pen.width(text, FACES.small);
  const total = entries.reduce((sum, { text }) => sum + wide(text), 0);
  const step = Math.max(5, Math.min(12, (width - total) / Math.max(1, entries.length - 1)));
  let [x, row] = [left, 0];
  const places = entries.map(({ text }) => {
    if (x > left && x + wide(text) > left + width + 0.5) [x, row] = [left, row + 1];
    const place = { x, down: row * rowHeight };
    x += wide(text) + step;
    return place;
  });
  const height = entries.length === 0 ? 0 : (row + 1) * rowHeight + BETWEEN;
  return {
    height,
    draw: () => {
      flow.need(height);
      entries.forEach((entry, index) => drawEntry(flow, entry, places[index] ?? { x: left, down: 0 }));
      flow.y += height;
    },
  };
}

function drawEntry(flow: Flow, { text, scene }: LegendEntry, at: { readonly x: number; readonly down: number }): void {
  artifact(flow.pen, () => {
    drawScene(flow.pen, scene, false, { x: at.x, y: flow.y + at.down, ...SAMPLE });
  });
  tagged(flow, flow.section, 'P', () => {
    flow.pen.draw(text, FACES.small, at.x + SAMPLE.width + 2, flow.y + at.down + 0.4);
  });
}
