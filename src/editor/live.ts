/** A value that changes with every frame: whoever paints it reads it, and is told when it is another. */
export interface Live<Value> {
  readonly now: () => Value;
  readonly subscribe: (listener: () => void) => () => void;
}

/** One that is set from here. */
export function createLive<Value>(first: Value): Live<Value> & { readonly set: (value: Value) => void } {
  const listeners = new Set<() => void>();
  let value = first;
  return {
    now: () => value,
    set: (next) => {
      value = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
