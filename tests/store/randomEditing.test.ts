import { describe, expect, it } from 'vitest';
import { saveDocument, type Playbook } from '../../src/document/index.ts';
import { startPlaybook } from '../../src/starter/index.ts';
import { createAppStore } from '../../src/store/index.ts';
import { chanceFrom, DEEDS } from './deeds.ts';

const SEQUENCES = 2_000;
const COMMANDS = 50;

/** A small playbook: every commit checks the whole of it. */
function small(): Playbook {
  const made = startPlaybook({
    team: 'Herons',
    level: 'college',
    front: 'bear',
    sides: 'strength',
    letters: new Map(),
  });
  if (!made.ok) throw new Error('The starting playbook is refused');
  const { looks, coverages } = made.value;
  // The one coverage all of this front's pressures are played with.
  const played = coverages.filter(({ id }) => made.value.pressures.some(({ coverage }) => coverage === id));
  return { ...made.value, looks: looks.slice(0, 2), coverages: played };
}

describe('random editing', () => {
  it(`of ${SEQUENCES} sequences of ${COMMANDS} commands: undo leads to the first bytes, redo to the last`, () => {
    const playbook = small();
    const first = saveDocument(playbook);
    const names = Object.keys(DEEDS);
    const done = new Map<string, number>();
    const unsaved: string[] = [];
    for (let seed = 1; seed <= SEQUENCES; seed += 1) {
      const chance = chanceFrom(seed);
      const store = createAppStore(playbook, { readOnly: false });
      for (let count = 0; count < COMMANDS; count += 1) {
        const name = chance.one(names);
        const made = store.commit({
          label: name,
          look: null,
          gesture: null,
          change: (now) => DEEDS[name]?.(now, chance) ?? { ok: true, value: now },
        });
        if (made.ok) done.set(name, (done.get(name) ?? 0) + 1);
        else if (made.problem.kind === 'not-savable')
          unsaved.push(`${name}: ${made.problem.refusals[0]?.expected ?? ''}`);
      }
      const last = saveDocument(store.get().playbook);
      while (store.undo() !== null);
      const back = saveDocument(store.get().playbook);
      while (store.redo() !== null);
      const forth = saveDocument(store.get().playbook);
      if (back !== first || forth !== last) throw new Error(`Seed ${seed} does not lead back or forth`);
    }
    // Every command has been done, and not once only.
    expect(names.filter((name) => (done.get(name) ?? 0) < SEQUENCES / 100)).toStrictEqual([]);
    // A command says in words of its own what it cannot do; what only the file's own check refuses is an exception.
    expect([...new Set(unsaved)].sort()).toStrictEqual([]);
  }, 1_200_000);
});
