import { describe, expect, it } from 'vitest';
import { checkPlaybook } from '../../src/document/index.ts';
import { asCallId, asLookId, type Analysis, type Finding } from '../../src/engine/index.ts';
import {
  aboutOf,
  createAnalyst,
  lapsedWaivers,
  LEAST_REASON,
  takeBack,
  waive,
  waiverHome,
  type AppStore,
  type Waived,
} from '../../src/store/index.ts';
import { demo, demoStore, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const call = firstOf(playbook.calls);
const look = firstOf(playbook.looks);
const about: Waived = { rule: 'gap.open', look: look.id, evidence: 'nose||' };
const reason = 'they never run there';

describe('living with a finding', () => {
  it('keeps the reason on the call, without blanks around it', () => {
    const after = valueOf(waive(playbook, { call: call.id, about, reason: `  ${reason} ` }));
    expect(after.calls[0]).toStrictEqual({ ...call, waivers: [{ ...about, reason }] });
    expect(after.calls.slice(1)).toStrictEqual(playbook.calls.slice(1));
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('has one reason at a time, whatever was said before', () => {
    const once = valueOf(waive(playbook, { call: call.id, about, reason }));
    const other = { ...about, rule: 'gap.doubled' };
    const both = valueOf(waive(once, { call: call.id, about: other, reason }));
    const again = valueOf(waive(both, { call: call.id, about, reason: 'and the safety is there' }));
    expect(again.calls[0]?.waivers).toStrictEqual([
      { ...other, reason },
      { ...about, reason: 'and the safety is there' },
    ]);
  });

  it('is taken back', () => {
    const waived = valueOf(waive(playbook, { call: call.id, about, reason }));
    expect(valueOf(takeBack(waived, { call: call.id, about }))).toStrictEqual(playbook);
  });

  it.each([
    ['without a reason', waive(playbook, { call: call.id, about, reason: '' }), { kind: 'reason-short' }],
    [
      'with one of nine characters',
      waive(playbook, { call: call.id, about, reason: ' 123456789 ' }),
      { least: LEAST_REASON },
    ],
    ['on no call', waive(playbook, { call: asCallId('nobody'), about, reason }), { what: 'call' }],
    ['that was not lived with', takeBack(playbook, { call: call.id, about }), { what: 'reason' }],
    [
      'of another look',
      takeBack(playbook, { call: call.id, about: { ...about, look: asLookId('x') } }),
      { what: 'reason' },
    ],
  ])('is refused %s', (_words, result, problem) => {
    expect(result).toMatchObject({ ok: false, problem });
  });
});

describe('a finding that is lived with', () => {
  const foundIn = (store: AppStore): Analysis => valueOf(createAnalyst().onBoard(store.get()));
  const live = (store: AppStore, found: Waived): void => {
    const change = () => waive(store.get().playbook, { call: call.id, about: found, reason });
    valueOf(store.commit({ label: 'lives with it', look: look.id, gesture: null, change }));
  };
  const withFinding = (): { readonly store: AppStore; readonly analysis: Analysis; readonly finding: Finding } => {
    const store = demoStore();
    const looks = playbook.looks.map(({ id }) => id);
    for (const id of looks) {
      store.setBoard({ look: id });
      const analysis = foundIn(store);
      const [finding] = analysis.findings;
      if (finding !== undefined) return { store, analysis, finding };
    }
    throw new Error('The first call of the demo playbook is clean everywhere');
  };

  it('is marked with the reason on the board, in its look only, and undo takes it back', () => {
    const { store, analysis, finding } = withFinding();
    live(store, aboutOf(analysis, finding));
    const analyst = createAnalyst();
    expect(valueOf(analyst.onBoard(store.get())).findings[0]).toStrictEqual({ ...finding, waived: reason });
    const elsewhere = playbook.looks.filter(({ id }) => id !== analysis.setup.look.id);
    for (const { id } of elsewhere) {
      expect(valueOf(analyst.inLook(store.get(), id)).findings.filter(({ waived }) => waived !== null)).toStrictEqual(
        [],
      );
    }
    store.undo();
    expect(valueOf(analyst.onBoard(store.get())).findings[0]).toStrictEqual(finding);
  });

  it('makes only its own look be worked out again', () => {
    const { store, analysis, finding } = withFinding();
    const analyst = createAnalyst();
    for (const { id } of playbook.looks) analyst.inLook(store.get(), id);
    live(store, aboutOf(analysis, finding));
    const forgotten = playbook.looks.filter(({ id }) => analyst.known(store.get(), id) === null);
    expect(forgotten.map(({ id }) => id)).toStrictEqual([analysis.setup.look.id]);
  });

  it('is not lived with when the board shows no kept call', () => {
    const { store, analysis, finding } = withFinding();
    live(store, aboutOf(analysis, finding));
    store.setBoard({ call: null });
    expect(foundIn(store).findings[0]?.waived).toBeNull();
  });

  it('has its home in the kept call on the board, and none while that is changed or not kept', () => {
    const { store, analysis } = withFinding();
    expect(waiverHome(store.get(), analysis)).toStrictEqual({ kind: 'call', call });
    store.setBoard({ rushers: 9 });
    expect(waiverHome(store.get(), analysis)).toStrictEqual({ kind: 'changed', call });
    store.setBoard({ call: null });
    expect(waiverHome(store.get(), analysis)).toStrictEqual({ kind: 'not-kept' });
  });

  it('has its home in the call that is checked to, where one is', () => {
    const { store, analysis } = withFinding();
    const target = firstOf(playbook.calls.slice(-1));
    const checkOut = { formation: 'trips', action: { kind: 'check-to', call: target.id } } as const;
    const there = { ...analysis, setup: { ...analysis.setup, checkOut } };
    expect(waiverHome(store.get(), there)).toStrictEqual({ kind: 'call', call: target });
  });

  it('lapses when its evidence is another one, in its own look only', () => {
    const { store, analysis, finding } = withFinding();
    const found = aboutOf(analysis, finding);
    const other = { ...found, evidence: 'somebody else||' };
    live(store, found);
    live(store, other);
    live(store, { ...other, look: firstOf(playbook.looks.filter(({ id }) => id !== found.look)).id });
    const after = foundIn(store);
    expect(lapsedWaivers(after)).toStrictEqual([{ ...other, reason }]);
    expect(after.findings[0]?.waived).toBe(reason);
  });
});
