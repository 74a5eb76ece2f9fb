import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import { asCallId, asFrontId, asLookId, asPlayerId, asRoleId, type Point } from '../../src/engine/index.ts';
import {
  clearHand,
  deleteCall,
  keepCall,
  moveMan,
  nextCallId,
  partsOf,
  renameCall,
  renamePlaybook,
  setCallParts,
  updateCall,
  type Board,
  type CallParts,
  type CommandProblem,
} from '../../src/store/index.ts';
import { moveDefender } from '../../src/store/commands/defence.ts';
import { moveOffence } from '../../src/store/commands/offence.ts';
import { demo, demoStore, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const front = firstOf(playbook.fronts);
const look = firstOf(playbook.looks);
const { role } = firstOf(front.roles);
const player = firstOf(look.players);
const call = firstOf(playbook.calls);
const other = playbook.calls[1] ?? call;
const nowhere = { front: asFrontId('nobody'), look: asLookId('nobody'), role: asRoleId('nobody') };

const refusalOf = (result: { ok: true } | { ok: false; problem: CommandProblem }): CommandProblem | null =>
  result.ok ? null : result.problem;

describe('moving a defender', () => {
  const here = { front: front.id, look: look.id, role };

  it.each([
    ['a quarter of a yard', { x: 1.25, y: 0.75 }, { x: 1.25, y: 0.75 }],
    ['to the nearest twentieth', { x: 1.2345, y: 0.76 }, { x: 1.25, y: 0.75 }],
    ['never to minus nothing', { x: -0.01, y: 4 }, { x: 0, y: 4 }],
  ])('stands him by hand: %s', (_words, at: Point, kept: Point) => {
    const after = valueOf(moveDefender(playbook, { ...here, at }));
    expect(after.fronts[0]?.byHand.filter((hand) => hand.look === look.id && hand.role === role)).toStrictEqual([
      { look: look.id, role, ...kept },
    ]);
    expect(Object.is(after.fronts[0]?.byHand.at(-1)?.x, -0)).toBe(false);
  });

  it('keeps one spot a look, and leaves every other object alone', () => {
    const once = valueOf(moveDefender(playbook, { ...here, at: { x: 1, y: 1 } }));
    const twice = valueOf(moveDefender(once, { ...here, at: { x: 2, y: 2 } }));
    expect(twice.fronts[0]?.byHand).toHaveLength(front.byHand.length + 1);
    expect(twice.fronts[0]?.roles).toBe(front.roles);
    expect(twice.fronts[1]).toBe(playbook.fronts[1]);
    expect(twice.looks).toBe(playbook.looks);
  });

  it('is taken back by giving him to his rule', () => {
    const moved = valueOf(moveDefender(playbook, { ...here, at: { x: 1, y: 1 } }));
    expect(valueOf(clearHand(moved, here))).toStrictEqual(playbook);
  });

  it.each([
    ['front', { ...here, front: nowhere.front }],
    ['look', { ...here, look: nowhere.look }],
    ['role', { ...here, role: nowhere.role }],
  ])('is refused when the %s is not there', (what, args) => {
    const result = moveDefender(playbook, { ...args, at: { x: 0, y: 1 } });
    expect(refusalOf(result)).toStrictEqual({ kind: 'not-there', what });
  });
});

describe('moving a man of the offence', () => {
  it('moves him and nobody else', () => {
    const after = valueOf(moveOffence(playbook, { look: look.id, player: player.id, at: { x: -3.02, y: -1 } }));
    expect(after.looks[0]?.players[0]).toStrictEqual({ ...player, x: -3, y: -1 });
    expect(after.looks[0]?.players.slice(1)).toStrictEqual(look.players.slice(1));
    expect(after.looks.slice(1)).toStrictEqual(playbook.looks.slice(1));
  });

  it.each([
    ['look', { look: nowhere.look, player: player.id }],
    ['player', { look: look.id, player: asPlayerId('nobody') }],
  ])('is refused when the %s is not there', (what, args) => {
    const result = moveOffence(playbook, { ...args, at: { x: 0, y: -1 } });
    expect(refusalOf(result)).toStrictEqual({ kind: 'not-there', what });
  });
});

describe('moving the man in motion', () => {
  const moving: Playbook = {
    ...playbook,
    looks: playbook.looks.map((each) =>
      each === look ? { ...look, motion: { player: player.id, to: { x: 4, y: -1 } } } : each,
    ),
  };

  it('moves where he is at the snap, and leaves where he starts', () => {
    const after = valueOf(moveOffence(moving, { look: look.id, player: player.id, at: { x: 5.02, y: -1.5 } }));
    expect(after.looks[0]).toStrictEqual({
      ...look,
      motion: { player: player.id, to: { x: 5, y: -1.5 } },
    });
    expect(checkPlaybook(after).ok).toBe(true);
  });
});

describe('moving somebody on the board', () => {
  const board: Board = { ...demoStore().get().board, look: look.id, front: front.id, spot: 'middle' };
  const defender = { kind: 'defender', role } as const;
  const attacker = { kind: 'offence', player: player.id } as const;
  // Half the field's width, 160 feet (NFHS Rule 1-2-1; NCAA Rule 1-2-1).
  const half = Math.round((160 / 6) * 20) / 20;

  it.each([
    ['a defender stays on his side of the ball', defender, { x: 0, y: -3 }, { x: 0, y: 0 }],
    ['a defender stays between the sidelines', defender, { x: 99, y: 5 }, { x: half, y: 5 }],
    ['the offence stays on its side', attacker, { x: 2, y: 3 }, { x: 2, y: 0 }],
    ['nobody runs out of the back', attacker, { x: -99, y: -99 }, { x: -half, y: -40 }],
  ])('%s', (_words, man, at, kept) => {
    const after = valueOf(moveMan(playbook, board, man, at));
    const spot =
      man.kind === 'defender'
        ? after.fronts[0]?.byHand.at(-1)
        : after.looks[0]?.players.find(({ id }) => id === man.player);
    expect(spot).toMatchObject(kept);
    expect(checkPlaybook(after).ok).toBe(true);
  });
});

describe('kept calls', () => {
  const parts = partsOf(other);
  const id = asCallId('new');

  it('a new one gets a number nobody has, the same one every time', () => {
    const next = nextCallId(playbook);
    expect(playbook.calls.map((each) => each.id)).not.toContain(next);
    expect(nextCallId(playbook)).toBe(next);
    const kept = valueOf(keepCall(playbook, { id: next, name: '  Reed ', parts, from: null }));
    expect(kept.calls.at(-1)).toStrictEqual({
      id: next,
      name: 'Reed',
      ...parts,
      waivers: [],
      tags: [],
      installDay: null,
    });
    expect(nextCallId(kept)).not.toBe(next);
  });

  it('what is called now can be put into one', () => {
    const after = valueOf(updateCall(playbook, { call: call.id, parts }));
    expect(after.calls[0]).toStrictEqual({ ...call, ...parts });
  });

  it('what the coach lives with and its tags go from one call into a new one; the day it is put in is of each call itself', () => {
    const told: CallParts = {
      ...parts,
      combination: { kind: 'either-or', key: [{ kind: 'field', side: 'call' }] },
      rushers: 6,
    };
    const waivers = [{ rule: 'gap.open', look: look.id, evidence: 'x||', reason: 'we live with it' }];
    const lives = { waivers, tags: ['third down'], installDay: 12 };
    const lived = { ...playbook, calls: playbook.calls.map((each) => (each === call ? { ...each, ...lives } : each)) };
    const kept = valueOf(keepCall(lived, { id, name: 'Reed', parts: told, from: call.id }));
    expect(kept.calls.at(-1)).toStrictEqual({ id, name: 'Reed', ...told, ...lives, installDay: null });
    expect(valueOf(updateCall(kept, { call: id, parts })).calls.at(-1)).toStrictEqual({
      id,
      name: 'Reed',
      ...parts,
      ...lives,
      installDay: null,
    });
    expect(checkPlaybook(kept).ok).toBe(true);
  });

  it('says on which day of camp it is put in, and its tags, each once; what is called stays', () => {
    const after = valueOf(
      setCallParts(playbook, { call: call.id, parts: { installDay: 3, tags: [' goal line', 'goal line'] } }),
    );
    expect(after.calls[0]).toStrictEqual({ ...call, installDay: 3, tags: ['goal line'] });
    expect(after.calls[1]).toBe(playbook.calls[1]);
    expect(refusalOf(setCallParts(playbook, { call: asCallId('nothing'), parts: {} }))).toStrictEqual({
      kind: 'not-there',
      what: 'call',
    });
  });

  it('one is deleted with its check-outs, and not at all while another checks to it', () => {
    const row = { formation: 'trips', action: { kind: 'check-to', call: other.id } } as const;
    const book: Playbook = { ...playbook, checkOuts: [{ call: call.id, rows: [row] }] };
    expect(refusalOf(deleteCall(book, { call: other.id }))).toStrictEqual({ kind: 'checked-to', by: call.name });
    const after = valueOf(deleteCall(book, { call: call.id }));
    expect(after.checkOuts).toStrictEqual([]);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('can be renamed and deleted', () => {
    expect(valueOf(renameCall(playbook, { call: call.id, name: 'Reed' })).calls[0]).toStrictEqual({
      ...call,
      name: 'Reed',
    });
    expect(valueOf(deleteCall(playbook, { call: call.id })).calls).toStrictEqual(playbook.calls.slice(1));
  });

  it('may keep their own name when renamed', () => {
    expect(valueOf(renameCall(playbook, { call: call.id, name: call.name }))).toStrictEqual(playbook);
  });

  const nobody = asCallId('nobody');
  it.each([
    ['an empty name', keepCall(playbook, { id, name: '  ', parts, from: null }), { kind: 'name-empty' }],
    [
      'a taken name',
      keepCall(playbook, { id, name: call.name, parts, from: null }),
      { kind: 'name-taken', name: call.name },
    ],
    [
      'no front',
      keepCall(playbook, { id, name: 'Reed', parts: { ...parts, front: null }, from: null }),
      { what: 'front' },
    ],
    [
      'no pressure',
      keepCall(playbook, { id, name: 'Reed', parts: { ...parts, first: null }, from: null }),
      { what: 'pressure' },
    ],
    ['renaming to an empty name', renameCall(playbook, { call: call.id, name: '' }), { kind: 'name-empty' }],
    ['renaming to a taken name', renameCall(playbook, { call: other.id, name: call.name }), { kind: 'name-taken' }],
    ['renaming nobody', renameCall(playbook, { call: nobody, name: 'Reed' }), { what: 'call' }],
    ['changing nobody', updateCall(playbook, { call: nobody, parts }), { what: 'call' }],
    ['deleting nobody', deleteCall(playbook, { call: nobody }), { what: 'call' }],
  ])('are refused: %s', (_words, result, problem) => {
    expect(refusalOf(result)).toMatchObject(problem);
  });
});

describe('the name of the playbook', () => {
  it('is changed, without blanks around it', () => {
    expect(valueOf(renamePlaybook(playbook, { name: ' Reed Cutters ' })).team).toStrictEqual({
      ...playbook.team,
      name: 'Reed Cutters',
    });
  });

  it('may not be empty', () => {
    expect(refusalOf(renamePlaybook(playbook, { name: ' ' }))).toStrictEqual({ kind: 'name-empty' });
  });
});
