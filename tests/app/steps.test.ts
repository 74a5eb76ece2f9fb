import { describe, expect, it } from 'vitest';
import { readSteps, stepsToKeep, type KeptSteps } from '../../src/app/files/steps.ts';
import { renamePlaybook, createAppStore, type AppStore } from '../../src/store/index.ts';
import { demo } from '../store/demo.ts';

const TEAMS = ['Sedge Warblers', 'Reed Cutters', 'Marsh Harriers'] as const;

/** A store whose team was renamed to each of the three in turn, and the last of it undone. */
function renamedStore(): AppStore {
  const store = createAppStore(demo(), { readOnly: false });
  for (const name of TEAMS) {
    store.commit({ label: `named ${name}`, look: null, gesture: null, change: (now) => renamePlaybook(now, { name }) });
  }
  store.undo();
  return store;
}

/** What the browser gives back of what it was given. */
function overReload(store: AppStore): KeptSteps {
  return structuredClone(stepsToKeep(store.get().playbook, store.history()));
}

const atOnce = (): Promise<void> => Promise.resolve();

describe('undo over a reload', () => {
  it('goes back and forth as if the page had never been left', async () => {
    const before = renamedStore();
    const kept = overReload(before);
    const after = createAppStore(structuredClone(before.get().playbook), { readOnly: false });
    const steps = await readSteps(kept, after.get().playbook, atOnce);
    if (steps === null) throw new Error('The steps were not taken up');
    after.recall(steps);
    expect(after.steps()).toStrictEqual({ undo: 2, redo: 1 });
    const teams = (): string => after.get().playbook.team.name;
    expect(after.redo()?.label).toBe('named Marsh Harriers');
    expect(teams()).toBe('Marsh Harriers');
    expect([after.undo(), after.undo(), after.undo()].map((change) => change?.label)).toStrictEqual([
      'named Marsh Harriers',
      'named Reed Cutters',
      'named Sedge Warblers',
    ]);
    expect(teams()).toBe(demo().team.name);
    expect(after.undo()).toBeNull();
  });

  it('keeps what steps share as one object, so that a long history stays small', () => {
    const { past, present } = overReload(renamedStore());
    expect(past).toHaveLength(2);
    for (const { playbook } of past) expect(playbook.pressures).toBe(present.pressures);
  });

  it('lies below what was changed before the steps were read, and what could be done again is then gone', async () => {
    const kept = overReload(renamedStore());
    const store = createAppStore(structuredClone(kept.present), { readOnly: false });
    const reading = readSteps(kept, store.get().playbook, atOnce);
    store.commit({
      label: 'early',
      look: null,
      gesture: null,
      change: (now) => renamePlaybook(now, { name: 'Early' }),
    });
    const steps = await reading;
    if (steps === null) throw new Error('The steps were not taken up');
    store.recall(steps);
    expect(store.steps()).toStrictEqual({ undo: 3, redo: 0 });
    expect(store.undo()?.label).toBe('early');
    expect(store.undo()?.label).toBe('named Reed Cutters');
  });

  it('does not take up steps of another playbook, or what is no history at all', async () => {
    const kept = overReload(renamedStore());
    const { present } = kept;
    const other = { ...present, team: { ...present.team, name: 'Somebody else' } };
    expect(await readSteps(kept, other, atOnce)).toBeNull();
    for (const nothing of [
      null,
      undefined,
      'text',
      7,
      {},
      { past: [], future: [] },
      { past: 1, future: [], present },
    ]) {
      expect(await readSteps(nothing, present, atOnce)).toBeNull();
    }
  });

  it('stops at the first step that would not open, and keeps the nearer ones', async () => {
    const kept = overReload(renamedStore());
    const [oldest, nearest] = kept.past;
    const spoilt = { ...kept, past: [{ ...oldest, playbook: { format: 'something else' } }, nearest] };
    const steps = await readSteps(spoilt, kept.present, atOnce);
    expect(steps?.past).toHaveLength(1);
    expect(steps?.past[0]?.change?.label).toBe('named Sedge Warblers');
  });
});
