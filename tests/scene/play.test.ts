import { describe, expect, it } from 'vitest';
import { asPlayerId, asRoleId, type RoleId } from '../../src/engine/index.ts';
import {
  buildScene,
  LAYERS,
  WHOLE_PICTURE,
  type LabelShape,
  type PathShape,
  type PolygonShape,
  type Scene,
  type SceneOptions,
} from '../../src/scene/index.ts';
import { board, ELEVEN, gap, rush, type Man } from './board.ts';

const NOSE = asRoleId('N-1');
const draw = (options: Partial<SceneOptions> = {}): Scene =>
  buildScene(board(ELEVEN), { ...WHOLE_PICTURE, ...options });
const alone = (man: Man): Scene => buildScene(board([man]), WHOLE_PICTURE);

const paths = (scene: Scene, role: RoleId): readonly PathShape[] =>
  scene.shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.target?.kind === 'defender' && shape.target.role === role ? [shape] : [],
  );
const labels = (scene: Scene, startsWith: string): readonly LabelShape[] =>
  scene.shapes.flatMap((shape) => (shape.kind === 'label' && shape.key.startsWith(startsWith) ? [shape] : []));
const slot = (scene: Scene, key: string): PolygonShape => {
  const found = scene.shapes.find((shape) => shape.key === `gap/${key}`);
  if (found?.kind !== 'polygon') throw new Error(`no slot ${key}`);
  return found;
};

describe('the whole picture', () => {
  const scene = draw();

  it('gives every shape a key of its own, from back to front by layer', () => {
    const keys = scene.shapes.map((shape) => shape.key);
    expect(new Set(keys).size).toBe(keys.length);
    const layers = scene.shapes.map((shape) => LAYERS.indexOf(shape.layer));
    expect(layers).toEqual(layers.toSorted((a, b) => a - b));
  });

  it('draws the offence as outlines and the defence as letters without one', () => {
    const outlines = scene.shapes.filter((shape) => shape.layer === 'offence' && shape.kind !== 'label');
    expect(outlines).toHaveLength(11);
    expect(outlines.filter((shape) => shape.kind === 'polygon')).toHaveLength(1);
    for (const shape of scene.shapes) {
      if (shape.key.startsWith('man/') && shape.kind === 'ellipse') expect(shape.line).toBeNull();
    }
    const letters = labels(scene, 'man/').filter((label) => label.layer === 'mark');
    expect(letters.map((label) => label.text).toSorted()).toEqual(ELEVEN.map((man) => man.letter).toSorted());
  });

  it('stands a man where he is aligned', () => {
    const nose = labels(scene, 'man/N-1').find((label) => label.text === 'N');
    expect(nose?.at).toEqual({ x: 0, y: 1 });
  });

  it('numbers the split receivers, light, and leaves the attached end to the surface', () => {
    const numbers = labels(scene, 'offence/').filter((label) => label.key.endsWith('/number'));
    expect(numbers.map((label) => [label.key, label.text])).toEqual([
      ['offence/X/number', '1'],
      ['offence/H/number', '2'],
      ['offence/Z/number', '1'],
    ]);
    expect(numbers.every((label) => label.faint)).toBe(true);
  });

  it('is the same to the byte when drawn again', () => {
    expect(JSON.stringify(draw())).toBe(JSON.stringify(scene));
  });
});

describe('gaps as slots', () => {
  const scene = draw();

  it('has one slot a gap of the look', () => {
    const slots = scene.shapes.filter((shape) => shape.kind === 'polygon' && shape.target?.kind === 'gap');
    expect(slots.map((shape) => shape.key).toSorted()).toEqual(
      ['gap/A left', 'gap/A right', 'gap/B left', 'gap/B right', 'gap/C left', 'gap/C right', 'gap/D right'].toSorted(),
    );
  });

  it.each([
    ['A left', ['N?']],
    ['A right', ['N?']],
    ['B left', ['W']],
    ['B right', ['M', 'S']],
    ['C left', ['LE']],
    ['D right', []],
  ])('%s holds %j', (key, letters) => {
    expect(labels(scene, `gap/${key}/owner`).map((label) => label.text)).toEqual(letters);
  });

  it('leaves an open gap empty, dashed and heavier than an owned one', () => {
    const open = slot(scene, 'D right');
    const owned = slot(scene, 'B left');
    expect([open.stroke, open.line]).toEqual(['dashed', 'gap-open']);
    expect([owned.stroke, owned.line]).toEqual(['solid', 'gap']);
    expect(open.width).toBeGreaterThan(owned.width);
  });

  it('keeps every letter inside its slot', () => {
    for (const label of labels(scene, 'gap/').filter((one) => one.key.includes('/owner/'))) {
      const box = slot(scene, label.key.slice('gap/'.length).split('/')[0] ?? '');
      const ys = box.points.map((point) => point.y);
      const xs = box.points.map((point) => point.x);
      expect(label.at.y).toBeGreaterThan(Math.min(...ys));
      expect(label.at.y).toBeLessThan(Math.max(...ys));
      expect(label.text.length * label.size * 0.6).toBeLessThan(Math.max(...xs) - Math.min(...xs));
    }
  });

  it.each([
    ['a passer under the snapper', 'line te:Y@4 wr:X@-17 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@0,-4 rb:B@0,-7'],
    ['a wing and a sniffing back', 'line te:Y@4 te:U@5.2,-1.4 rb:S@2,-2 wr:X@-17 qb:Q@0,-5 rb:B@-1.5,-5'],
  ])('moves the row back behind %s', (_name, look) => {
    const { shapes } = buildScene(board(ELEVEN, { look }), WHOLE_PICTURE);
    const boxes = shapes.flatMap((shape) =>
      shape.kind === 'polygon' && shape.target?.kind === 'gap' && !shape.key.endsWith('lit') ? [shape.points] : [],
    );
    const players = shapes.flatMap((shape) =>
      shape.kind === 'ellipse' && shape.layer === 'offence' ? [{ at: shape.at, radius: shape.rx }] : [],
    );
    expect(boxes.length).toBeGreaterThan(6);
    for (const points of boxes) {
      const [left, right] = [Math.min(...points.map((p) => p.x)), Math.max(...points.map((p) => p.x))];
      const [top, bottom] = [Math.min(...points.map((p) => p.y)), Math.max(...points.map((p) => p.y))];
      for (const { at, radius } of players) {
        const nearX = Math.min(right, Math.max(left, at.x));
        const nearY = Math.min(bottom, Math.max(top, at.y));
        expect(Math.hypot(at.x - nearX, at.y - nearY)).toBeGreaterThan(radius);
      }
    }
  });
});

describe('a man who is told two jobs', () => {
  const scene = draw();
  const [first, second] = paths(scene, NOSE);

  it('shows both, the first single and the second double, each into its gap and numbered', () => {
    expect(paths(scene, NOSE)).toHaveLength(2);
    expect([first?.stroke, second?.stroke]).toEqual(['solid', 'double']);
    expect(first?.points.at(-1)?.x).toBeGreaterThan(0);
    expect(second?.points.at(-1)?.x).toBeLessThan(0);
    expect(labels(scene, 'job/N-1').map((label) => label.text)).toEqual(['1', '2']);
  });

  it('carries an octagon with "!"', () => {
    const sign = scene.shapes.find((shape) => shape.key === 'man/N-1/warning');
    expect(sign?.kind === 'polygon' && sign.points.length).toBe(8);
    expect(labels(scene, 'man/N-1/warning').map((label) => label.text)).toEqual(['!']);
  });

  it('a man told the same gap in two ways has a triangle instead', () => {
    const two = alone({
      letter: 'N',
      room: 'line',
      x: 0,
      y: 1,
      status: 'two-manners',
      first: rush([gap('rA')]),
      second: rush([gap('rA')], { manner: 'slant' }),
    });
    const sign = two.shapes.find((shape) => shape.key === 'man/N-0/warning');
    expect(sign?.kind === 'polygon' && sign.points.length).toBe(3);
    const ends = paths(two, asRoleId('N-0')).map((path) => path.points.at(-1)?.x);
    expect(new Set(ends).size).toBe(2);
  });

  it('a man told once, or twice the same, has no sign of trouble', () => {
    expect(scene.shapes.filter((shape) => shape.key.endsWith('/warning'))).toHaveLength(1);
  });
});

describe('who told him', () => {
  it.each([
    ['the first only', { first: rush([gap('rA')]) }, ['1']],
    ['the second only', { second: rush([gap('rA')]) }, ['2']],
    ['both the same', { first: rush([gap('rA')]), second: rush([gap('rA')]), status: 'same' as const }, ['1+2']],
    ['nobody', { job: rush([gap('rA')]) }, []],
  ])('%s', (_name, told, tags) => {
    const scene = alone({ letter: 'E', room: 'line', x: 2, y: 1, ...told });
    expect(labels(scene, 'man/E-0/told').map((label) => label.text)).toEqual(tags);
  });

  it('says nothing in a call of one pressure, where it would say it of everybody', () => {
    const scene = buildScene(board(ELEVEN, { pair: false }), WHOLE_PICTURE);
    expect(scene.shapes.filter((shape) => shape.key.endsWith('/told'))).toEqual([]);
  });

  it('marks the force with an F', () => {
    expect(labels(draw(), 'man/J-6/force').map((label) => label.text)).toEqual(['F']);
  });
});

describe('rooms and light', () => {
  it("draws the other rooms' men and paths light, and the offence too", () => {
    const scene = draw({ room: 'line' });
    const line = new Set(ELEVEN.flatMap((man, index) => (man.room === 'line' ? [`${man.letter}-${index}`] : [])));
    for (const shape of scene.shapes) {
      if (shape.target?.kind === 'defender') expect(shape.faint).toBe(!line.has(shape.target.role));
      if (shape.target?.kind === 'offence') expect(shape.faint).toBe(true);
    }
  });

  it('never draws an open gap light: it is everybody’s', () => {
    const open = slot(draw({ room: 'secondary' }), 'D right');
    expect(open.faint).toBe(false);
  });

  it('rings the men and gaps of a finding with a double line', () => {
    const scene = draw({ lit: { roles: [NOSE], players: [], gaps: [gap('rD')] } });
    const lit = scene.shapes.filter((shape) => shape.key.endsWith('/lit'));
    expect(lit.map((shape) => shape.key).toSorted()).toEqual(['gap/D right/lit', 'man/N-1/lit']);
    for (const shape of lit) expect(shape.kind !== 'label' && shape.stroke).toBe('double');
    expect(draw().shapes.some((shape) => shape.key.endsWith('/lit'))).toBe(false);
  });
});

describe('a smaller picture', () => {
  it('shows the offence and the line only, without letters', () => {
    const { shapes } = draw({ detail: 'mini' });
    expect(shapes.some((shape) => shape.kind === 'label')).toBe(false);
    expect(shapes.some((shape) => shape.target !== null && shape.target.kind !== 'offence')).toBe(false);
    expect(shapes.filter((shape) => shape.target?.kind === 'offence')).toHaveLength(11);
    expect(shapes.length).toBeLessThan(30);
  });
});

describe('a man without a place to go', () => {
  it.each<[string, Man]>([
    ['nothing to do', { letter: 'E', room: 'line', x: 2, y: 1 }],
    ['a gap this look does not have', { letter: 'E', room: 'line', x: 2, y: 1, first: rush([gap('lE')]) }],
    [
      'a receiver who is not there',
      {
        letter: 'C',
        room: 'secondary',
        x: 2,
        y: 7,
        job: { kind: 'man', receiver: asPlayerId('nobody'), run: { fits: [], firm: false, support: null } },
      },
    ],
  ])('is still drawn: %s', (_name, man) => {
    const scene = alone(man);
    const letters = labels(scene, 'man/').filter((label) => label.layer === 'mark');
    expect(letters.map((label) => label.text)).toEqual([man.letter]);
    expect(paths(scene, asRoleId(`${man.letter}-0`))).toEqual([]);
    for (const shape of scene.shapes) expect(JSON.stringify(shape)).not.toContain('null,"y"');
  });
});
