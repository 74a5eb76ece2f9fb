import { describe, expect, it } from 'vitest';
import { asRoleId, gapKey, positionAt, walkThrough, type WalkThrough } from '../../src/engine/index.ts';
import { buildWalkScene, shapesAt, type LabelShape, type Shape } from '../../src/scene/index.ts';
import { board, ELEVEN, gap } from './board.ts';
import { draw } from './drawn.ts';

const analysis = board(ELEVEN);
const walk = walkThrough(analysis, { kind: 'pass' });
const scene = draw(analysis);
const apart = buildWalkScene(scene, walk);

const letters = (shapes: readonly Shape[], start: string): readonly LabelShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'label' && shape.key.startsWith(start) ? [shape] : []));
const keysIn = (shapes: readonly Shape[]): readonly string[] => shapes.map(({ key }) => key);
const noseAt = (t: number) => letters(shapesAt(apart, t), 'man/N-1').find(({ text }) => text === 'N')?.at;

describe('the picture taken apart', () => {
  it('is the whole picture, but for the letters of owners who are not there yet', () => {
    const all = [...apart.still.shapes, ...shapesAt(apart, 99)];
    const missing = keysIn(scene.shapes).filter((key) => !keysIn(all).includes(key));
    expect(missing.every((key) => key.includes('/owner/'))).toBe(true);
    expect(new Set(keysIn(all)).size).toBe(all.length);
  });

  it('holds field, ways, zones and slots still, and moves all 22', () => {
    const moving = new Set(keysIn(shapesAt(apart, 0)).map((key) => key.split('/').slice(0, 2).join('/')));
    expect([...moving].filter((key) => key.startsWith('man/'))).toHaveLength(11);
    expect([...moving].filter((key) => key.startsWith('offence/'))).toHaveLength(11);
    expect(keysIn(apart.still.shapes).some((key) => /^(man|offence)\//.test(key))).toBe(false);
  });

  it('has everybody where he lines up at the snap', () => {
    for (const { aligned } of analysis.assignments) {
      const [letter] = letters(shapesAt(apart, 0), `man/${aligned.role.id}`);
      expect(letter?.at).toEqual({ x: aligned.x, y: aligned.y });
    }
  });

  it.each([0, 0.4, 1.1, 2.7])('has the nose where the engine has him %s s after the snap, his signs with him', (t) => {
    const track = walk.defence.find(({ role }) => role === asRoleId('N-1'));
    if (track === undefined) throw new Error('there is a nose');
    expect(noseAt(t)).toEqual(positionAt(track, t));
    const sign = (of: readonly Shape[]) => of.find(({ key }) => key.endsWith('/warning'));
    const [before, now] = [sign(shapesAt(apart, 0)), sign(shapesAt(apart, t))];
    if (before?.kind !== 'polygon' || now?.kind !== 'polygon') throw new Error('he is told two things');
    expect((now.points[0]?.y ?? 0) - (before.points[0]?.y ?? 0)).toBeCloseTo(positionAt(track, t).y - 1, 6);
  });
});

describe('a slot', () => {
  const inSlot = (of: WalkThrough['fills'][number], t: number): boolean =>
    keysIn(shapesAt(apart, t)).includes(`gap/${gapKey(of.gap)}/owner/${of.role}`);

  it('is empty until its owner is there, and then has his letter', () => {
    expect(walk.fills.length).toBeGreaterThan(3);
    for (const fill of walk.fills) {
      expect(inSlot(fill, fill.t - 0.05)).toBe(false);
      expect(inSlot(fill, fill.t)).toBe(true);
    }
  });

  it('stays empty where the man told two things does not come', () => {
    const nose = { role: asRoleId('N-1'), gap: gap('lA'), t: 0 };
    expect(walk.fills).not.toContainEqual(expect.objectContaining({ role: nose.role, gap: nose.gap }));
    expect(inSlot(nose, 99)).toBe(false);
  });
});

describe('at the passer', () => {
  const more: WalkThrough = {
    ...walk,
    moments: [
      { kind: 'thrown', t: 1.8, hot: 'left' },
      { kind: 'at-passer', t: 2.1, role: asRoleId('M-4'), free: true, thrown: true },
    ],
  };
  const shapes = (t: number) => shapesAt(buildWalkScene(scene, more), t).filter(({ key }) => key.startsWith('walk/'));

  it.each<readonly [t: number, kinds: readonly string[]]>([
    [1.7, []],
    [1.8, ['label']],
    [2.1, ['label', 'ellipse']],
  ])('%s s: %s', (t, kinds) => expect(shapes(t).map(({ kind }) => kind)).toEqual(kinds));

  it('the word says hot and stands on that side', () => {
    const [word] = letters(shapes(3), 'walk/');
    expect(word?.text).toBe('hot left');
    expect(word?.at.x).toBeLessThan(walk.throwsFrom?.x ?? -Infinity);
  });

  it('the picture is deep enough for whoever goes there', () => {
    expect(apart.still.bounds.top).toBeLessThan(-6.5);
  });
});
