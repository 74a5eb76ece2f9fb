import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import { asFrontId, asLookId, asRoleId, type AlignRule, type BaseJob } from '../../src/engine/index.ts';
import { clearHands, handToRule, newFront, replaceRole, setAlignRules, setBaseJob } from '../../src/store/index.ts';
import { moveDefender } from '../../src/store/commands/defence.ts';
import { demo, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const ODD = asFrontId('odd');
const LEFT_END = asRoleId('left-end');
const NOSE = asRoleId('nose');
const oddOf = (book: Playbook) => firstOf(book.fronts.filter(({ id }) => id === ODD));
const manOf = (book: Playbook, role = LEFT_END) => firstOf(oddOf(book).roles.filter((man) => man.role === role));
const eleven = oddOf(playbook).roles.map(({ role }) => role);

describe('a new front', () => {
  it('has the eleven that were picked, each with a rule, and may be saved', () => {
    const after = valueOf(newFront(playbook, { name: ' Odd, heavy ', roles: eleven }));
    const made = firstOf(after.fronts.slice(-1));
    expect(made.name).toBe('Odd, heavy');
    expect(new Set(made.roles.map(({ role }) => role))).toStrictEqual(new Set(eleven));
    expect(made.roles.every(({ rules }) => rules.length === 1)).toBe(true);
    expect(made.byHand).toStrictEqual([]);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it.each([
    ['ten men', eleven.slice(1), { kind: 'not-eleven', found: 10 }],
    ['one man twice', [...eleven.slice(1), ...eleven.slice(1, 2)], { kind: 'not-eleven', found: 10 }],
    ['a man who is not in the playbook', [...eleven.slice(1), asRoleId('nobody')], { kind: 'not-eleven', found: 10 }],
  ])('is refused with %s', (_words, roles, problem) => {
    expect(newFront(playbook, { name: 'Ten', roles: [...new Set(roles)] })).toStrictEqual({ ok: false, problem });
  });

  it.each([
    ['without a name', ' ', 'name-empty'],
    ['with the name of another', 'Bear, five on the line', 'name-taken'],
  ])('is refused %s', (_words, name, kind) => {
    expect(newFront(playbook, { name, roles: eleven })).toMatchObject({ ok: false, problem: { kind } });
  });
});

describe('another man for one', () => {
  const by = asRoleId('fifth-back');
  const out = asRoleId('weak-edge');

  it('takes over rules, base job and spots by hand', () => {
    const after = valueOf(replaceRole(playbook, { front: ODD, role: out, by }));
    expect({ ...manOf(after, by), role: out }).toStrictEqual(manOf(playbook, out));
    expect(oddOf(after).byHand).toStrictEqual(
      oddOf(playbook).byHand.map((hand) => (hand.role === out ? { ...hand, role: by } : hand)),
    );
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it.each([
    ['plays already', { front: ODD, role: out, by: NOSE }, { kind: 'plays-already' }],
    ['is not in the playbook', { front: ODD, role: out, by: asRoleId('nobody') }, { kind: 'not-there', what: 'role' }],
    ['comes for nobody', { front: ODD, role: by, by: asRoleId('sixth-back') }, { kind: 'not-there', what: 'role' }],
    ['comes into no front', { front: asFrontId('none'), role: out, by }, { kind: 'not-there', what: 'front' }],
  ])('is refused when he %s', (_words, args, problem) => {
    expect(replaceRole(playbook, args)).toStrictEqual({ ok: false, problem });
  });
});

describe('alignment rules', () => {
  const headUp: AlignRule = {
    when: [{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
    spot: { kind: 'technique', on: 'end', leverage: 'head', depth: 1 },
  };
  const shade: AlignRule = { when: [], spot: { kind: 'technique', on: 'tackle', leverage: 'outside', depth: 1 } };

  it.each<[string, readonly AlignRule[]]>([
    ['one', [shade]],
    ['two in their order', [headUp, shade]],
    ['the other way round', [shade, headUp]],
  ])('are put: %s', (_words, rules) => {
    const after = valueOf(setAlignRules(playbook, { front: ODD, role: LEFT_END, rules }));
    expect(manOf(after).rules).toStrictEqual(rules);
    expect(manOf(after, NOSE)).toBe(manOf(playbook, NOSE));
    expect(after.fronts.filter(({ id }) => id !== ODD).every((front) => playbook.fronts.includes(front))).toBe(true);
  });

  it.each([
    ['none is left', { front: ODD, role: LEFT_END, rules: [] }, { kind: 'last-one', what: 'rule' }],
    [
      'he is not in the front',
      { front: ODD, role: asRoleId('fifth-back'), rules: [shade] },
      { kind: 'not-there', what: 'role' },
    ],
    [
      'there is no such front',
      { front: asFrontId('none'), role: NOSE, rules: [shade] },
      { kind: 'not-there', what: 'front' },
    ],
  ])('are refused when %s', (_words, args, problem) => {
    expect(setAlignRules(playbook, args)).toStrictEqual({ ok: false, problem });
  });
});

describe('the base job', () => {
  const bGap = { kind: 'letter', side: 'mine', letter: 'B' } as const;
  const cGap = { kind: 'letter', side: 'mine', letter: 'C' } as const;

  it.each<[string, BaseJob]>([
    ['one gap, else another', { gaps: [bGap, cGap], style: 'one-gap', pass: 'rush' }],
    ['two gaps', { gaps: [bGap, cGap], style: 'two-gap', pass: 'contain' }],
    ['no gap of his own', { gaps: [], style: 'one-gap', pass: 'none' }],
  ])('is put: %s', (_words, base) => {
    const after = valueOf(setBaseJob(playbook, { front: ODD, role: LEFT_END, base }));
    expect(manOf(after).base).toStrictEqual(base);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('is refused to two-gap one gap', () => {
    const base: BaseJob = { gaps: [bGap], style: 'two-gap', pass: 'rush' };
    expect(setBaseJob(playbook, { front: ODD, role: LEFT_END, base })).toStrictEqual({
      ok: false,
      problem: { kind: 'two-gaps-needed' },
    });
  });
});

describe('spots by hand', () => {
  const tight = asLookId('tight-11');
  const spread = asLookId('doubles-10');
  const by = (book: Playbook, look: typeof tight, role: typeof NOSE, x: number, y: number): Playbook =>
    valueOf(moveDefender(book, { front: ODD, look, role, at: { x, y } }));
  const moved = by(by(playbook, tight, LEFT_END, -4, 1), spread, LEFT_END, -1.65, 1);

  it('are cleared in one look, the others stay', () => {
    expect(oddOf(valueOf(clearHands(moved, { front: ODD, look: tight }))).byHand).toStrictEqual(
      oddOf(moved).byHand.filter(({ look }) => look !== tight),
    );
  });

  it('are cleared in all looks', () => {
    expect(oddOf(valueOf(clearHands(moved, { front: ODD, look: null }))).byHand).toStrictEqual([]);
  });

  it('cannot be cleared where there is none', () => {
    expect(clearHands(playbook, { front: ODD, look: tight })).toStrictEqual({
      ok: false,
      problem: { kind: 'no-longer' },
    });
  });

  it('become a rule for the looks with this surface, before all others, and the hand is gone', () => {
    const after = valueOf(handToRule(moved, { front: ODD, role: LEFT_END, look: spread, spot: 'middle' }));
    expect(manOf(after).rules).toStrictEqual([
      {
        when: [{ kind: 'bodies', side: 'mine', compare: 'exactly', count: 2 }],
        spot: { kind: 'technique', on: 'guard', leverage: 'outside-foot', depth: 1 },
      },
      ...manOf(playbook).rules,
    ]);
    expect(oddOf(after).byHand.some(({ look, role }) => look === spread && role === LEFT_END)).toBe(false);
    expect(oddOf(after).byHand.some(({ look, role }) => look === tight && role === LEFT_END)).toBe(true);
  });

  it('a second one for the same surface takes the place of the first', () => {
    const once = valueOf(handToRule(moved, { front: ODD, role: LEFT_END, look: spread, spot: 'middle' }));
    const again = valueOf(
      handToRule(by(once, spread, LEFT_END, -2.65, 1), { front: ODD, role: LEFT_END, look: spread, spot: 'middle' }),
    );
    expect(manOf(again).rules).toHaveLength(manOf(once).rules.length);
    expect(manOf(again).rules[0]?.spot).toMatchObject({ on: 'tackle', leverage: 'head' });
  });

  it.each([
    ['he does not stand by hand there', playbook, LEFT_END, { kind: 'no-longer' }],
    ['a man of the middle is not over the ball', by(playbook, tight, NOSE, 1.5, 1), NOSE, { kind: 'not-over-ball' }],
  ])('are no rule when %s', (_words, book, role, problem) => {
    expect(handToRule(book, { front: ODD, role, look: tight, spot: 'middle' })).toStrictEqual({ ok: false, problem });
  });
});
