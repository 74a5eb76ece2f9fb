import { describe, expect, it } from 'vitest';
import { asPlayerId, asRoleId, parseLook, type Look } from '../../src/engine/index.ts';
import { copySpots, moveMen, pasteSpots, type Standing } from '../../src/store/index.ts';
import { demoStore, valueOf } from './demo.ts';

const TIGHT: Look = valueOf(parseLook('line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5'));
const EMPTY: Look = valueOf(parseLook('line wr:Y@7 wr:X@-14 wr:H@-7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 wr:A@10,-1.5'));
const nose = asRoleId('N');

function idOf(look: Look, letter: string, nth = 0): ReturnType<typeof asPlayerId> {
  const found = look.players.filter((player) => player.letter === letter).toSorted((a, b) => a.x - b.x)[nth];
  if (found === undefined) throw new Error(`There is no ${letter}`);
  return found.id;
}

describe('spots carried to another look', () => {
  it('find a man of the offence by his letter', () => {
    const men: readonly Standing[] = [{ man: { kind: 'offence', player: idOf(TIGHT, 'H') }, at: { x: -6, y: -1.5 } }];
    expect(pasteSpots(copySpots(TIGHT, men), EMPTY, [])).toStrictEqual([
      { man: { kind: 'offence', player: idOf(EMPTY, 'H') }, at: { x: -6, y: -1.5 } },
    ]);
  });

  it('find the right one of two guards', () => {
    const guards = TIGHT.players.filter(({ kind, x }) => kind === 'lineman' && Math.abs(x) < 2);
    const right = guards.find(({ x }) => x > 0);
    if (right === undefined) throw new Error('There is no right guard');
    const men: readonly Standing[] = [{ man: { kind: 'offence', player: right.id }, at: { x: 1.6, y: -0.6 } }];
    const [pasted] = pasteSpots(copySpots(TIGHT, men), EMPTY, []);
    const there = EMPTY.players.find(({ kind, x }) => kind === 'lineman' && x > 0 && x < 2);
    expect(pasted?.man).toStrictEqual({ kind: 'offence', player: there?.id });
  });

  it('find a defender by his role, and leave out whoever is not there', () => {
    const men: readonly Standing[] = [
      { man: { kind: 'defender', role: nose }, at: { x: 0.5, y: 1 } },
      { man: { kind: 'offence', player: idOf(TIGHT, 'T', 2) }, at: { x: 0, y: -6 } },
      { man: { kind: 'offence', player: asPlayerId('stranger') }, at: { x: 0, y: -6 } },
    ];
    const clip = copySpots(TIGHT, men);
    expect(clip).toHaveLength(2);
    expect(pasteSpots(clip, EMPTY, [nose])).toHaveLength(
      TIGHT.players.filter(({ letter }) => letter === 'T').length > 2 ? 1 : 2,
    );
    expect(pasteSpots(clip.slice(0, 1), EMPTY, [])).toStrictEqual([]);
  });
});

describe('moving several men', () => {
  it('is one step, and undone as one', () => {
    const store = demoStore();
    const before = store.get().playbook;
    const [front] = before.fronts;
    const [look] = before.looks;
    const [first, second] = front?.roles ?? [];
    const [player] = look?.players ?? [];
    if (first === undefined || second === undefined || player === undefined) throw new Error('The demo lacks men');
    const moves: readonly Standing[] = [
      { man: { kind: 'defender', role: first.role }, at: { x: 2, y: 3 } },
      { man: { kind: 'defender', role: second.role }, at: { x: 3, y: 3 } },
      { man: { kind: 'offence', player: player.id }, at: { x: -3, y: -2 } },
    ];
    store.commit({
      label: 'moved 3 men',
      look: null,
      gesture: null,
      change: (playbook) => moveMen(playbook, store.get().board, moves),
    });
    expect(store.get().playbook).not.toBe(before);
    expect(store.steps().undo).toBe(1);
    store.undo();
    expect(store.get().playbook).toStrictEqual(before);
  });
});
