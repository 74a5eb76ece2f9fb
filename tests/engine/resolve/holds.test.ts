import { describe, expect, it } from 'vitest';
import { allHold } from '../../../src/engine/resolve/holds.ts';
import type { Comparison, LookTest, Place, Side, SideRef } from '../../../src/engine/index.ts';
import { factsOf, LOOKS } from '../book.ts';

/** Called to the right, told to a man on the left. */
const CALL = 'right' satisfies Side;
const MINE = 'left' satisfies Side;

const holds = (tests: readonly LookTest[], look: string, spot: Place = 'middle'): boolean =>
  allHold(tests, { facts: factsOf(look, spot), callSide: CALL, mySide: MINE });

type Count = readonly [side: SideRef, compare: Comparison, count: number, holds: boolean];

/** Tight end on the right: three attached men there (guard, tackle, end), two on the left. */
const BODIES: readonly Count[] = [
  ['call', 'at-least', 3, true],
  ['call', 'at-least', 4, false],
  ['call', 'at-most', 3, true],
  ['call', 'at-most', 2, false],
  ['call', 'exactly', 3, true],
  ['call', 'exactly', 2, false],
  ['away', 'exactly', 2, true],
  ['mine', 'exactly', 2, true],
  ['other', 'exactly', 3, true],
  ['left', 'exactly', 2, true],
  ['right', 'exactly', 3, true],
];

/** Trips to the right: three receivers there, one on the left. */
const RECEIVERS: readonly Count[] = [
  ['call', 'at-least', 3, true],
  ['call', 'at-least', 4, false],
  ['call', 'at-most', 3, true],
  ['call', 'at-most', 2, false],
  ['call', 'exactly', 3, true],
  ['away', 'exactly', 1, true],
  ['away', 'exactly', 2, false],
  ['mine', 'at-most', 1, true],
  ['other', 'at-least', 2, true],
];

const BACKS: readonly (readonly [look: keyof typeof LOOKS, compare: Comparison, count: number, holds: boolean])[] = [
  ['20 split backs', 'exactly', 2, true],
  ['20 split backs', 'at-least', 3, false],
  ['21 pro I', 'at-least', 2, true],
  ['10 doubles', 'exactly', 1, true],
  ['10 doubles', 'at-most', 0, false],
  ['10 doubles', 'at-most', 1, true],
];

const FIELD: readonly (readonly [spot: Place, side: SideRef, holds: boolean])[] = [
  ['left', 'call', true],
  ['left', 'away', false],
  ['right', 'call', false],
  ['right', 'mine', true],
  ['left', 'right', true],
  ['middle', 'call', false],
  ['middle', 'away', false],
];

describe('a condition about the look', () => {
  it.each(BODIES)('attached men, %s %s %d: %s', (side, compare, count, expected) => {
    expect(holds([{ kind: 'bodies', side, compare, count }], LOOKS['11 tight end'])).toBe(expected);
  });

  it.each(RECEIVERS)('receivers, %s %s %d: %s', (side, compare, count, expected) => {
    expect(holds([{ kind: 'receivers', side, compare, count }], LOOKS['10 trips'])).toBe(expected);
  });

  it('a covered man is no receiver', () => {
    const covered = 'line te:Y@4 wr:Z@14 wr:X@-14,-1.5 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@-1.5,-5';
    expect(holds([{ kind: 'receivers', side: 'right', compare: 'exactly', count: 1 }], covered)).toBe(true);
    expect(holds([{ kind: 'bodies', side: 'right', compare: 'exactly', count: 3 }], covered)).toBe(true);
  });

  it.each(BACKS)('%s, backs %s %d: %s', (look, compare, count, expected) => {
    expect(holds([{ kind: 'backs', compare, count }], LOOKS[look])).toBe(expected);
  });

  it.each(FIELD)('ball %s, field is %s: %s', (spot, side, expected) => {
    expect(holds([{ kind: 'field', side }], LOOKS['10 doubles'], spot)).toBe(expected);
  });
});

describe('conditions of one rule', () => {
  const yes: LookTest = { kind: 'backs', compare: 'exactly', count: 1 };
  const no: LookTest = { kind: 'backs', compare: 'exactly', count: 2 };

  it.each([
    ['none: always', [], true],
    ['one that holds', [yes], true],
    ['all must hold', [yes, no], false],
    ['none holds', [no, no], false],
  ] as const)('%s', (_name, tests, expected) => {
    expect(holds(tests, LOOKS['10 doubles'])).toBe(expected);
  });

  it.each(['bodies', 'receivers', 'field'] as const)('%s of a side that is not there does not hold', (kind) => {
    const facts = factsOf(LOOKS['10 doubles'], 'left');
    const test = (side: SideRef): LookTest =>
      kind === 'field' ? { kind, side } : { kind, side, compare: 'at-least', count: 0 };
    expect(allHold([test('mine')], { facts, callSide: CALL, mySide: null })).toBe(false);
    expect(allHold([test('call')], { facts, callSide: null, mySide: MINE })).toBe(false);
  });
});
