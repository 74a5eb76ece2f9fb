import { describe, expect, it } from 'vitest';
import { align } from '../../../src/engine/align/align.ts';
import { placeSpot } from '../../../src/engine/align/spots.ts';
import {
  asFrontId,
  asLookId,
  asRoleId,
  type Aligned,
  type AlignRule,
  type Front,
  type LookTest,
  type Side,
  type Spot,
} from '../../../src/engine/index.ts';
import { factsOf, LOOKS, ODD, ROLES, say, sayAll } from '../book.ts';

/** Tight end Y at 4 and flanker at 16 on the right; split end at 18 and slot at 9 on the left. */
const FACTS = factsOf(LOOKS['11 tight end']);

const technique = (
  on: (Spot & { kind: 'technique' })['on'],
  leverage: (Spot & { kind: 'technique' })['leverage'],
): Spot => ({
  kind: 'technique',
  on,
  leverage,
  depth: 0.8,
});
const receiver = (number: number, leverage: 'inside' | 'head' | 'outside'): Spot => ({
  kind: 'receiver',
  number,
  leverage,
  depth: 7,
});

/*
 * Leverage offsets follow from 2 ft bodies: a foot is 1/3 yd, a whole man 2/3. A yard inside or outside a receiver, half way
 * to him for an apex: common practice, no source.
 */
const PLACED: readonly (readonly [name: string, spot: Spot, side: Side, x: number, y: number])[] = [
  ['head up on the snapper', technique('snapper', 'head'), 'right', 0, 0.8],
  ['shaded on the snapper', technique('snapper', 'outside-foot'), 'left', -0.333, 0.8],
  ['2i', technique('guard', 'inside-foot'), 'right', 1, 0.8],
  ['3', technique('guard', 'outside-foot'), 'left', -1.667, 0.8],
  ['a man inside the tackle', technique('tackle', 'inside'), 'right', 2, 0.8],
  ['4', technique('tackle', 'head'), 'left', -2.667, 0.8],
  ['5', technique('tackle', 'outside-foot'), 'right', 3, 0.8],
  ['5 on the other side', technique('tackle', 'outside-foot'), 'left', -3, 0.8],
  ['a man outside the tight end', technique('end', 'outside'), 'right', 4.667, 0.8],
  ['outside the last man, tight end there', technique('last', 'outside-foot'), 'right', 4.333, 0.8],
  ['outside the last man, none there', technique('last', 'outside-foot'), 'left', -3, 0.8],
  ['on the edge of the tight end', { kind: 'edge', offset: 1, depth: 1 }, 'right', 5, 1],
  ['on the edge of the tackle', { kind: 'edge', offset: 1, depth: 1 }, 'left', -3.667, 1],
  ['outside number one', receiver(1, 'outside'), 'right', 17, 7],
  ['outside number one, the other side', receiver(1, 'outside'), 'left', -19, 7],
  ['inside number one', receiver(1, 'inside'), 'left', -17, 7],
  ['head up on number two', receiver(2, 'head'), 'left', -9, 7],
  ['apex of number two', { kind: 'apex', number: 2, depth: 4.5 }, 'left', -5.833, 4.5],
  ['apex of the attached number two: on him', { kind: 'apex', number: 2, depth: 4.5 }, 'right', 4, 4.5],
  ['off the ball', { kind: 'ball', offset: 6, depth: 11 }, 'right', 6, 11],
  ['off the ball, the other side', { kind: 'ball', offset: 6, depth: 11 }, 'left', -6, 11],
  ['across the ball', { kind: 'ball', offset: -2, depth: 5 }, 'left', 2, 5],
];

const NOT_PLACED: readonly (readonly [spot: Spot, side: Side | null, reason: string])[] = [
  [technique('end', 'head'), 'left', 'there is no attached tight end on the left'],
  [technique('wing', 'head'), 'right', 'there is no wing on the right'],
  [receiver(3, 'head'), 'right', 'there is no receiver number 3 on the right'],
  [{ kind: 'apex', number: 3, depth: 4 }, 'left', 'there is no receiver number 3 on the left'],
  [technique('guard', 'head'), null, 'he stands in the middle and has no side of his own'],
  [technique('snapper', 'outside-foot'), null, 'he stands in the middle and has no side of his own'],
  [{ kind: 'ball', offset: 2, depth: 5 }, null, 'he stands in the middle and has no side of his own'],
  [{ kind: 'edge', offset: 2, depth: 5 }, null, 'he stands in the middle and has no side of his own'],
];

describe('a spot of a rule, in a look', () => {
  it.each(PLACED)('%s', (_name, spot, side, x, y) => {
    const placed = placeSpot(spot, side, FACTS);
    if (!placed.ok) throw new Error(say(placed.problem));
    expect(placed.value.x).toBeCloseTo(x, 3);
    expect(placed.value.y).toBe(y);
  });

  it.each(NOT_PLACED)('%o on %s: %s', (spot, side, reason) => {
    const placed = placeSpot(spot, side, FACTS);
    expect(placed.ok ? placed.value : say(placed.problem)).toBe(reason);
  });

  it.each([
    [technique('snapper', 'head'), 0.8],
    [{ kind: 'ball', offset: 0, depth: 5 }, 5],
  ] as const)('a man in the middle can stand at %o', (spot, y) => {
    expect(placeSpot(spot, null, FACTS)).toEqual({ ok: true, value: { x: 0, y } });
  });
});

const at = (offset: number, ...when: readonly LookTest[]): AlignRule => ({
  when,
  spot: { kind: 'ball', offset, depth: 5 },
});
const bodies = (side: 'mine' | 'other', count: number): LookTest => ({
  kind: 'bodies',
  side,
  compare: 'at-least',
  count,
});

/** A front of one man, so that a row shows only his rules. */
function frontOf(role: string, rules: readonly AlignRule[], byHand: Front['byHand'] = []): Front {
  const base = { gaps: [], style: 'one-gap', pass: 'none' } as const;
  return { id: asFrontId('one'), name: 'One man', roles: [{ role: asRoleId(role), rules, base }], byHand };
}

const LOOK = asLookId('look');

function stand(role: string, rules: readonly AlignRule[], byHand: Front['byHand'] = []): Aligned {
  const man = align(frontOf(role, rules, byHand), ROLES, FACTS, LOOK).get(asRoleId(role));
  if (man === undefined) throw new Error(`${role} stands nowhere`);
  return man;
}

interface RuleRow {
  readonly name: string;
  readonly role: string;
  readonly rules: readonly AlignRule[];
  readonly x: number;
  readonly why: readonly string[];
}

const RULES: readonly RuleRow[] = [
  {
    name: 'the first rule that holds',
    role: 'RE',
    rules: [at(4, bodies('mine', 3)), at(3)],
    x: 4,
    why: ['alignment rule 1 of the front puts him there'],
  },
  {
    name: 'a rule that does not hold is passed over',
    role: 'LE',
    rules: [at(4, bodies('mine', 3)), at(3)],
    x: -3,
    why: ['alignment rule 2 of the front puts him there'],
  },
  {
    name: 'the other side is the other man’s',
    role: 'LE',
    rules: [at(4, bodies('other', 3)), at(3)],
    x: -4,
    why: ['alignment rule 1 of the front puts him there'],
  },
  {
    name: 'all conditions must hold',
    role: 'RE',
    rules: [at(4, bodies('mine', 3), bodies('other', 3)), at(3)],
    x: 3,
    why: ['alignment rule 2 of the front puts him there'],
  },
  {
    name: 'a rule that cannot be placed is passed over, and said',
    role: 'LE',
    rules: [{ when: [], spot: technique('end', 'head') }, at(3)],
    x: -3,
    why: ['alignment rule 2 of the front puts him there', 'there is no attached tight end on the left'],
  },
  {
    name: 'no rule can be placed: linebacker depth on his side, and said',
    role: 'LE',
    rules: [{ when: [], spot: technique('end', 'head') }, at(4, bodies('mine', 3))],
    x: -3,
    why: ['no alignment rule of the front can be placed in this look', 'there is no attached tight end on the left'],
  },
  {
    name: 'no rule can be placed, right',
    role: 'RE',
    rules: [{ when: [], spot: technique('wing', 'head') }],
    x: 3,
    why: ['no alignment rule of the front can be placed in this look', 'there is no wing on the right'],
  },
  {
    name: 'no rule can be placed, in the middle',
    role: 'N',
    rules: [at(2)],
    x: 0,
    why: [
      'no alignment rule of the front can be placed in this look',
      'he stands in the middle and has no side of his own',
    ],
  },
];

describe('the rules of a front', () => {
  it.each(RULES)('$name', ({ role, rules, x, why }) => {
    const man = stand(role, rules);
    expect([man.x, man.y, man.by]).toEqual([x, 5, 'rule']);
    expect(sayAll(man.because)).toEqual(why);
  });

  it('a spot set by hand for this look beats the rule', () => {
    const man = stand('RE', [at(3)], [{ look: LOOK, role: asRoleId('RE'), x: -1, y: 2 }]);
    expect([man.x, man.y, man.by, man.place]).toEqual([-1, 2, 'hand', 'left']);
    expect(say(man.because)).toBe('the coach put him there by hand for this look');
  });

  it.each([
    ['another look', asLookId('other'), asRoleId('RE')],
    ['another man', LOOK, asRoleId('LE')],
  ] as const)('a spot set by hand for %s does not', (_name, look, role) => {
    const man = stand('RE', [at(3)], [{ look, role, x: -1, y: 2 }]);
    expect([man.x, man.y, man.by]).toEqual([3, 5, 'rule']);
  });

  it('a role the playbook does not have is a broken promise', () => {
    expect(() => align(frontOf('nobody', [at(3)]), ROLES, FACTS, LOOK)).toThrow('unknown role nobody');
  });
});

/** The odd front of the test book against a tight end on the right: letter, yards from the ball, off it, place, in the box. */
const ODD_STANDS: readonly (readonly [letter: string, x: number, y: number, place: string, inBox: boolean])[] = [
  ['N', 0, 0.8, 'middle', true],
  ['LE', -3, 0.8, 'left', true],
  ['RE', 3, 0.8, 'right', true],
  ['S', 4.333, 0.8, 'right', true],
  ['J', -5.833, 4.5, 'left', false],
  ['M', 1.667, 4.5, 'right', true],
  ['W', -1.667, 4.5, 'left', true],
  ['SS', 6, 11, 'right', false],
  ['FS', -6, 11, 'left', false],
  ['LC', -19, 7, 'left', false],
  ['RC', 17, 7, 'right', false],
];

describe('the odd front of the test book', () => {
  const stands = align(ODD, ROLES, FACTS, LOOK);

  it('has eleven', () => {
    expect(stands.size).toBe(ODD_STANDS.length);
  });

  it.each(ODD_STANDS)('%s', (letter, x, y, place, inside) => {
    const man = stands.get(asRoleId(letter));
    expect(man?.x).toBeCloseTo(x, 3);
    expect([man?.y, man?.place, man?.inBox, man?.by]).toEqual([y, place, inside, 'rule']);
    expect(man?.technique === null).toBe(!inside);
  });
});
