import { describe, expect, it } from 'vitest';
import { asPlayerId, asRoleId, type Point } from '../../src/engine/index.ts';
import type { Man } from '../../src/store/index.ts';
import {
  moveTool,
  nudge,
  placeTool,
  type EditorCommand,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from '../../src/editor/tools/index.ts';

const nose: Man = { kind: 'defender', role: asRoleId('N') };
const end: Man = { kind: 'offence', player: asPlayerId('Y') };
const gone: Man = { kind: 'defender', role: asRoleId('gone') };
const spots = new Map<Man, Point>([
  [nose, { x: 0, y: 1 }],
  [end, { x: 4.5, y: -0.5 }],
]);
const context: ToolContext = { whereIs: (man) => spots.get(man) ?? null, slack: 0.2 };

const down = (man: Man | null, x: number, y: number): ToolEvent => ({ kind: 'down', man, at: { x, y } });
const move = (x: number, y: number): ToolEvent => ({ kind: 'move', at: { x, y } });
const up = (x: number, y: number): ToolEvent => ({ kind: 'up', at: { x, y } });
const cancel: ToolEvent = { kind: 'cancel' };

/** Everything a tool asked for during these events, its last preview, and the state it ended in. */
function play<State>(tool: Tool<State>, events: readonly ToolEvent[]) {
  const commands: EditorCommand[] = [];
  let state = tool.start;
  let preview: { man: Man; at: Point } | null = null;
  for (const event of events) {
    const step = tool.step(state, event, context);
    state = step.state;
    preview = step.preview;
    commands.push(...step.commands);
  }
  return { state, preview, commands };
}

describe('the moving tool', () => {
  const select = (man: Man | null): EditorCommand => ({ kind: 'select', man });

  it.each<[string, readonly ToolEvent[], readonly EditorCommand[]]>([
    ['a click selects', [down(nose, 0.1, 1), up(0.1, 1)], [select(nose)]],
    ['a click with a shaky hand selects', [down(nose, 0, 1), move(0.1, 1.1), up(0.1, 1.1)], [select(nose)]],
    ['a click on grass lets go', [down(null, 9, 9), up(9, 9)], [select(null)]],
    ['a click on a man who is not there lets go', [down(gone, 9, 9), up(9, 9)], [select(null)]],
    [
      'a drag moves him by as much as the pointer, wherever he was gripped',
      [down(nose, 0.25, 1.25), move(1, 1), move(2.25, 2.25), up(2.25, 2.25)],
      [select(nose), { kind: 'move', man: nose, to: { x: 2, y: 2 } }],
    ],
    [
      'so for the offence',
      [down(end, 4.5, -0.5), move(5, -0.5), up(5, -1.5)],
      [select(end), { kind: 'move', man: end, to: { x: 5, y: -1.5 } }],
    ],
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
    expect(preview).toStrictEqual({ man: nose, at: { x: 1, y: 2 } });
    expect(state.kind).toBe('dragging');
  });
});

describe('placing by click', () => {
  const tool = placeTool(nose);
  const done: EditorCommand = { kind: 'done' };

  it.each<[string, readonly ToolEvent[], readonly EditorCommand[]]>([
    [
      'puts him where the pointer comes up',
      [down(null, 2, 2), up(2.1, 2)],
      [{ kind: 'move', man: nose, to: { x: 2.1, y: 2 } }, done],
    ],
    [
      'whoever stands there',
      [down(end, 4.5, -0.5), up(4.5, -0.5)],
      [{ kind: 'move', man: nose, to: { x: 4.5, y: -0.5 } }, done],
    ],
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
