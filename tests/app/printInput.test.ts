import { describe, expect, it } from 'vitest';
import { analysesToPrint, callName, printInput } from '../../src/app/print/printInput.ts';
import { createAnalyst, type AppStore, type Board } from '../../src/store/index.ts';
import { demo, demoStore, firstOf } from '../store/demo.ts';

const CHOICE = { room: null, paper: 'letter', looks: 'this' } as const;
const FONTS = { regular: new Uint8Array(), bold: new Uint8Array() };
const NOON = new Date(2026, 8, 4, 12);

const [first, second] = demo().pressures;
if (first === undefined || second === undefined) throw new Error('The demo playbook needs two pressures');

/** The demo with that on the board, and no kept call. */
function storeWith(patch: Partial<Board>): AppStore {
  const store = demoStore();
  store.setBoard({ call: null, first: first?.id ?? null, second: second?.id ?? null, ...patch });
  return store;
}

function titleOf(store: AppStore) {
  const analyses = analysesToPrint(store.get(), createAnalyst(), CHOICE);
  return firstOf(printInput(store.get(), analyses, CHOICE, FONTS, NOON).sheets).title;
}

describe('a sheet', () => {
  it.each<[string, Partial<Board>, string, string]>([
    ['both at once', { turn: 'own' }, `${first.name} + ${second.name}`, `${first.name} + ${second.name}`],
    [
      'turned',
      { turn: 'opposite' },
      `${first.name} + ${second.name}`,
      `${first.name} + ${second.name}, turned opposite`,
    ],
    [
      'one of the two',
      { turn: 'own', combination: { kind: 'either-or', key: [] } },
      `${first.name} or ${second.name}`,
      `${first.name} or ${second.name}, by a key`,
    ],
    ['the first alone', { second: null }, first.name, first.name],
  ])('says how the pressures are called: %s', (_words, patch, name, pressures) => {
    const store = storeWith(patch);
    expect(callName(store.get())).toBe(name);
    expect(titleOf(store)).toMatchObject({ call: name, pressures });
  });

  it('names the shell that is played: of one of the two, that of the half that is run', () => {
    const half = demo().pressures.find(({ coverage }) => coverage !== first.coverage);
    if (half === undefined) throw new Error('The demo playbook needs pressures with two shells');
    const shell = (id: string) => demo().coverages.find((each) => each.id === id)?.name;
    // Nobody has eleven backs: the key never holds.
    const never = { kind: 'backs', compare: 'at-least', count: 11 } as const;
    const parts = { second: half.id, turn: 'own', coverage: null } as const;
    const runs = (key: readonly (typeof never)[]) =>
      titleOf(storeWith({ ...parts, combination: { kind: 'either-or', key } })).coverage;
    expect(runs([])).toBe(shell(first.coverage));
    expect(runs([never])).toBe(shell(half.coverage));
  });
});
