import { describe, expect, it } from 'vitest';
import { asPlayerId, asRoleId, type Point } from '../../src/engine/index.ts';
import type { Man, Preview, Standing } from '../../src/store/index.ts';
import { unsnapped } from '../../src/editor/snap.ts';
import {
  arranged,
  moveTool,
  nudge,
  placeTool,
  type Arrangement,
  type EditorCommand,
  type Hints,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from '../../src/editor/tools/index.ts';

const nose: Man = { kind: 'defender', role: asRoleId('N') };
const backer: Man = { kind: 'defender', role: asRoleId('M') };
const safety: Man = { kind: 'defender', role: asRoleId('FS') };
const end: Man = { kind: 'offence', player: asPlayerId('Y') };
const gone: Man = { kind: 'defender', role: asRoleId('gone') };
const men: readonly Standing[] = [
  { man: nose, at: { x: 0, y: 1 } },
  { man: backer, at: { x: 1, y: 4.5 } },
  { man: safety, at: { x: 3, y: 12 } },
  { man: end, at: { x: 4.5, y: -0.5 } },
];

/** A field on which whole yards draw a man to themselves when the test says so. */
function contextOf(selection: readonly Man[], snapping: boolean): ToolContext {
  return {
    whereIs: (man) => men.find((each) => each.man === man)?.at ?? null,
    men,
    selection,
    slack: 0.2,
    snap: (_man, _moving, at) =>
      snapping
        ? { at: { x: Math.round(at.x), y: Math.round(at.y) }, lineX: null, lineY: null, name: 'a whole yard' }
        : unsnapped(at),
  };
}

const down = (man: Man | null, x: number, y: number, adding = false): ToolEvent => ({
  kind: 'down',
  man,
  at: { x, y },
  adding,
});
const move = (x: number, y: number, free = false): ToolEvent => ({ kind: 'move', at: { x, y }, free });
const up = (x: number, y: number, free = false): ToolEvent => ({ kind: 'up', at: { x, y }, free });
const cancel: ToolEvent = { kind: 'cancel' };

/** Everything a tool asked for during these events, its last preview and hints, and the state it ended in. */
function play<State>(
  tool: Tool<State>,
  events: readonly ToolEvent[],
  { selection = [], snapping = false }: { readonly selection?: readonly Man[]; readonly snapping?: boolean } = {},
) {
  const commands: EditorCommand[] = [];
  let picked = selection;
  let state = tool.start;
  let preview: Preview | null = null;
  let hints: Hints | undefined;
  for (const event of events) {
    const step = tool.step(state, event, contextOf(picked, snapping));
    ({ state, preview, hints } = step);
    commands.push(...step.commands);
    for (const command of step.commands) if (command.kind === 'select') picked = command.men;
  }
  return { state, preview, hints, commands };
}

const select = (...picked: readonly Man[]): EditorCommand => ({ kind: 'select', men: picked });
const moves = (...to: readonly (readonly [Man, number, number])[]): EditorCommand => ({
  kind: 'move',
  moves: to.map(([man, x, y]) => ({ man, at: { x, y } })),
});

describe('the moving tool', () => {
  it.each<[string, readonly ToolEvent[], readonly EditorCommand[]]>([
    ['a click selects', [down(nose, 0.1, 1), up(0.1, 1)], [select(nose)]],
    ['a click with a shaky hand selects', [down(nose, 0, 1), move(0.1, 1.1), up(0.1, 1.1)], [select(nose)]],
    ['a click on grass lets go', [down(null, 9, 9), up(9, 9)], [select()]],
    ['a click on a man who is not there lets go', [down(gone, 9, 9), up(9, 9)], [select()]],
    [
      'a drag moves him by as much as the pointer, wherever he was gripped',
      [down(nose, 0.25, 1.25), move(1, 1), move(2.25, 2.25), up(2.25, 2.25)],
      [select(nose), moves([nose, 2, 2])],
    ],
    ['so for the offence', [down(end, 4.5, -0.5), move(5, -0.5), up(5, -1.5)], [select(end), moves([end, 5, -1.5])]],
    ['Escape gives a drag up', [down(nose, 0, 1), move(3, 3), cancel, move(4, 4), up(4, 4)], [select(nose)]],
    ['so does a second pointer', [down(nose, 0, 1), move(3, 3), down(end, 4.5, -0.5), up(4, 4)], [select(nose)]],
    ['moving without pressing does nothing', [move(1, 1), up(1, 1)], []],
  ])('%s', (_words, events, commands) => {
    const played = play(moveTool, events);
    expect(played.commands).toStrictEqual(commands);
    expect(played).toMatchObject({ state: { kind: 'idle' }, preview: null });
  });

  it('shows him where he would land', () => {
    const { preview, state } = play(moveTool, [down(nose, 0.5, 1), move(1.5, 2)]);
    expect(preview).toStrictEqual([{ man: nose, at: { x: 1, y: 2 } }]);
    expect(state.kind).toBe('dragging');
  });
});

describe('several men', () => {
  it.each<[string, readonly Man[], readonly ToolEvent[], readonly EditorCommand[]]>([
    ['Shift adds one', [nose], [down(backer, 1, 4.5, true), up(1, 4.5)], [select(nose, backer)]],
    ['Shift on one of them takes him out', [nose, backer], [down(nose, 0, 1, true), up(0, 1)], [select(backer)]],
    ['without Shift another one is picked alone', [nose], [down(backer, 1, 4.5), up(1, 4.5)], [select(backer)]],
    ['a click on one of them picks him alone', [nose, backer], [down(nose, 0, 1), up(0, 1)], [select(nose)]],
    [
      'a drag on one of them moves all, one command',
      [nose, backer],
      [down(backer, 1, 4.5), move(2, 5), up(3, 5.5)],
      [moves([backer, 3, 5.5], [nose, 2, 2])],
    ],
    [
      'a drag on somebody else moves him alone',
      [nose, backer],
      [down(safety, 3, 12), move(4, 12), up(5, 12)],
      [select(safety), moves([safety, 5, 12])],
    ],
    [
      'a rectangle from the grass picks whoever is in it',
      [end],
      [down(null, -2, 0), move(2, 6), up(2, 6)],
      [select(nose, backer)],
    ],
    ['in whatever direction it is drawn', [], [down(null, 2, 6), move(-2, 0), up(-2, 0)], [select(nose, backer)]],
    ['with Shift the others stay', [end], [down(null, 2, 14, true), move(4, 11), up(4, 11)], [select(end, safety)]],
    ['Shift on grass lets nobody go', [end], [down(null, 9, 9, true), up(9, 9)], [select(end)]],
    ['Escape gives a rectangle up', [end], [down(null, -2, 0), move(2, 6), cancel, up(2, 6)], []],
  ])('%s', (_words, selection, events, commands) => {
    const played = play(moveTool, events, { selection });
    expect(played.commands).toStrictEqual(commands);
    expect(played.state).toStrictEqual({ kind: 'idle' });
  });

  it('shows the rectangle while it is drawn', () => {
    const { hints, preview } = play(moveTool, [down(null, -2, 0), move(2, 6)]);
    expect(hints?.box).toStrictEqual({ from: { x: -2, y: 0 }, to: { x: 2, y: 6 } });
    expect(preview).toBeNull();
  });
});

describe('lines that draw a man to themselves', () => {
  it.each<[string, readonly Man[], readonly ToolEvent[], EditorCommand]>([
    ['hold him', [nose], [down(nose, 0, 1), move(2.3, 2.2), up(2.3, 2.2)], moves([nose, 2, 2])],
    ['let him pass with Alt', [nose], [down(nose, 0, 1), move(2.3, 2.2), up(2.3, 2.2, true)], moves([nose, 2.3, 2.2])],
    [
      'hold the one under the pointer, and the others keep their distance to him',
      [backer, nose],
      [down(nose, 0, 1), move(2.3, 2.2), up(2.3, 2.2)],
      moves([nose, 2, 2], [backer, 3, 5.5]),
    ],
  ])('%s', (_words, selection, events, command) => {
    expect(play(moveTool, events, { selection, snapping: true }).commands).toStrictEqual([command]);
  });

  it('are named beside him', () => {
    const { hints } = play(moveTool, [down(nose, 0, 1), move(2.3, 2.2)], { snapping: true });
    expect(hints?.snapped).toMatchObject({ man: nose, to: { name: 'a whole yard', at: { x: 2, y: 2 } } });
  });
});

describe('placing by click', () => {
  const tool = placeTool(nose);
  const done: EditorCommand = { kind: 'done' };

  it.each<[string, readonly ToolEvent[], readonly EditorCommand[]]>([
    ['puts him where the pointer comes up', [down(null, 2, 2), up(2.1, 2)], [moves([nose, 2.1, 2]), done]],
    ['whoever stands there', [down(end, 4.5, -0.5), up(4.5, -0.5)], [moves([nose, 4.5, -0.5]), done]],
    ['sliding off takes the click back', [down(null, 2, 2), move(4, 4), up(4, 4)], []],
    ['Escape puts the tool away', [cancel], [done]],
    ['moving alone does nothing', [move(1, 1), up(1, 1)], []],
  ])('%s', (_words, events, commands) => {
    expect(play(tool, events).commands).toStrictEqual(commands);
  });
});

describe('arrow keys', () => {
  const from = { x: 1, y: 2 };
  it.each<[string, boolean, boolean, Point | null]>([
    ['ArrowLeft', false, false, { x: 0.75, y: 2 }],
    ['ArrowRight', false, false, { x: 1.25, y: 2 }],
    ['ArrowUp', false, false, { x: 1, y: 1.75 }],
    ['ArrowDown', true, false, { x: 1, y: 3 }],
    ['ArrowLeft', false, true, { x: 1.25, y: 2 }],
    ['ArrowDown', true, true, { x: 1, y: 1 }],
    ['Enter', false, false, null],
  ])('%s, with Shift %s, board turned %s', (key, big, turned, to) => {
    expect(nudge(from, key, big, turned)).toStrictEqual(to);
  });
});

describe('arranging', () => {
  const at = (man: Man, x: number, y: number): Standing => ({ man, at: { x, y } });
  const three = [at(backer, 1, 4.5), at(nose, 0, 1), at(safety, 6, 12)];
  it.each<[Arrangement, readonly Standing[], readonly Standing[]]>([
    ['same-depth', three, [at(backer, 1, 4.5), at(nose, 0, 4.5), at(safety, 6, 4.5)]],
    ['same-width', three, [at(backer, 1, 4.5), at(nose, 1, 1), at(safety, 1, 12)]],
    ['spread', three, [at(nose, 0, 1), at(backer, 3, 4.5), at(safety, 6, 12)]],
    ['spread', three.slice(0, 2), three.slice(0, 2)],
    ['mirror', three, [at(backer, -1, 4.5), at(nose, 0, 1), at(safety, -6, 12)]],
    ['same-depth', [], []],
  ])('%s', (how, before, after) => {
    expect(arranged(before, how)).toStrictEqual(after);
  });
});
