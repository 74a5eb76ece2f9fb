import { describe, expect, it } from 'vitest';
import type { Playbook } from '../../src/document/index.ts';
import { analyse, formationClasses, type CoverageId } from '../../src/engine/index.ts';
import {
  createAnalyst,
  createAppStore,
  moveMan,
  renameCall,
  standings,
  type AppStore,
  type Board,
  type Commit,
} from '../../src/store/index.ts';
import { demo, demoStore, firstOf, valueOf } from './demo.ts';

const looks = demo().looks;

function moveFirst(store: AppStore, x: number): void {
  const { board, playbook } = store.get();
  const { role } = firstOf(firstOf(playbook.fronts.filter(({ id }) => id === board.front)).roles);
  const change = moveMan(playbook, board, { kind: 'defender', role }, { x, y: 1 });
  valueOf(store.commit({ label: 'moved him', look: board.look, gesture: null, change: () => change }));
}

/** A coverage of the demo that no pressure of its first call brings by itself. */
function otherShell(): CoverageId {
  const { first, second } = demoStore().get().board;
  const own = demo().pressures.flatMap(({ id, coverage }) => (id === first || id === second ? [coverage] : []));
  return firstOf(demo().coverages.filter(({ id }) => !own.includes(id))).id;
}

function commitOf(change: Commit['change'] | ((playbook: Playbook) => Playbook)): Commit {
  const whole: Commit['change'] = (playbook) => {
    const changed = change(playbook);
    return 'ok' in changed ? changed : { ok: true, value: changed };
  };
  return { label: 'did something', look: null, gesture: null, change: whole };
}

describe('the analyst', () => {
  it('says what the engine says', () => {
    const store = demoStore();
    const analysis = valueOf(createAnalyst().onBoard(store.get()));
    expect(analysis).toStrictEqual(analyse(analysis.setup));
    expect(analysis.setup.look.id).toBe(store.get().board.look);
  });

  it('works nothing out twice', () => {
    const store = demoStore();
    const analyst = createAnalyst();
    const before = valueOf(analyst.onBoard(store.get()));
    store.setView({ turned: true });
    expect(valueOf(analyst.onBoard(store.get()))).toBe(before);
  });

  it('after a drag works out that look only', () => {
    const store = demoStore();
    const analyst = createAnalyst();
    for (const { id } of looks) analyst.inLook(store.get(), id);
    moveFirst(store, 3);
    const forgotten = looks.filter(({ id }) => analyst.known(store.get(), id) === null);
    expect(forgotten.map(({ id }) => id)).toStrictEqual([store.get().board.look]);
  });

  it('after a change of the call works out every look', () => {
    const store = demoStore();
    const analyst = createAnalyst();
    for (const { id } of looks) analyst.inLook(store.get(), id);
    store.setBoard({ spot: 'left' });
    expect(looks.filter(({ id }) => analyst.known(store.get(), id) !== null)).toStrictEqual([]);
  });

  it.each<[string, Partial<Board>]>([
    ['how the two are joined', { combination: { kind: 'either-or', key: [{ kind: 'back', side: 'call' }] } }],
    ['how many come', { rushers: 9 }],
    ['the coverage', { coverage: otherShell() }],
  ])('works every look out again after a change of %s', (_words, patch) => {
    const store = demoStore();
    const analyst = createAnalyst();
    for (const { id } of looks) analyst.inLook(store.get(), id);
    store.setBoard(patch);
    expect(looks.filter(({ id }) => analyst.known(store.get(), id) !== null)).toStrictEqual([]);
    expect(valueOf(analyst.onBoard(store.get()))).toStrictEqual(analyse(valueOf(analyst.onBoard(store.get())).setup));
  });

  it.each<[string, (playbook: Playbook, board: Board) => Playbook]>([
    ['the dictionary', (book) => ({ ...book, dictionary: [{ word: 'Reed', meaning: 'the nose goes first' }] })],
    [
      'the shell of the second pressure',
      (book, board) => {
        const second = book.pressures.find(({ id }) => id === board.second);
        return {
          ...book,
          coverages: book.coverages.map((each) => (each.id === second?.coverage ? { ...each, name: 'Other' } : each)),
        };
      },
    ],
  ])('works every look out again after a change of %s', (_words, change) => {
    const store = demoStore();
    store.setBoard({ coverage: null });
    const analyst = createAnalyst();
    for (const { id } of looks) analyst.inLook(store.get(), id);
    valueOf(store.commit(commitOf((playbook) => change(playbook, store.get().board))));
    expect(looks.filter(({ id }) => analyst.known(store.get(), id) !== null)).toStrictEqual([]);
  });

  it('keeps what it knows while something changes that no answer rests on', () => {
    const store = demoStore();
    const analyst = createAnalyst();
    for (const { id } of looks) analyst.inLook(store.get(), id);
    const { id, name } = firstOf(demo().calls.slice(-1));
    valueOf(store.commit(commitOf((playbook) => renameCall(playbook, { call: id, name: `${name} again` }))));
    expect(looks.filter(({ id: look }) => analyst.known(store.get(), look) === null)).toStrictEqual([]);
  });

  it('checks out of a call where its table says so, and only there', () => {
    const { board } = demoStore().get();
    const [call, target] = [board.call, firstOf(demo().calls.slice(-1))];
    if (call === null) throw new Error('The demo playbook has no calls');
    const row = { formation: 'doubles-tight-end', action: { kind: 'check-to', call: target.id } } as const;
    const store = createAppStore({ ...demo(), checkOuts: [{ call, rows: [row] }] }, { readOnly: false });
    const ran = looks.map(({ id }) => {
      const { setup, facts } = valueOf(createAnalyst().inLook(store.get(), id));
      return {
        out: setup.checkOut === row,
        first: setup.first.id,
        ours: formationClasses(facts).includes(row.formation),
      };
    });
    expect(ran.filter(({ out }) => out).length).toBeGreaterThan(0);
    expect(ran.filter(({ out, first }) => out !== (first === target.first))).toStrictEqual([]);
    expect(ran.filter(({ out, ours }) => out && !ours)).toStrictEqual([]);
  });

  it('follows a man who is dragged, while the playbook stays as it is', () => {
    const store = demoStore();
    const analyst = createAnalyst();
    const before = valueOf(analyst.onBoard(store.get()));
    const { man, at } = firstOf(standings(before));
    store.setPreview([{ man, at: { x: at.x + 2, y: at.y } }]);
    const during = valueOf(analyst.onBoard(store.get()));
    expect(firstOf(standings(during))).toMatchObject({ man });
    expect(firstOf(during.assignments).aligned.by).toBe('hand');
    expect(store.get().playbook).toBe(demo());
    store.setPreview(null);
    expect(valueOf(analyst.onBoard(store.get()))).toStrictEqual(before);
  });

  it('finds all 22 on the field', () => {
    const analysis = valueOf(createAnalyst().onBoard(demoStore().get()));
    expect(standings(analysis)).toHaveLength(22);
  });

  it.each([
    ['look', { ...demo(), looks: [], opponents: [], pressures: [], calls: [], fronts: [] }],
    ['front', { ...demo(), fronts: [], calls: [] }],
    ['pressure', { ...demo(), pressures: [], calls: [] }],
  ])('says when the playbook has no %s', (missing, playbook) => {
    const store = createAppStore(playbook, { readOnly: false });
    expect(createAnalyst().onBoard(store.get())).toStrictEqual({ ok: false, problem: { missing } });
  });
});
