import { describe, expect, it } from 'vitest';
import {
  asCallId,
  asCoverageId,
  asFrontId,
  asLookId,
  asPressureId,
  type Combination,
  type LookTest,
} from '../../src/engine/index.ts';
import { fitBoard, partsOf, sameCombination, sameParts, standInCall, type CallParts } from '../../src/store/index.ts';
import { demo, demoStore, firstOf } from './demo.ts';

const playbook = demo();
const start = demoStore().get().board;

describe('the board', () => {
  it('opens on the first call, in the first look, the ball in the middle', () => {
    const call = firstOf(playbook.calls);
    expect(start).toStrictEqual({
      ...partsOf(call),
      call: call.id,
      look: firstOf(playbook.looks).id,
      spot: 'middle',
    });
  });

  it('stands in a kept call and keeps look and spot', () => {
    const call = firstOf(playbook.calls.slice(1));
    const board = standInCall({ ...start, spot: 'left' }, call);
    expect(board).toStrictEqual({ ...partsOf(call), call: call.id, look: start.look, spot: 'left' });
  });

  it('drops what the playbook does not have', () => {
    const lost = {
      ...start,
      look: asLookId('gone'),
      front: asFrontId('gone'),
      first: asPressureId('gone'),
      second: asPressureId('gone'),
      coverage: asCoverageId('gone'),
      call: asCallId('gone'),
    };
    expect(fitBoard(playbook, lost)).toStrictEqual({
      ...start,
      front: firstOf(playbook.fronts).id,
      first: firstOf(playbook.pressures).id,
      second: null,
      coverage: null,
      call: null,
    });
  });

  it('has nothing to stand in when the playbook is empty', () => {
    const empty = { ...playbook, looks: [], fronts: [], pressures: [], coverages: [], calls: [] };
    expect(fitBoard(empty, start)).toMatchObject({ look: null, front: null, first: null });
  });
});

describe('two calls', () => {
  const parts: CallParts = partsOf(firstOf(playbook.calls));
  const other = firstOf(playbook.pressures.filter(({ id }) => id !== parts.first && id !== parts.second)).id;

  it.each<[string, CallParts, boolean]>([
    ['the same parts', { ...parts }, true],
    ['another front', { ...parts, front: null }, false],
    ['another first', { ...parts, first: other }, false],
    ['another second', { ...parts, second: other }, false],
    ['another turn', { ...parts, turn: parts.turn === 'own' ? 'same' : 'own' }, false],
    ['another coverage', { ...parts, coverage: asCoverageId('other') }, false],
    ['another number of rushers', { ...parts, rushers: 7 }, false],
    ['the two joined otherwise', { ...parts, second: other, combination: { kind: 'either-or', key: [] } }, false],
  ])('with %s', (_words, changed, same) => {
    expect(sameParts(parts, changed)).toBe(same);
  });

  it('without a second are the same however it would be turned or joined', () => {
    const alone: CallParts = { ...parts, second: null, turn: 'own', combination: { kind: 'together' } };
    expect(sameParts(alone, { ...alone, turn: 'opposite' })).toBe(true);
    expect(sameParts(alone, { ...alone, combination: either(BACK) })).toBe(true);
  });
});

const BACK: LookTest = { kind: 'back', side: 'call' };
const END: LookTest = { kind: 'bodies', side: 'call', compare: 'at-least', count: 3 };

function either(...key: readonly LookTest[]): Combination {
  return { kind: 'either-or', key };
}

describe('two pressures', () => {
  it.each<[string, Combination, Combination, boolean]>([
    ['both at once', { kind: 'together' }, { kind: 'together' }, true],
    ['both at once, and one by a key', { kind: 'together' }, either(BACK), false],
    ['one by a key, and both at once', either(BACK), { kind: 'together' }, false],
    ['by the same key, its parts in another order', either(END), either(reversed(END)), true],
    ['by another key', either(BACK), either(END), false],
    ['by a key with one condition more', either(BACK), either(BACK, END), false],
    ['by a key with one condition less', either(BACK, END), either(BACK), false],
  ])('joined: %s', (_words, a, b, same) => {
    expect(sameCombination(a, b)).toBe(same);
  });
});

/** The same condition, its parts written the other way round. */
function reversed(test: Extract<LookTest, { kind: 'bodies' }>): LookTest {
  const { kind, side, compare, count } = test;
  return { count, compare, side, kind };
}
