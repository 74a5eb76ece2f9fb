import type { PointerEvent } from 'react';
import type { Point, Yards } from '../engine/index.ts';
import { sameMan, type Man, type Preview, type Standing } from '../store/index.ts';
import { shoved, viewportOf, zoomed, type Camera, type Sight } from './camera.ts';
import { createFrame } from './frame.ts';
import { HIT_RADIUS, manAt, type Fineness } from './hit.ts';
import type { Snapped } from './snap.ts';
import {
  moveTool,
  placeTool,
  type EditorCommand,
  type Hints,
  type Step,
  type Tool,
  type ToolContext,
  type ToolEvent,
} from './tools/index.ts';
import { toYards, type Pixel } from './viewport.ts';

/** A press may wander this far and still be a click, in CSS pixels. */
const SLACK: Readonly<Record<Fineness, number>> = { fine: 4, pen: 6, coarse: 10 };

/** A line draws a man from this far, in CSS pixels; never from farther than a stride, however small the field is shown. */
const SNAP_PIXELS = 8;
const SNAP_YARDS: Yards = 0.4;

/** What the pointer works on at the moment. */
export interface PointerTask {
  readonly sight: Sight;
  readonly camera: Camera;
  readonly men: readonly Standing[];
  readonly selection: readonly Man[];
  /** The man the next click places; null: the usual tool. */
  readonly placing: Man | null;
  /** True: a press adds to those who are picked, as with Shift. */
  readonly several: boolean;
  /** True: lines draw men to themselves, unless Alt is held. */
  readonly snapping: boolean;
  /** Where a man comes to stand who is brought there; lines within `reach` count. */
  readonly snap: (man: Man, moving: readonly Man[], at: Point, reach: Yards) => Snapped;
  readonly onCommand: (command: EditorCommand) => void;
  /** Called at most once a frame while the pointer moves. */
  readonly onPreview: (preview: Preview | null) => void;
  readonly onHints: (hints: Hints) => void;
  readonly onCamera: (camera: Camera) => void;
}

/** Feeds what the pointer does to the tool in hand, and passes on what the tool asks for. */
export interface Pointer {
  /** Tells it what it works on; the tool changes with the man to place. */
  readonly update: (task: PointerTask) => void;
  readonly down: (event: PointerEvent<HTMLElement>) => void;
  readonly move: (event: PointerEvent<HTMLElement>) => void;
  readonly up: (event: PointerEvent<HTMLElement>) => void;
  /** The browser took that pointer away. */
  readonly lost: (event: PointerEvent<HTMLElement>) => void;
  /** Escape: what is under way is given up. */
  readonly cancel: () => void;
  /** While the space bar is held a press shoves the field. */
  readonly holdSpace: (held: boolean) => void;
  /** Forgets a preview that has not been shown yet. */
  readonly stop: () => void;
}

const NO_HINTS: Hints = { snapped: null, box: null };

/** What the pointers that are down do together. */
type Doing =
  | { readonly kind: 'tool'; readonly pointer: number }
  | { readonly kind: 'shove'; readonly pointer: number; readonly last: Pixel }
  /** Two fingers: the field follows both. */
  | { readonly kind: 'pinch' }
  /** Something ended before all were up: nothing more happens until they are. */
  | { readonly kind: 'over' };

/** A pointer that works on that task until it is told another. */
export function createPointer(first: PointerTask): Pointer {
  let task = first;
  let run = runnerFor(first.placing);
  let doing: Doing | null = null;
  let space = false;
  const down = new Map<number, { readonly type: string; readonly at: Pixel }>();
  const frame = createFrame(({ preview, hints = NO_HINTS }: Step<unknown>) => {
    task.onPreview(preview);
    task.onHints(hints);
  });

  const send = (event: ToolEvent, fineness: Fineness): void => {
    const step = run(event, contextOf(task, fineness));
    if (event.kind === 'move' && step.commands.length === 0) frame.next(step);
    else frame.now(step);
    for (const command of step.commands) task.onCommand(command);
  };
  const cancel = (): void => send({ kind: 'cancel' }, 'fine');
  const yardsAt = (at: Pixel): Point => toYards(viewportOf(task.sight, task.camera), at);
  const shove = (by: Pixel): void => {
    task = { ...task, camera: shoved(task.sight, task.camera, by) };
    task.onCamera(task.camera);
  };

  const begin = (event: PointerEvent<HTMLElement>): void => {
    const at = pixelOf(event);
    if (event.button === 1 || space) {
      doing = { kind: 'shove', pointer: event.pointerId, last: at };
      return;
    }
    if (event.button !== 0) return;
    doing = { kind: 'tool', pointer: event.pointerId };
    const fineness = finenessOf(event);
    const man = manAt(task.men, at, viewportOf(task.sight, task.camera), HIT_RADIUS[fineness]);
    const adding = task.several || event.shiftKey || event.ctrlKey || event.metaKey;
    send({ kind: 'down', man, at: yardsAt(at), adding }, fineness);
  };

  const pinch = (id: number, at: Pixel): void => {
    const before = [...down.values()].map((each) => each.at);
    const was = down.get(id);
    if (was === undefined) return;
    down.set(id, { ...was, at });
    const after = [...down.values()].map((each) => each.at);
    const [a, b] = [spanOf(before), spanOf(after)];
    if (a === null || b === null || a.length === 0) return;
    const camera = zoomed(task.sight, task.camera, a.middle, b.length / a.length);
    task = { ...task, camera };
    shove({ px: b.middle.px - a.middle.px, py: b.middle.py - a.middle.py });
  };

  const release = (event: PointerEvent<HTMLElement>): void => {
    // A hand beside the pen was never counted, so its going ends nothing.
    if (!down.delete(event.pointerId)) return;
    if (doing?.kind === 'tool' && doing.pointer === event.pointerId) doing = null;
    else if (doing?.kind === 'shove' && doing.pointer === event.pointerId) doing = null;
    else if (doing !== null) doing = { kind: 'over' };
    if (down.size === 0) doing = null;
  };

  return {
    update: (next) => {
      const same = next.placing === task.placing || sameMan(next.placing, task.placing);
      task = next;
      if (!same) run = runnerFor(next.placing);
    },
    down: (event) => {
      const others = [...down.values()];
      // A hand that rests on the glass while a pen writes is nobody's finger.
      if (event.pointerType === 'touch' && others.some(({ type }) => type === 'pen')) return;
      // Nor was one that came to rest just before.
      if (event.pointerType === 'pen' && others.length > 0 && others.every(({ type }) => type === 'touch')) {
        if (doing?.kind === 'tool') cancel();
        down.clear();
        doing = null;
      }
      event.currentTarget.setPointerCapture(event.pointerId);
      down.set(event.pointerId, { type: event.pointerType, at: pixelOf(event) });
      if (down.size === 1) begin(event);
      else if (doing?.kind !== 'over') {
        if (doing?.kind === 'tool') cancel();
        const fingers = down.size === 2 && [...down.values()].every(({ type }) => type === 'touch');
        doing = { kind: fingers ? 'pinch' : 'over' };
      }
    },
    move: (event) => {
      const at = pixelOf(event);
      if (doing?.kind === 'pinch') pinch(event.pointerId, at);
      else if (doing?.kind === 'shove' && doing.pointer === event.pointerId) {
        const { last } = doing;
        doing = { ...doing, last: at };
        shove({ px: at.px - last.px, py: at.py - last.py });
      } else if (doing?.kind === 'tool' && doing.pointer === event.pointerId) {
        send({ kind: 'move', at: yardsAt(at), free: isFree(event, task) }, finenessOf(event));
      }
    },
    up: (event) => {
      if (doing?.kind === 'tool' && doing.pointer === event.pointerId) {
        send({ kind: 'up', at: yardsAt(pixelOf(event)), free: isFree(event, task) }, finenessOf(event));
      }
      release(event);
    },
    lost: (event) => {
      if (doing?.kind === 'tool' && doing.pointer === event.pointerId) cancel();
      release(event);
    },
    cancel: () => {
      cancel();
      if (doing !== null) doing = { kind: 'over' };
    },
    holdSpace: (held) => {
      space = held;
    },
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

function contextOf({ sight, camera, men, selection, snap }: PointerTask, fineness: Fineness): ToolContext {
  const { scale } = viewportOf(sight, camera);
  return {
    whereIs: (man) => men.find((standing) => sameMan(standing.man, man))?.at ?? null,
    men,
    selection,
    slack: SLACK[fineness] / scale,
    snap: (man, moving, at) => snap(man, moving, at, Math.min(SNAP_PIXELS / scale, SNAP_YARDS)),
  };
}

function isFree(event: PointerEvent<HTMLElement>, { snapping }: PointerTask): boolean {
  return !snapping || event.altKey;
}

/** How far the first two are apart, and the place between them; null when there are not two. */
function spanOf([a, b]: readonly Pixel[]): { readonly length: number; readonly middle: Pixel } | null {
  if (a === undefined || b === undefined) return null;
  return {
    length: Math.hypot(b.px - a.px, b.py - a.py),
    middle: { px: (a.px + b.px) / 2, py: (a.py + b.py) / 2 },
  };
}

function finenessOf(event: PointerEvent<HTMLElement>): Fineness {
  if (event.pointerType === 'touch') return 'coarse';
  return event.pointerType === 'pen' ? 'pen' : 'fine';
}
