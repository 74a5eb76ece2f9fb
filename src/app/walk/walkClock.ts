import { advanced, AT_START, stepped, toggled, wentTo, type Playing } from './playing.ts';

/** The time of the walk-through, followed by what moves and by nothing else: the page is not made anew sixty times a second. */
export interface WalkClock {
  readonly now: () => Playing;
  readonly subscribe: (listener: () => void) => () => void;
  readonly toggle: () => void;
  readonly goTo: (t: number) => void;
  readonly step: (way: 1 | -1) => void;
  readonly setHalf: (half: boolean) => void;
  /** How long the walk-through is, in seconds. */
  readonly setLength: (seconds: number) => void;
  /** Stops asking for frames. */
  readonly stop: () => void;
}

/** Asks for the next frame, and takes that back. */
export interface Frames {
  readonly request: (act: (milliseconds: number) => void) => number;
  readonly cancel: (frame: number) => void;
  /** False: whoever uses this device wants no motion. */
  readonly glides: () => boolean;
}

/** The browser's own frames. */
export const BROWSER_FRAMES: Frames = {
  request: (act) => requestAnimationFrame(act),
  cancel: (frame) => cancelAnimationFrame(frame),
  glides: () => !window.matchMedia('(prefers-reduced-motion: reduce)').matches,
};

/** A clock that stands at the snap. */
export function createWalkClock(frames: Frames): WalkClock {
  let playing: Playing = AT_START;
  let seconds = Infinity;
  let frame: number | null = null;
  let last: number | null = null;
  const listeners = new Set<() => void>();

  const set = (next: Playing): void => {
    const changed = next !== playing;
    playing = next;
    if (playing.running) frame ??= frames.request(run);
    else rest();
    if (changed) for (const listener of listeners) listener();
  };
  const run = (milliseconds: number): void => {
    frame = null;
    const elapsed = last === null ? 0 : Math.max(0, milliseconds - last) / 1000;
    last = milliseconds;
    set(advanced(playing, elapsed, seconds, frames.glides()));
  };
  const rest = (): void => {
    if (frame !== null) frames.cancel(frame);
    frame = null;
    last = null;
  };

  return {
    now: () => playing,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    toggle: () => set(toggled(playing, seconds)),
    goTo: (t) => set(wentTo(playing, t, seconds)),
    step: (way) => set(stepped(playing, way, seconds)),
    setHalf: (half) => set({ ...playing, half }),
    setLength: (length) => {
      seconds = length;
      if (playing.t > seconds) set(wentTo(playing, seconds, seconds));
    },
    stop: rest,
  };
}
