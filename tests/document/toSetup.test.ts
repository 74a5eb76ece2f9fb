import { describe, expect, it } from 'vitest';
import { refusalText, toSetup, type Playbook, type Question } from '../../src/document/index.ts';
import {
  analyse,
  asCallId,
  asCoverageId,
  asFrontId,
  asLookId,
  asPressureId,
  type CheckOutAction,
} from '../../src/engine/index.ts';
import { samplePlaybook } from './samplePlaybook.ts';

const PLAYBOOK = samplePlaybook();
const [alone, both, either] = PLAYBOOK.calls;
if (alone === undefined || both === undefined || either === undefined) throw new Error('The sample has three calls');
const [threeDeep, manFree] = PLAYBOOK.coverages;
const TIGHT = asLookId('tight');
const SPREAD = asLookId('spread');

function setupOf(question: Question, playbook: Playbook = PLAYBOOK) {
  const setup = toSetup(playbook, question);
  if (!setup.ok) throw new Error(refusalText(setup.problem));
  return setup.value;
}

describe('toSetup', () => {
  it('brings together what the call names', () => {
    expect(setupOf({ call: both, look: TIGHT, spot: 'left' })).toEqual({
      level: 'high-school',
      spot: 'left',
      roles: PLAYBOOK.roles,
      front: PLAYBOOK.fronts[0],
      look: PLAYBOOK.looks[0],
      first: PLAYBOOK.pressures[0],
      second: PLAYBOOK.pressures[1],
      turn: 'opposite',
      combination: { kind: 'together' },
      coverage: manFree,
      secondCoverage: manFree,
      waivers: both.waivers,
      dictionary: PLAYBOOK.dictionary,
      checkOut: null,
      rushers: 5,
    });
  });

  it('takes the shell of the first pressure where the call has none of its own', () => {
    const setup = setupOf({ call: alone, look: TIGHT, spot: 'middle' });
    expect(setup.coverage).toBe(threeDeep);
    expect(setup.second).toBeNull();
    expect(setup.secondCoverage).toBeNull();
    const turnedRound = { ...both, first: asPressureId('bellows'), second: asPressureId('anvil'), coverage: null };
    expect(setupOf({ call: turnedRound, look: TIGHT, spot: 'middle' })).toMatchObject({
      coverage: manFree,
      secondCoverage: threeDeep,
    });
  });

  it('each half of an either-or call has its own shell, unless the call has one for both', () => {
    const noTable = { ...PLAYBOOK, checkOuts: [] };
    const setup = setupOf({ call: either, look: TIGHT, spot: 'middle' }, noTable);
    expect(setup.combination).toEqual({ kind: 'either-or', key: [{ kind: 'back', side: 'call' }] });
    expect([setup.coverage, setup.secondCoverage]).toEqual([threeDeep, manFree]);
    const own = { ...either, coverage: asCoverageId('three-deep') };
    const shared = setupOf({ call: own, look: TIGHT, spot: 'middle' }, noTable);
    expect([shared.coverage, shared.secondCoverage]).toEqual([threeDeep, threeDeep]);
  });

  it('counts the rushers the call says; a single pressure may say it itself', () => {
    const bellows = { ...alone, first: asPressureId('bellows') };
    const counted = (call: Question['call']) => setupOf({ call, look: TIGHT, spot: 'middle' }).rushers;
    expect(counted(alone)).toBeNull();
    expect(counted(bellows)).toBe(5);
    expect(counted({ ...bellows, rushers: 0 })).toBe(0);
    // What one pressure counts says nothing of two.
    expect(counted({ ...bellows, second: asPressureId('anvil') })).toBeNull();
  });

  it('what the coach lives with reaches its finding', () => {
    const { findings } = analyse(setupOf({ call: both, look: TIGHT, spot: 'middle' }));
    expect(findings.filter(({ waived }) => waived !== null).map(({ rule, waived }) => [rule, waived])).toEqual([
      ['align.tell', 'He only steps up with the cadence.'],
    ]);
  });

  describe('a check-out table', () => {
    // Two backs stand in the tight look, none of the rows before matters.
    const withRow = (action: CheckOutAction): Playbook => ({
      ...PLAYBOOK,
      checkOuts: [
        {
          call: both.id,
          rows: [
            { formation: 'doubles', action: { kind: 'run' } },
            { formation: 'two-backs', action },
          ],
        },
      ],
    });
    const asRun = (action: CheckOutAction) => setupOf({ call: both, look: TIGHT, spot: 'left' }, withRow(action));
    const asCalled = setupOf({ call: both, look: TIGHT, spot: 'left' });

    it.each<[CheckOutAction, object]>([
      [{ kind: 'run' }, {}],
      [{ kind: 'turn' }, { turn: 'same' }],
      [{ kind: 'swap' }, { first: asCalled.second, second: asCalled.first }],
      [
        { kind: 'coverage', coverage: asCoverageId('three-deep') },
        { coverage: threeDeep, secondCoverage: threeDeep },
      ],
      [
        { kind: 'check-to', call: asCallId('anvil') },
        { second: null, turn: 'own', coverage: threeDeep, secondCoverage: null, waivers: [], rushers: null },
      ],
    ])('%j', (action, changed) => {
      expect(asRun(action)).toEqual({ ...asCalled, checkOut: { formation: 'two-backs', action }, ...changed });
    });

    it('goes by the most special class of the look that it names, and by none it does not', () => {
      const shown = (look: typeof TIGHT) => setupOf({ call: either, look, spot: 'middle' });
      expect(shown(TIGHT).checkOut).toEqual(PLAYBOOK.checkOuts[0]?.rows[0]);
      expect(shown(TIGHT).combination.kind).toBe('either-or');
      expect(shown(SPREAD).checkOut).toEqual(PLAYBOOK.checkOuts[0]?.rows[4]);
      expect(shown(SPREAD).combination.kind).toBe('together');
      const other = { ...PLAYBOOK, checkOuts: [{ call: either.id, rows: [] }] };
      expect(setupOf({ call: either, look: SPREAD, spot: 'middle' }, other).checkOut).toBeNull();
    });
  });

  it.each<[string, Question]>([
    ['call.front', { call: { ...both, front: asFrontId('gone') }, look: TIGHT, spot: 'left' }],
    ['call.first', { call: { ...both, first: asPressureId('gone') }, look: TIGHT, spot: 'left' }],
    ['call.second', { call: { ...both, second: asPressureId('gone') }, look: TIGHT, spot: 'left' }],
    ['call.coverage', { call: { ...both, coverage: asCoverageId('gone') }, look: TIGHT, spot: 'left' }],
    ['look', { call: both, look: asLookId('gone'), spot: 'left' }],
  ])('refuses a %s the playbook does not have', (path, question) => {
    expect(toSetup(PLAYBOOK, question)).toEqual({
      ok: false,
      problem: { path, found: '"gone"', expected: 'the id of something in this playbook' },
    });
  });
});
