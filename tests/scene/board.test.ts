import { describe, expect, it } from 'vitest';
import { PLACES, type Place } from '../../src/engine/index.ts';
import {
  buildScene,
  flipScene,
  LIGHT_THEME,
  PAPER_THEME,
  toSvg,
  turned,
  WHOLE_PICTURE,
  type PathShape,
  type Scene,
  type View,
} from '../../src/scene/index.ts';
import { board, ELEVEN, type Man } from './board.ts';

const draw = (view: View = 'players', spot: Place = 'middle'): Scene =>
  buildScene(board(ELEVEN, { spot }), { ...WHOLE_PICTURE, view });
const lines = (scene: Scene, startsWith: string): readonly PathShape[] =>
  scene.shapes.flatMap((shape) => (shape.kind === 'path' && shape.key.startsWith(startsWith) ? [shape] : []));

describe('the field', () => {
  it.each(PLACES)('is 160 ft wide with the ball on the %s (NFL Rule 1-1-1; NCAA Rule 1-2-1)', (spot) => {
    const [left, right] = lines(draw('field', spot), 'sideline/').map((line) => line.points[0]?.x ?? 0);
    expect((right ?? 0) - (left ?? 0)).toBeCloseTo(160 / 3, 6);
  });

  it('has high-school hash marks a third of the width from each sideline (NFHS Rule 1-2-3, from memory)', () => {
    const scene = draw('field', 'left');
    const middles = new Set(
      lines(scene, 'hash/').map(({ points }) => (((points[0]?.x ?? 0) + (points[1]?.x ?? 0)) / 2).toFixed(3)),
    );
    // The ball lies on the left hash, so the right one is 53 ft 4 in away.
    expect([...middles].toSorted()).toEqual([(0).toFixed(3), (160 / 9).toFixed(3)].toSorted());
  });

  it('has a line every five yards and a short mark every yard (NCAA Rule 1-2-1)', () => {
    const scene = draw();
    const ys = lines(scene, 'yard-line/').map((line) => line.points[0]?.y ?? NaN);
    expect(ys.length).toBeGreaterThan(3);
    expect(ys.every((y) => Number.isInteger(y) && y % 5 === 0)).toBe(true);
    const marks = lines(scene, 'hash/0/').map((line) => line.points[0]?.y ?? NaN);
    expect(marks.slice(1).every((y, index) => Math.abs(y - (marks[index] ?? 0) - 1) < 1e-9)).toBe(true);
  });
});

describe('the part shown', () => {
  it('players: everybody, with 1.5 yd about the outermost', () => {
    const { bounds } = draw('players');
    const everybody: readonly { x: number; y: number }[] = [...ELEVEN, { x: -17, y: -0.6 }, { x: 0, y: -5 }];
    for (const { x, y } of everybody) {
      expect(x - bounds.left).toBeGreaterThanOrEqual(1.5);
      expect(bounds.right - x).toBeGreaterThanOrEqual(1.5);
      expect(y - bounds.top).toBeGreaterThanOrEqual(1.5);
      expect(bounds.bottom - y).toBeGreaterThanOrEqual(1.5);
    }
  });

  it('players: the zones too', () => {
    const { shapes, bounds } = draw('players');
    for (const shape of shapes) {
      if (shape.kind === 'ellipse') expect(shape.at.y + shape.ry).toBeLessThan(bounds.bottom);
    }
  });

  it('box: nine yards to each side of the ball', () => {
    const { bounds } = draw('box');
    expect([bounds.left, bounds.right]).toEqual([-9, 9]);
  });

  it('field: from sideline to sideline', () => {
    const { bounds } = draw('field', 'right');
    expect(bounds.right - bounds.left).toBeGreaterThan(160 / 3);
    expect(bounds.right - bounds.left).toBeLessThan(160 / 3 + 2);
  });
});

describe('turning the board', () => {
  const scene = draw();
  const flipped = flipScene(scene);

  it('is half a turn: what was left and far is right and near', () => {
    expect(turned({ x: 3, y: -2 })).toEqual({ x: -3, y: 2 });
    expect(flipped.bounds).toEqual({
      left: -scene.bounds.right,
      right: -scene.bounds.left,
      top: -scene.bounds.bottom,
      bottom: -scene.bounds.top,
    });
  });

  it('is never a mirror: turning keeps the hand of every three points', () => {
    const hand = (points: readonly { x: number; y: number }[]): number => {
      const [a, b, c] = points;
      if (a === undefined || b === undefined || c === undefined) return 0;
      return Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
    };
    scene.shapes.forEach((shape, index) => {
      const other = flipped.shapes[index];
      if (shape.kind === 'polygon' && other?.kind === 'polygon') expect(hand(other.points)).toBe(hand(shape.points));
    });
  });

  it('keeps words, keys and order, and twice is back again', () => {
    const words = (one: Scene) => one.shapes.map((shape) => (shape.kind === 'label' ? shape.text : shape.key));
    expect(words(flipped)).toEqual(words(scene));
    expect(flipScene(flipped)).toEqual(scene);
  });
});

describe('as SVG', () => {
  it('is one document of the asked width, in the proportions of the scene', () => {
    const scene = draw();
    const svg = toSvg(scene, LIGHT_THEME, { flip: false, width: 800 });
    const [, width, height] = /width="([\d.]+)" height="([\d.]+)"/.exec(svg) ?? [];
    const { left, right, top, bottom } = scene.bounds;
    expect(Number(width)).toBe(800);
    expect(Number(height) / 800).toBeCloseTo((bottom - top) / (right - left), 3);
    expect(svg.match(/<svg/g)).toHaveLength(1);
    expect(svg.endsWith('</svg>')).toBe(true);
  });

  it('holds every label, upright, turned or not', () => {
    const scene = draw();
    for (const flip of [false, true]) {
      const svg = toSvg(scene, PAPER_THEME, { flip, width: 800 });
      const said = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((match) => match[1]);
      expect(said).toEqual(scene.shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])));
      expect(svg).not.toContain('rotate');
    }
  });

  it.each([
    ['<script>alert(1)</script>', '&lt;script&gt;alert(1)&lt;/script&gt;'],
    ["\"/><x onload='y'", '&quot;/&gt;&lt;x onload=&#39;y&#39;'],
    ['a&b]]>', 'a&amp;b]]&gt;'],
    ['n\u0000u\u0008l', 'nul'],
    ['half \uD800 pair', 'half  pair'],
    ['\uFFFEnot a character', 'not a character'],
    ['\u{1F600} fine', '\u{1F600} fine'],
  ])('escapes %j', (letter, expected) => {
    const man: Man = { letter, room: 'line', x: 0, y: 1 };
    const svg = toSvg(buildScene(board([man]), WHOLE_PICTURE), LIGHT_THEME, { flip: false, width: 100 });
    expect(svg).toContain(`>${expected}</text>`);
    expect(svg).not.toMatch(/<(script|x)/);
  });

  it('uses presentation attributes only: no script, style, link or picture', () => {
    const svg = toSvg(draw(), LIGHT_THEME, { flip: false, width: 100 });
    const names = new Set([...svg.matchAll(/<([a-z]+)/g)].map((match) => match[1]));
    expect([...names].toSorted()).toEqual(['ellipse', 'path', 'svg', 'text']);
    expect(svg).not.toMatch(/\bstyle=|href|\bon[a-z]+=|url\(/);
  });
});
