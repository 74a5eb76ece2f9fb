/** Passes on only the last value of each frame, or one at once in place of whatever waits. */
export function createFrame<Value>(act: (value: Value) => void): {
  readonly next: (value: Value) => void;
  readonly now: (value: Value) => void;
  readonly stop: () => void;
} {
  let waiting: number | null = null;
  let last: { readonly value: Value } | null = null;
  const stop = (): void => {
    if (waiting !== null) cancelAnimationFrame(waiting);
    waiting = null;
  };
  return {
    next: (value) => {
      last = { value };
      waiting ??= requestAnimationFrame(() => {
        waiting = null;
        if (last !== null) act(last.value);
      });
    },
    now: (value) => {
      stop();
      act(value);
    },
    stop,
  };
}
