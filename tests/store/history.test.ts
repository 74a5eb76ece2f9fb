import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlaybook, saveDocument, type Playbook } from '../../src/document/index.ts';
import {
  deleteCall,
  keepCall,
  moveMan,
  nextCallId,
  partsOf,
  renameCall,
  renamePlaybook,
  standInCall,
  takeBack,
  updateCall,
  waive,
  type AppStore,
  type Commit,
  type Man,
} from '../../src/store/index.ts';
import { demo, demoStore, firstOf, valueOf } from './demo.ts';

const SEED = 20260904;

/** One thing a coach may do, by numbers, so that any list of them makes sense whatever came before. */
type Deed =
  | { readonly kind: 'move'; readonly who: number; readonly x: number; readonly y: number; readonly gesture: number }
  | { readonly kind: 'look'; readonly which: number }
  | { readonly kind: 'keep'; readonly name: string }
  | { readonly kind: 'rename'; readonly which: number; readonly name: string }
  | { readonly kind: 'delete'; readonly which: number }
  | { readonly kind: 'stand'; readonly which: number }
  | { readonly kind: 'number'; readonly count: number }
  | { readonly kind: 'live'; readonly which: number; readonly reason: string }
  | { readonly kind: 'take back'; readonly which: number }
  | { readonly kind: 'team'; readonly name: string };

const yards = fc.integer({ min: -900, max: 900 }).map((value) => value / 20);
const name = fc.string({ minLength: 1, maxLength: 8 });
const which = fc.nat(40);
const deed: fc.Arbitrary<Deed> = fc.oneof(
  fc.record({ kind: fc.constant('move' as const), who: which, x: yards, y: yards, gesture: fc.nat(3) }),
  fc.record({ kind: fc.constant('look' as const), which }),
  fc.record({ kind: fc.constant('keep' as const), name }),
  fc.record({ kind: fc.constant('rename' as const), which, name }),
  fc.record({ kind: fc.constant('delete' as const), which }),
  fc.record({ kind: fc.constant('stand' as const), which }),
  fc.record({ kind: fc.constant('number' as const), count: fc.nat(11) }),
  fc.record({ kind: fc.constant('live' as const), which, reason: fc.string({ maxLength: 30 }) }),
  fc.record({ kind: fc.constant('take back' as const), which }),
  fc.record({ kind: fc.constant('team' as const), name }),
);

describe('the history', () => {
  it('leads back to the first playbook and forth to the last, whatever was done', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 25 }), (deeds) => {
        const store = demoStore();
        const first = saveDocument(store.get().playbook);
        deeds.forEach((each) => doDeed(store, each));
        const last = saveDocument(store.get().playbook);
        expect(checkPlaybook(store.get().playbook).ok).toBe(true);
        const steps = store.steps().undo;
        while (store.steps().undo > 0) store.undo();
        expect(saveDocument(store.get().playbook)).toBe(first);
        expect(store.steps().redo).toBe(steps);
        while (store.steps().redo > 0) store.redo();
        expect(saveDocument(store.get().playbook)).toBe(last);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('is cut off by a new change', () => {
    const store = demoStore();
    store.commit(rename('One'));
    store.commit(rename('Two'));
    store.undo();
    store.commit(rename('Three'));
    expect(store.steps()).toStrictEqual({ undo: 2, redo: 0 });
    store.undo();
    expect(store.get().playbook.team.name).toBe('One');
  });

  it('takes the steps of one gesture for one', () => {
    const store = demoStore();
    const man = manOf(store, 1);
    const start = store.get().playbook;
    for (const x of [1, 1.25, 1.5]) store.commit(move(store, man, { x, y: 2 }, 'arrow 1'));
    expect(store.steps().undo).toBe(1);
    store.endGesture();
    store.commit(move(store, man, { x: 2, y: 2 }, 'arrow 1'));
    expect(store.steps().undo).toBe(2);
    store.undo();
    expect(lastHand(store)).toMatchObject({ x: 1.5, y: 2 });
    store.undo();
    expect(store.get().playbook).toBe(start);
    store.redo();
    expect(lastHand(store)).toMatchObject({ x: 1.5, y: 2 });
  });

  it('takes all that is chosen in one field for one step, until the field is left', () => {
    const store = demoStore();
    const choose = (field: string, team: string): void => store.inGesture(field, () => store.commit(rename(team)));
    for (const team of ['One', 'Two', 'Three']) choose('chosen first', team);
    choose('chosen second', 'Four');
    store.endGesture();
    choose('chosen second', 'Five');
    store.commit(rename('Six'));
    expect(store.steps().undo).toBe(4);
    const back = [0, 1, 2].map(() => {
      store.undo();
      return store.get().playbook.team.name;
    });
    expect(back).toStrictEqual(['Five', 'Four', 'Three']);
    // What is chosen after an undo is a step of its own, though the field still has the focus.
    choose('chosen first', 'Seven');
    store.undo();
    expect(store.get().playbook.team.name).toBe('Three');
  });

  it('says what was undone, and shows the look it was done in', () => {
    const store = demoStore();
    const [one, two] = demo().looks;
    if (one === undefined || two === undefined) throw new Error('The demo playbook needs two looks');
    store.setBoard({ look: one.id });
    store.commit({ ...move(store, manOf(store, 0), { x: 1, y: 1 }, null), label: 'moved somebody' });
    store.setBoard({ look: two.id });
    expect(store.undo()).toStrictEqual({ label: 'moved somebody', look: one.id });
    expect(store.get().board.look).toBe(one.id);
    expect(store.undo()).toBeNull();
    expect(store.redo()).toStrictEqual({ label: 'moved somebody', look: one.id });
    expect(store.redo()).toBeNull();
  });

  it('knows nothing of boards, views and previews', () => {
    const store = demoStore();
    store.setBoard({ spot: 'left' });
    store.setView({ turned: true });
    store.setPreview([{ man: manOf(store, 0), at: { x: 3, y: 3 } }]);
    expect(store.steps().undo).toBe(0);
  });
});

describe('a change', () => {
  it('that a file could not hold is refused, and nothing happens', () => {
    const store = demoStore();
    const before = store.get();
    const result = store.commit(rename('x'.repeat(5_000)));
    expect(result).toMatchObject({ ok: false, problem: { kind: 'not-savable' } });
    expect(store.get()).toBe(before);
    expect(store.steps().undo).toBe(0);
  });

  it('is refused while another tab writes', () => {
    const store = demoStore();
    store.startOver(demo(), true);
    expect(store.commit(rename('One'))).toStrictEqual({ ok: false, problem: { kind: 'read-only' } });
    expect(store.get().playbook).toBe(demo());
  });

  it('of the whole playbook can be undone', () => {
    const store = demoStore();
    const other: Playbook = { ...demo(), calls: [], checkOuts: [], team: { ...demo().team, name: 'Others' } };
    valueOf(store.open(other, 'opened a file'));
    expect(store.get()).toMatchObject({ playbook: other, board: { call: null } });
    store.undo();
    expect(store.get().playbook).toBe(demo());
  });

  it('that takes the kept call of the board away leaves the board standing', () => {
    const store = demoStore();
    const call = firstOf(demo().calls);
    expect(store.get().board.call).toBe(call.id);
    const parts = partsOf(store.get().board);
    valueOf(store.commit({ ...rename(''), change: (playbook) => deleteCall(playbook, { call: call.id }) }));
    expect(store.get().board.call).toBeNull();
    expect(partsOf(store.get().board)).toStrictEqual(parts);
  });
});

function doDeed(store: AppStore, deed: Deed): void {
  const { playbook } = store.get();
  const call = (index: number) => playbook.calls[index % Math.max(playbook.calls.length, 1)];
  switch (deed.kind) {
    case 'move':
      store.commit(move(store, manOf(store, deed.who), deed, `gesture ${deed.gesture}`));
      break;
    case 'look':
      store.setBoard({ look: playbook.looks[deed.which % playbook.looks.length]?.id ?? null });
      break;
    case 'keep': {
      const { board } = store.get();
      const parts = partsOf(board);
      store.commit(commitOf((now) => keepCall(now, { id: nextCallId(now), name: deed.name, parts, from: board.call })));
      break;
    }
    case 'rename': {
      const found = call(deed.which);
      if (found !== undefined) store.commit(commitOf((now) => renameCall(now, { call: found.id, name: deed.name })));
      break;
    }
    case 'delete': {
      const found = call(deed.which);
      if (found !== undefined) store.commit(commitOf((now) => deleteCall(now, { call: found.id })));
      break;
    }
    case 'stand': {
      const found = call(deed.which);
      if (found !== undefined) store.setBoard(standInCall(store.get().board, found));
      break;
    }
    case 'number':
      store.setBoard({ rushers: deed.count });
      keepChange(store);
      break;
    case 'live':
    case 'take back': {
      const found = call(deed.which);
      const look = playbook.looks[deed.which % playbook.looks.length];
      if (found === undefined || look === undefined) break;
      const about = { rule: 'gap.open', look: look.id, evidence: 'somebody||' };
      const which = { call: found.id, about };
      const lives = deed.kind === 'live' ? deed.reason : null;
      store.commit(
        commitOf((now) => (lives === null ? takeBack(now, which) : waive(now, { ...which, reason: lives }))),
      );
      break;
    }
    case 'team':
      store.commit(rename(deed.name));
      break;
  }
}

/** Puts what is on the board into the kept call it came from. */
function keepChange(store: AppStore): void {
  const { board } = store.get();
  const { call } = board;
  if (call !== null) store.commit(commitOf((now) => updateCall(now, { call, parts: partsOf(board) })));
}

function manOf(store: AppStore, index: number): Man {
  const { playbook, board } = store.get();
  const front = playbook.fronts.find(({ id }) => id === board.front);
  const look = playbook.looks.find(({ id }) => id === board.look);
  const men: Man[] = [
    ...(front?.roles ?? []).map(({ role }): Man => ({ kind: 'defender', role })),
    ...(look?.players ?? []).map(({ id }): Man => ({ kind: 'offence', player: id })),
  ];
  const man = men[index % men.length];
  if (man === undefined) throw new Error('Nobody is on the field');
  return man;
}

function move(store: AppStore, man: Man, at: { x: number; y: number }, gesture: string | null): Commit {
  const { board } = store.get();
  return {
    ...commitOf((playbook) => moveMan(playbook, board, man, { x: at.x, y: at.y })),
    look: board.look,
    gesture,
  };
}

/** What was set by hand last in the front that is called. */
function lastHand(store: AppStore): unknown {
  const { playbook, board } = store.get();
  return playbook.fronts.find(({ id }) => id === board.front)?.byHand.at(-1);
}

function rename(name: string): Commit {
  return commitOf((playbook) => renamePlaybook(playbook, { name }));
}

function commitOf(change: Commit['change']): Commit {
  return { label: 'did something', look: null, gesture: null, change };
}
