import type { PointerEvent } from 'react';
import { sameMan, type Man, type Preview, type Standing } from '../store/index.ts';
import { HIT_RADIUS, manAt } from './hit.ts';
import {
  moveTool,
  placeTool,
  type EditorCommand,
  type Step,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from './tools/index.ts';
import { toYards, type Pixel, type Viewport } from './viewport.ts';

/** A press may wander this far and still be a click, in CSS pixels. */
const SLACK = { fine: 4, coarse: 10 } as const;

/** What the pointer works on at the moment. */
export interface PointerTask {
  readonly viewport: Viewport;
  readonly men: readonly Standing[];
  /** The man the next click places; null: the usual tool. */
  readonly placing: Man | null;
  readonly onCommand: (command: EditorCommand) => void;
  /** Called at most once a frame while the pointer moves. */
  readonly onPreview: (preview: Preview | null) => void;
}

/** Feeds what the pointer does to the tool in hand, and passes on what the tool asks for. */
export interface Pointer {
  /** Tells it what it works on; the tool changes with the man to place. */
  readonly update: (task: PointerTask) => void;
  readonly down: (event: PointerEvent<HTMLElement>) => void;
  readonly move: (event: PointerEvent<HTMLElement>) => void;
  readonly up: (event: PointerEvent<HTMLElement>) => void;
  /** Escape, or the browser took the pointer away. */
  readonly cancel: () => void;
  /** Forgets a preview that has not been shown yet. */
  readonly stop: () => void;
}

/** A pointer that works on that task until it is told another. */
export function createPointer(first: PointerTask): Pointer {
  let task = first;
  let run = runnerFor(first.placing);
  const frame = createFrame((preview: Preview | null) => task.onPreview(preview));

  const send = (event: ToolEvent, slack: number): void => {
    const { viewport, men } = task;
    const context: ToolContext = {
      whereIs: (man) => men.find((standing) => sameMan(standing.man, man))?.at ?? null,
      slack: slack / viewport.scale,
    };
    const { preview, commands } = run(event, context);
    if (event.kind === 'move' && commands.length === 0) frame.next(preview);
    else {
      frame.stop();
      task.onPreview(preview);
    }
    for (const command of commands) task.onCommand(command);
  };

  return {
    update: (next) => {
      const same = next.placing === task.placing || sameMan(next.placing, task.placing);
      task = next;
      if (!same) run = runnerFor(next.placing);
    },
    down: (event) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      const pixel = pixelOf(event);
      const fineness = finenessOf(event);
      const man = manAt(task.men, pixel, task.viewport, HIT_RADIUS[fineness]);
      send({ kind: 'down', man, at: toYards(task.viewport, pixel) }, SLACK[fineness]);
    },
    move: (event) => send({ kind: 'move', at: toYards(task.viewport, pixelOf(event)) }, SLACK[finenessOf(event)]),
    up: (event) => send({ kind: 'up', at: toYards(task.viewport, pixelOf(event)) }, SLACK[finenessOf(event)]),
    cancel: () => send({ kind: 'cancel' }, SLACK.fine),
    stop: frame.stop,
  };
}

/** Where on its element an event happened. */
export function pixelOf(event: PointerEvent<HTMLElement>): Pixel {
  const box = event.currentTarget.getBoundingClientRect();
  return { px: event.clientX - box.left, py: event.clientY - box.top };
}

type Run = (event: ToolEvent, context: ToolContext) => Step<unknown>;

function runnerFor(placing: Man | null): Run {
  return placing === null ? runTool(moveTool) : runTool(placeTool(placing));
}

/** A tool with its state in hand. */
function runTool<State>(tool: Tool<State>): Run {
  let state = tool.start;
  return (event, context) => {
    const step = tool.step(state, event, context);
    state = step.state;
    return step;
  };
}

/** Passes on only the last value of each frame. */
function createFrame<Value>(act: (value: Value) => void): {
  readonly next: (value: Value) => void;
  readonly stop: () => void;
} {
  let waiting: number | null = null;
  let last: { readonly value: Value } | null = null;
  return {
    next: (value) => {
      last = { value };
      waiting ??= requestAnimationFrame(() => {
        waiting = null;
        if (last !== null) act(last.value);
      });
    },
    stop: () => {
      if (waiting !== null) cancelAnimationFrame(waiting);
      waiting = null;
    },
  };
}

function finenessOf(event: PointerEvent<HTMLElement>): 'fine' | 'coarse' {
  return event.pointerType === 'touch' ? 'coarse' : 'fine';
}
