import { describe, expect, it } from 'vitest';
import { asCallId, asCoverageId, asFrontId, asLookId, asPressureId } from '../../src/engine/index.ts';
import { fitBoard, partsOf, sameParts, standInCall, type CallParts } from '../../src/store/index.ts';
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
  ])('with %s', (_words, changed, same) => {
    expect(sameParts(parts, changed)).toBe(same);
  });

  it('without a second are the same however it would be turned', () => {
    expect(sameParts({ ...parts, second: null, turn: 'own' }, { ...parts, second: null, turn: 'opposite' })).toBe(true);
  });
});
