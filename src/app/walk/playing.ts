/** Seconds that one press of "back" or "forth" goes, and the step of the slider. */
export const STEP = 0.1;

/** Where motion is not wanted, playing goes on in steps of so many seconds. */
export const STRIDE = 0.5;

/** A walk-through as far as it has come. */
export interface Playing {
  /** Seconds after the snap that are shown. 0: the board as it is before it. */
  readonly t: number;
  readonly running: boolean;
  readonly half: boolean;
  /** Seconds played that are not shown yet, because it goes in strides. */
  readonly kept: number;
}

/** Before the snap. */
export const AT_START: Playing = { t: 0, running: false, half: false, kept: 0 };

/** Starts, from the beginning again if it is at its end; or stops. */
export function toggled(playing: Playing, seconds: number): Playing {
  if (playing.running) return { ...playing, running: false, kept: 0 };
  return { ...playing, running: true, kept: 0, t: playing.t >= seconds ? 0 : playing.t };
}

/** Goes to a time and stays there. */
export function wentTo(playing: Playing, t: number, seconds: number): Playing {
  return { ...playing, running: false, kept: 0, t: clean(Math.min(Math.max(t, 0), seconds)) };
}

/** One step of a tenth on, or back (`way` -1), to a whole tenth. */
export function stepped(playing: Playing, way: 1 | -1, seconds: number): Playing {
  const tenths = playing.t / STEP;
  // A time between two tenths counts as the one it has passed, or is coming from.
  const whole = way === 1 ? Math.floor(tenths + 1e-6) : Math.ceil(tenths - 1e-6);
  return wentTo(playing, (whole + way) * STEP, seconds);
}

/** After `elapsed` seconds of the clock on the wall. `glides` false: in strides. At the end it stops. */
export function advanced(playing: Playing, elapsed: number, seconds: number, glides: boolean): Playing {
  if (!playing.running) return playing;
  const played = playing.kept + elapsed * (playing.half ? 0.5 : 1);
  const shown = glides ? played : Math.floor(played / STRIDE + 1e-6) * STRIDE;
  const t = Math.min(seconds, playing.t + shown);
  const running = t < seconds;
  return { ...playing, t: glides ? t : clean(t), running, kept: running ? played - shown : 0 };
}

/** Whole thousandths: a sum of tenths is a tenth again. */
function clean(t: number): number {
  return Math.round(t * 1000) / 1000;
}
