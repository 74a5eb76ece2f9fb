import { describe, expect, it } from 'vitest';
import { ruleAt } from '../../../src/engine/align/ruleAt.ts';
import { asRoleId, type LookTest, type Spot } from '../../../src/engine/index.ts';
import { placeSpot } from '../../../src/engine/align/spots.ts';
import { factsOf, LOOKS, ROLES } from '../book.ts';

/** Tight end Y at 4 and flanker at 16 on the right; split end at 18 and slot at 9 on the left. */
const FACTS = factsOf(LOOKS['11 tight end']);
const RIGHT_END = asRoleId('RE');
const LEFT_END = asRoleId('LE');
const NOSE = asRoleId('N');

const surface = (count: number, side: 'mine' | 'left' | 'right' = 'mine'): LookTest => ({
  kind: 'bodies',
  side,
  compare: 'exactly',
  count,
});

/** From the spot back to the rule: the same 2 ft bodies as the way there (align.test.ts). */
describe('the rule that puts a man where he stands', () => {
  it.each<[string, typeof NOSE, number, number, number, Spot]>([
    ['5 technique', RIGHT_END, 3, 1, 3, { kind: 'technique', on: 'tackle', leverage: 'outside-foot', depth: 1 }],
    ['almost a 4', RIGHT_END, 2.7, 1, 3, { kind: 'technique', on: 'tackle', leverage: 'head', depth: 1 }],
    ['on the tight end', RIGHT_END, 4, 1, 3, { kind: 'technique', on: 'end', leverage: 'head', depth: 1 }],
    [
      '4i on the other side',
      LEFT_END,
      -2.35,
      0.8,
      2,
      { kind: 'technique', on: 'tackle', leverage: 'inside-foot', depth: 0.8 },
    ],
    ['where no tight end is', LEFT_END, -4.15, 1, 2, { kind: 'edge', offset: 1.5, depth: 1 }],
    [
      'over the guard at depth',
      LEFT_END,
      -1.35,
      4.5,
      2,
      { kind: 'technique', on: 'guard', leverage: 'head', depth: 4.5 },
    ],
    ['outside number one', LEFT_END, -19, 7, 2, { kind: 'receiver', number: 1, leverage: 'outside', depth: 7 }],
    ['head up on the slot', LEFT_END, -9.25, 5, 2, { kind: 'receiver', number: 2, leverage: 'head', depth: 5 }],
    ['deep, over nobody', RIGHT_END, 6, 12, 3, { kind: 'ball', offset: 6, depth: 12 }],
    ['across the ball', RIGHT_END, -1.35, 1, 3, { kind: 'ball', offset: -1.35, depth: 1 }],
  ])('%s', (_words, role, x, y, bodies, spot) => {
    const rule = ruleAt(role, { x, y }, ROLES, FACTS);
    expect(rule).toStrictEqual({ ok: true, value: { when: [surface(bodies)], spot } });
    // And the rule puts him there again, as near as a technique is one.
    const side = role === RIGHT_END ? 'right' : 'left';
    const back = placeSpot(spot, side, FACTS);
    if (!back.ok) throw new Error('The rule cannot be placed in the look it was read from');
    expect(Math.hypot(back.value.x - x, back.value.y - y)).toBeLessThan(0.34);
  });

  it.each<[string, number, number, Spot]>([
    ['head up on the snapper', 0.1, 1, { kind: 'technique', on: 'snapper', leverage: 'head', depth: 1 }],
    ['deep in the middle', 0, 12, { kind: 'ball', offset: 0, depth: 12 }],
  ])('a man of the middle: %s, by both surfaces', (_words, x, y, spot) => {
    expect(ruleAt(NOSE, { x, y }, ROLES, FACTS)).toStrictEqual({
      ok: true,
      value: { when: [surface(2, 'left'), surface(3, 'right')], spot },
    });
  });

  it('a man of the middle beside the ball: no rule can say it', () => {
    expect(ruleAt(NOSE, { x: 0.7, y: 1 }, ROLES, FACTS).ok).toBe(false);
  });
});

it('over a slot who may not catch, for he is covered, he is told from the last man: such a man has no number', () => {
  const covered = factsOf('line wr:X@-18 wr:H@-9 te:Y@4 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5');
  expect(covered.receivers.find(({ player }) => player === 'H')?.eligible).toBe(false);
  expect(ruleAt(LEFT_END, { x: -9, y: 5 }, ROLES, covered)).toMatchObject({
    ok: true,
    value: { spot: { kind: 'edge', depth: 5 } },
  });
});
