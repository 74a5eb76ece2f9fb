import { describe, expect, it } from 'vitest';
import { checkPlaybook, saveDocument } from '../../src/document/index.ts';
import {
  analyse,
  applyEdit,
  asCoverageId,
  asFrontId,
  asPressureId,
  suggestionsFor,
  type Analysis,
  type Edit,
  type FrontId,
} from '../../src/engine/index.ts';
import {
  applySuggestion,
  createAnalyst,
  editedParts,
  isCallEdit,
  partsOf,
  shareEdits,
  standInCall,
  type AppStore,
  type Commit,
} from '../../src/store/index.ts';
import { demo, demoStore, firstOf, valueOf } from './demo.ts';

/** Analyses a search may cost here. */
const BUDGET = 40;

interface Offer {
  readonly store: AppStore;
  readonly analysis: Analysis;
  readonly edit: Edit;
}

/** For each kind of edit, the first that mends something in the demo playbook, with the board it is offered on. */
function offers(): ReadonlyMap<Edit['kind'], Offer> {
  const playbook = demo();
  const found = new Map<Edit['kind'], Offer>();
  for (const call of playbook.calls.slice(0, 8)) {
    for (const look of playbook.looks.slice(0, 6)) {
      const store = demoStore();
      store.setBoard(standInCall({ ...store.get().board, look: look.id }, call));
      const analysis = valueOf(createAnalyst().onBoard(store.get()));
      for (const finding of analysis.findings) {
        const suggestions = suggestionsFor(finding, analysis, { coverages: playbook.coverages }, BUDGET);
        for (const edit of suggestions.kind === 'none' ? [] : suggestions.edits) {
          if (!found.has(edit.kind)) found.set(edit.kind, { store, analysis, edit });
        }
      }
    }
  }
  return found;
}

const offered = [...offers().values()].map((offer) => [offer.edit.kind, offer] as const);

function apply({ store, analysis, edit }: Offer): Commit {
  const { board } = store.get();
  const place = { call: board.call, front: analysis.setup.front.id };
  return {
    label: 'mended it',
    look: board.look,
    gesture: null,
    change: (playbook) => applySuggestion(playbook, { edit, ...place }),
  };
}

describe('a suggestion', () => {
  it('is there for several kinds of change', () => {
    expect(offered.length).toBeGreaterThanOrEqual(4);
  });

  it.each(offered)('to %s gives on the board what was promised, and is taken back by one step', (_kind, offer) => {
    const { store, analysis, edit } = offer;
    const promised = analyse(valueOf(applyEdit(analysis.setup, edit)));
    const before = { text: saveDocument(store.get().playbook), board: store.get().board };
    const analyst = createAnalyst();
    valueOf(analyst.onBoard(store.get()));

    store.setTrial(edit);
    expect(analyst.onTrial(store.get())?.findings).toStrictEqual(promised.findings);
    expect(saveDocument(store.get().playbook)).toBe(before.text);

    valueOf(store.commit(apply(offer)));
    const after = valueOf(analyst.onBoard(store.get()));
    expect(after.verdict).toBe(promised.verdict);
    expect(after.findings.map(({ rule, who, gaps }) => ({ rule, who, gaps }))).toStrictEqual(
      promised.findings.map(({ rule, who, gaps }) => ({ rule, who, gaps })),
    );
    expect(checkPlaybook(store.get().playbook).ok).toBe(true);
    expect(store.get().trial).toBeNull();
    expect(store.steps().undo).toBe(1);

    store.undo();
    expect(saveDocument(store.get().playbook)).toBe(before.text);
    expect(store.get().board).toStrictEqual(before.board);
    expect(valueOf(analyst.onBoard(store.get())).findings).toStrictEqual(analysis.findings);
    store.redo();
    expect(valueOf(analyst.onBoard(store.get())).verdict).toBe(promised.verdict);
    store.undo();
  });
});

describe('an edit', () => {
  const { board } = demoStore().get();
  const call = firstOf(demo().calls);
  const shell = firstOf(demo().coverages);
  const place = { call: call.id, front: call.front };
  const nowhere = asPressureId('nobody');

  it('of what is called changes the board alone when it is not kept', () => {
    const parts = partsOf(board);
    const edited = (edit: Edit) => (isCallEdit(edit) ? editedParts(parts, edit) : null);
    expect(edited({ kind: 'turn', turn: 'same' })).toStrictEqual({ ...parts, turn: 'same' });
    expect(edited({ kind: 'swap' })).toStrictEqual({ ...parts, first: parts.second, second: parts.first });
    expect(edited({ kind: 'coverage', coverage: shell })).toStrictEqual({ ...parts, coverage: shell.id });
    expect(edited({ kind: 'rushers', count: 6 })).toStrictEqual({ ...parts, rushers: 6 });
    expect(editedParts({ ...parts, second: null }, { kind: 'swap' })).toStrictEqual({ ...parts, second: null });
    expect(edited({ kind: 'leave-out', which: 'first', pressure: call.first, look: firstOf(demo().looks) })).toBeNull();
  });

  it.each<[string, Edit, { readonly call?: null; readonly front?: FrontId }, object]>([
    ['of a call that is not there', { kind: 'rushers', count: 6 }, { call: null }, { what: 'call' }],
    [
      'of a pressure that is not there',
      { kind: 'leave-out', which: 'first', pressure: nowhere, look: firstOf(demo().looks) },
      {},
      { what: 'pressure' },
    ],
    [
      'of a shell that is not there',
      {
        kind: 'duty',
        coverage: { id: asCoverageId('nobody'), name: '' },
        who: { kind: 'role', role: firstOf(demo().roles).id },
        job: { kind: 'spy', run: { fits: [], firm: false, support: null } },
      },
      {},
      { what: 'coverage' },
    ],
    [
      'in a front that is not there',
      { kind: 'stand', look: firstOf(demo().looks), role: firstOf(demo().roles).id, x: 0, y: 1 },
      { front: asFrontId('nobody') },
      { what: 'front' },
    ],
    [
      'of a man the pressure does not tell',
      {
        kind: 'untell',
        which: 'first',
        pressure: call.first,
        who: { kind: 'role', role: firstOf(demo().roles.slice(-1)).id },
      },
      {},
      { kind: 'no-longer' },
    ],
  ])('is refused: %s', (_words, edit, elsewhere, problem) => {
    expect(applySuggestion(demo(), { edit, ...place, ...elsewhere })).toMatchObject({ ok: false, problem });
  });

  it('stands a man to the twentieth of a yard', () => {
    const role = firstOf(demo().roles).id;
    const edit: Edit = { kind: 'stand', look: firstOf(demo().looks), role, x: 1.2345, y: 0.76 };
    const after = valueOf(applySuggestion(demo(), { edit, ...place }));
    const front = after.fronts.find(({ id }) => id === call.front);
    expect(front?.byHand.at(-1)).toStrictEqual({ look: edit.look.id, role, x: 1.25, y: 0.75 });
  });
});

describe('where suggested edits belong', () => {
  const playbook = demo();
  const call = firstOf(playbook.calls);
  const rushers: Edit = { kind: 'rushers', count: 7 };
  const turn: Edit = { kind: 'turn', turn: 'opposite' };
  const elsewhere: Edit = { kind: 'leave-out', which: 'first', pressure: call.first, look: firstOf(playbook.looks) };
  const board = standInCall(demoStore().get().board, call);

  it('all of them to the playbook, where the call is kept as it is on the board', () => {
    const edits = [rushers, elsewhere, turn];
    expect(shareEdits({ playbook, board }, edits)).toEqual({ parts: null, rest: edits });
  });

  it.each([
    ['has been changed since it was kept', { ...board, rushers: 6 }],
    ['never was kept', { ...board, call: null }],
  ])('those of a call that %s to the board, one after the other; the rest to the playbook', (_words, changed) => {
    const { parts, rest } = shareEdits({ playbook, board: changed }, [rushers, elsewhere, turn]);
    expect(parts).toEqual({ ...partsOf(changed), rushers: 7, turn: 'opposite' });
    expect(rest).toEqual([elsewhere]);
  });

  it('the board is left alone where they change nothing of the call', () => {
    expect(shareEdits({ playbook, board: { ...board, call: null } }, [elsewhere])).toEqual({
      parts: null,
      rest: [elsewhere],
    });
  });
});
