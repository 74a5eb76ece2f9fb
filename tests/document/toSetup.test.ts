import { describe, expect, it } from 'vitest';
import { refusalText, toSetup, type Question } from '../../src/document/index.ts';
import { asCoverageId, asFrontId, asLookId, asPressureId } from '../../src/engine/index.ts';
import { samplePlaybook } from './samplePlaybook.ts';

const PLAYBOOK = samplePlaybook();
const [alone, both] = PLAYBOOK.calls;
if (alone === undefined || both === undefined) throw new Error('The sample has two calls');
const TIGHT = asLookId('tight');

function setupOf(question: Question) {
  const setup = toSetup(PLAYBOOK, question);
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
      coverage: PLAYBOOK.coverages[1],
    });
  });

  it('takes the shell of the first pressure where the call has none of its own', () => {
    const setup = setupOf({ call: alone, look: TIGHT, spot: 'middle' });
    expect(setup.coverage).toBe(PLAYBOOK.coverages[0]);
    expect(setup.second).toBeNull();
    const turnedRound = { ...both, first: asPressureId('bellows'), second: asPressureId('anvil'), coverage: null };
    expect(setupOf({ call: turnedRound, look: TIGHT, spot: 'middle' }).coverage).toBe(PLAYBOOK.coverages[1]);
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
