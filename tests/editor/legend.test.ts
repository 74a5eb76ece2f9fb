import { describe, expect, it } from 'vitest';
import { buildScene, WHOLE_PICTURE, type PathShape, type Scene } from '../../src/scene/index.ts';
import { LEGEND } from '../../src/editor/legend.ts';
import { createAnalyst } from '../../src/store/index.ts';
import { demo, demoStore, valueOf } from '../store/demo.ts';

/** A line as a reader tells it from others: colour, pattern and end. A double line is its plain one, told by the second. */
function kindOf({ ink, stroke, tip }: PathShape): string {
  return `${ink} ${stroke === 'double' ? 'solid' : stroke} ${tip}`;
}

function jobLines({ shapes }: Scene): readonly PathShape[] {
  return shapes.filter((shape): shape is PathShape => shape.kind === 'path' && shape.layer === 'job');
}

describe('the legend', () => {
  it('explains every line that a job of the demo is drawn with', () => {
    const store = demoStore();
    const explained = new Set(LEGEND.flatMap(({ picture }) => jobLines(picture)).map(kindOf));
    const analyst = createAnalyst();
    const drawn = demo().calls.flatMap((call) => {
      store.setBoard({ front: call.front, first: call.first, second: call.second, turn: call.turn });
      return demo().looks.flatMap(({ id }) =>
        jobLines(buildScene(valueOf(analyst.inLook(store.get(), id)), WHOLE_PICTURE)).map(kindOf),
      );
    });
    expect(drawn.length).toBeGreaterThan(1_000);
    expect([...new Set(drawn)].filter((kind) => !explained.has(kind))).toStrictEqual([]);
  });
});
