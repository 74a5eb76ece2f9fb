/** The last thing the app has to say: "Undone: moved the nose". */
export interface Notice {
  readonly text: string;
  /** Grows with each notice, so that the same words said twice are news twice. */
  readonly number: number;
}

/** One line that is shown and read out. */
export interface Notices {
  readonly say: (text: string) => void;
  readonly last: () => Notice;
  readonly subscribe: (listener: () => void) => () => void;
}

/** Notices with nothing said yet. */
export function createNotices(): Notices {
  const listeners = new Set<() => void>();
  let last: Notice = { text: '', number: 0 };
  return {
    say: (text) => {
      last = { text, number: last.number + 1 };
      for (const listener of listeners) listener();
    },
    last: () => last,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
