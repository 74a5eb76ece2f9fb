import { describe, expect, it } from 'vitest';
import { asPlayerId, fact, type Analysis, type Answer, type RoleId } from '../../src/engine/index.ts';
import { dashesOf } from '../../src/scene/index.ts';
import { draw, labels, paths, rings, roleAt } from './drawn.ts';
import { board, drop, ELEVEN, type Man } from './board.ts';

const answer = (player: string, by: RoleId | null): Answer => ({
  player: asPlayerId(player),
  as: player === 'B' ? { kind: 'back' } : { kind: 'number', side: 'left', number: 1 },
  by,
  how: by === null ? null : 'zone',
  because: fact('said by hand'),
  proof: null,
});

describe('who answers each receiver', () => {
  const analysis: Analysis = {
    ...board(ELEVEN),
    answers: [answer('X', roleAt('LC')), answer('Z', roleAt('RC')), answer('Y', null), answer('B', roleAt('W'))],
  };

  it('is said beside him only when asked for, light, in the letter of the man', () => {
    expect(labels(draw(analysis), '/answer')).toEqual([]);
    const said = labels(draw(analysis, { answers: true }), '/answer');
    expect(said.map(({ key, text }) => [key, text])).toEqual([
      ['offence/X/answer', '(LC)'],
      ['offence/Z/answer', '(RC)'],
      ['offence/B/answer', '(W)'],
    ]);
    expect(said.every((label) => label.faint)).toBe(true);
  });

  it('stands clear of every circle', () => {
    const scene = draw(analysis, { answers: true });
    const circles = rings(scene, 'offence/').filter((ring) => ring.layer === 'offence');
    for (const { at, text, size } of labels(scene, '/answer')) {
      const half = text.length * size * 0.29;
      for (const circle of circles) {
        const near = Math.max(0, Math.abs(circle.at.x - at.x) - half);
        expect(Math.hypot(near, circle.at.y - at.y)).toBeGreaterThan(circle.rx);
      }
    }
  });

  it('a receiver nobody answers is ringed always, outside his circle, broken and heavy like an open gap', () => {
    for (const room of ['line', 'secondary', null] as const) {
      const open = rings(draw(analysis, { room }), 'offence/').filter((ring) => ring.key.endsWith('/open'));
      expect(open.map((ring) => ring.key)).toEqual(['offence/Y/open']);
      expect(open[0]).toMatchObject({ stroke: 'dashed', line: 'gap-open', faint: false });
      expect(open[0]?.rx).toBeGreaterThan(0.47);
    }
  });

  it('his number stands outside the ring', () => {
    const open = draw({ ...analysis, answers: [answer('X', null)] });
    const [ring] = rings(open, 'offence/X/open');
    const [number] = labels(open, 'offence/X/number');
    expect((ring?.at.y ?? 0) - (number?.at.y ?? 0)).toBeGreaterThan((ring?.ry ?? 0) + (number?.size ?? 0) / 2);
  });
});

describe('motion', () => {
  const moving = (to: { x: number; y: number }): Analysis => {
    const before = board(ELEVEN);
    const { look } = before.setup;
    const players = new Map(before.facts.players);
    const man = players.get(asPlayerId('H'));
    if (man !== undefined) players.set(man.id, { ...man, ...to });
    return {
      ...before,
      setup: { ...before.setup, look: { ...look, motion: { player: asPlayerId('H'), to } } },
      facts: { ...before.facts, players },
    };
  };

  it('is a thin dash-dot line from an empty ring where he was set to where he is', () => {
    const scene = draw(moving({ x: 7, y: -1.5 }));
    const [line] = paths(scene, 'motion/');
    expect(line).toMatchObject({ stroke: 'dash-dot', ink: 'offence' });
    expect(line?.width).toBeLessThan(0.1);
    const [from, to] = line?.points ?? [];
    expect(from?.x).toBeGreaterThan(-9);
    expect(from?.x).toBeLessThan(-8);
    expect(to?.x).toBeGreaterThan(6);
    expect(to?.x).toBeLessThan(7);
    expect(rings(scene, 'motion/H/set')[0]?.at).toEqual({ x: -9, y: -1.5 });
    const circle = rings(scene, 'offence/H')[0];
    expect(circle?.at).toEqual({ x: 7, y: -1.5 });
  });

  it('is not drawn where nobody moves, or nobody moves anywhere', () => {
    expect(draw(board(ELEVEN)).shapes.some((shape) => shape.key.startsWith('motion/'))).toBe(false);
    expect(draw(moving({ x: -9, y: -1.4 })).shapes.some((shape) => shape.key.startsWith('motion/'))).toBe(false);
  });

  it('has a pattern of its own: a long dash and a short one', () => {
    const [dash = 0, , dot = 0] = dashesOf('dash-dot') ?? [];
    expect(dash).toBeGreaterThan(3 * dot);
    expect(dashesOf('dash-dot')).toHaveLength(4);
  });
});

describe('one zone, several men', () => {
  it('has their rings side by side, in the order in which they stand', () => {
    const men: readonly Man[] = [
      { letter: 'W', room: 'linebackers', x: 1.6, y: 4.5, job: drop('hook', 'middle') },
      { letter: 'M', room: 'linebackers', x: -1.6, y: 4.5, job: drop('hook', 'middle') },
    ];
    const scene = draw(board(men));
    const [will] = rings(scene, 'job/W-0');
    const [mike] = rings(scene, 'job/M-1');
    expect(mike?.at.x).toBeLessThan(-1);
    expect(will?.at.x).toBeGreaterThan(1);
    expect(will?.at.y).toBe(mike?.at.y);
  });
});

describe('an either-or call', () => {
  it('numbers nobody: all of them play the half that is run', () => {
    const both = board(ELEVEN);
    const choice = { ran: 'first', mustHear: [], because: fact('said by hand') } as const;
    expect(labels(draw(both), '/told').length).toBeGreaterThan(0);
    expect(labels(draw({ ...both, choice }), '/told')).toEqual([]);
  });
});
