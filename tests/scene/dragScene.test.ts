import { describe, expect, it } from 'vitest';
import { buildDragScene, draggedShapes, type DraggedMan, type Shape } from '../../src/scene/index.ts';
import { board, ELEVEN } from './board.ts';
import { draw, roleAt } from './drawn.ts';

const analysis = board(ELEVEN);
const scene = draw(analysis);
const noseRole = roleAt('N');
const nose: DraggedMan = { kind: 'defender', role: noseRole };
const [player] = analysis.facts.players.values();
if (player === undefined) throw new Error('somebody plays offence');
const receiver: DraggedMan = { kind: 'offence', player: player.id };
const NOWHERE = { x: 0, y: 0 };

const find = (shapes: readonly Shape[], key: string): Shape | undefined => shapes.find((shape) => shape.key === key);
const keysIn = (shapes: readonly Shape[]): readonly string[] => shapes.map(({ key }) => key).toSorted();

describe('the picture of a drag', () => {
  it.each([[[nose]], [[receiver]], [[nose, receiver]], [[]]])(
    'is the whole picture while nobody has moved: %j',
    (men) => {
      const apart = buildDragScene(scene, men);
      const all = [...apart.still, ...draggedShapes(apart, () => NOWHERE)];
      expect(all.toSorted((a, b) => (a.key < b.key ? -1 : 1))).toEqual(
        scene.shapes.toSorted((a, b) => (a.key < b.key ? -1 : 1)),
      );
      expect(all).toHaveLength(scene.shapes.length);
    },
  );

  it('holds everything still when nobody is dragged', () => {
    expect(buildDragScene(scene, []).still).toEqual(scene.shapes);
  });

  it('takes a defender along with his letters and signs, and nobody else', () => {
    const apart = buildDragScene(scene, [nose]);
    const moved = draggedShapes(apart, () => ({ x: 2, y: 1 }));
    const letters = find(moved, `man/${noseRole}`);
    const before = find(scene.shapes, letters?.key ?? '');
    if (letters?.kind !== 'label' || before?.kind !== 'label') throw new Error('he has letters');
    expect(letters.at).toEqual({ x: before.at.x + 2, y: before.at.y + 1 });
    expect(moved.some(({ key }) => key.endsWith('/warning'))).toBe(true);
    expect(keysIn(moved).filter((key) => /^(man|offence)\//.test(key) && !key.startsWith(letters.key))).toEqual([]);
  });

  it('stretches his ways from where he is held: their ends stay', () => {
    const moved = draggedShapes(buildDragScene(scene, [nose]), () => ({ x: 2, y: 1 }));
    const ways = moved.flatMap((shape) => (shape.kind === 'path' && shape.key.startsWith('job/') ? [shape] : []));
    expect(ways.length).toBeGreaterThan(0);
    for (const way of ways) {
      const before = find(scene.shapes, way.key);
      if (before?.kind !== 'path') throw new Error('it is a way of the picture');
      expect(way.points.slice(1)).toEqual(before.points.slice(1));
      expect(way.points[0]?.x).toBe((before.points[0]?.x ?? NaN) + 2);
    }
  });

  it('takes a man of the offence along with all that is about him', () => {
    const moved = draggedShapes(buildDragScene(scene, [receiver]), () => ({ x: -1, y: 0 }));
    expect(moved.length).toBeGreaterThan(1);
    expect(moved.every(({ key }) => key.startsWith(`offence/${player.id}`))).toBe(true);
  });
});
