import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import { asCallId, asCoverageId, type CheckOutAction, type CheckOutRow } from '../../src/engine/index.ts';
import { checkOutSentence, type CheckOutNames } from '../../src/report/index.ts';
import { setCheckOuts, type CommandProblem } from '../../src/store/index.ts';
import { demo, firstOf, valueOf } from './demo.ts';

const playbook: Playbook = { ...demo(), checkOuts: [] };
const call = firstOf(playbook.calls);
const other = firstOf(playbook.calls.slice(1));
const coverage = firstOf(playbook.coverages);
const against = (formation: CheckOutRow['formation'], action: CheckOutAction): CheckOutRow => ({ formation, action });
const toOther: CheckOutAction = { kind: 'check-to', call: other.id };

describe('the check-out table of a call', () => {
  const one = valueOf(setCheckOuts(playbook, { call: call.id, rows: [against('trips', toOther)] }));
  const two = valueOf(setCheckOuts(one, { call: other.id, rows: [against('bunch', { kind: 'turn' })] }));

  it('is made with its first row, and leaves all else alone', () => {
    expect(one).toStrictEqual({ ...playbook, checkOuts: [{ call: call.id, rows: [against('trips', toOther)] }] });
    expect(two.checkOuts[0]).toBe(one.checkOuts[0]);
    expect(checkPlaybook(two).ok).toBe(true);
  });

  it('is changed in its place', () => {
    const rows = [against('heavy', { kind: 'coverage', coverage: coverage.id }), against('quads', { kind: 'swap' })];
    const after = valueOf(setCheckOuts(two, { call: call.id, rows }));
    expect(after.checkOuts).toStrictEqual([{ call: call.id, rows }, two.checkOuts[1]]);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('goes with its last row', () => {
    expect(valueOf(setCheckOuts(one, { call: call.id, rows: [] }))).toStrictEqual(playbook);
  });

  it.each<[string, readonly CheckOutRow[], CommandProblem]>([
    ['checks to itself', [against('trips', { kind: 'check-to', call: call.id })], { kind: 'checks-to-itself' }],
    [
      'checks to a call that is not there',
      [against('trips', { kind: 'check-to', call: asCallId('nobody') })],
      { kind: 'not-there', what: 'call' },
    ],
    [
      'takes a coverage that is not there',
      [against('trips', { kind: 'coverage', coverage: asCoverageId('nothing') })],
      { kind: 'not-there', what: 'coverage' },
    ],
    ['says a formation twice', [against('trips', { kind: 'run' }), against('trips', toOther)], { kind: 'twice' }],
  ])('is refused when it %s', (_what, rows, problem) => {
    expect(setCheckOuts(playbook, { call: call.id, rows })).toStrictEqual({ ok: false, problem });
  });

  it('belongs to a call that is there', () => {
    expect(setCheckOuts(playbook, { call: asCallId('nobody'), rows: [] })).toStrictEqual({
      ok: false,
      problem: { kind: 'not-there', what: 'call' },
    });
  });
});

describe('a row of it', () => {
  const names = { turned: 'Weir', nowFirst: 'Weir', coverage: () => 'Two deep', call: () => 'Teasel' };
  it.each<[string, CheckOutRow, CheckOutNames]>([
    ['against empty, three by two: check to Teasel', against('empty-three-by-two', toOther), names],
    [
      'against bunch: change the coverage to Two deep',
      against('bunch', { kind: 'coverage', coverage: coverage.id }),
      names,
    ],
    ['against trips: Weir is turned the other way', against('trips', { kind: 'turn' }), names],
    ['against heavy: the two change places, Weir is now the first', against('heavy', { kind: 'swap' }), names],
    ['against trips: run it as called', against('trips', { kind: 'run' }), names],
    // There is nothing to turn or to swap in a pressure called alone.
    ['against trips: run it as called', against('trips', { kind: 'turn' }), { ...names, turned: null, nowFirst: null }],
    ['against trips: run it as called', against('trips', { kind: 'swap' }), { ...names, turned: null, nowFirst: null }],
  ])('%s', (sentence, row, called) => {
    expect(checkOutSentence(row, called)).toBe(sentence);
  });
});
