import { describe, expect, it } from 'vitest';
import { analyse } from '../../src/engine/index.ts';
import { createAnalyst, createAppStore, moveMan, standings, type AppStore } from '../../src/store/index.ts';
import { demo, demoStore, firstOf, valueOf } from './demo.ts';

const looks = demo().looks;

function moveFirst(store: AppStore, x: number): void {
  const { board, playbook } = store.get();
  const { role } = firstOf(firstOf(playbook.fronts.filter(({ id }) => id === board.front)).roles);
  const change = moveMan(playbook, board, { kind: 'defender', role }, { x, y: 1 });
  valueOf(store.commit({ label: 'moved him', look: board.look, gesture: null, change: () => change }));
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

  it('follows a man who is dragged, while the playbook stays as it is', () => {
    const store = demoStore();
    const analyst = createAnalyst();
    const before = valueOf(analyst.onBoard(store.get()));
    const { man, at } = firstOf(standings(before));
    store.setPreview({ man, at: { x: at.x + 2, y: at.y } });
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
