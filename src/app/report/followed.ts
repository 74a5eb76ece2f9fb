/** The findings of one look as they were, and as they are: by their keys, which say rule, people and gaps. */
export interface Followed {
  /** Where they are found; elsewhere nothing can have changed. */
  readonly place: string;
  readonly keys: readonly string[];
  /** Before the last change that made a difference; null: there was none here. */
  readonly before: readonly string[] | null;
}

/** What a change brought and took. */
export interface Changes {
  readonly fresh: ReadonlySet<string>;
  readonly gone: number;
}

/** The memory after another look at the findings. The same object when nothing is different. */
export function follow(memory: Followed | null, place: string, keys: readonly string[]): Followed {
  if (memory?.place !== place) return { place, keys, before: null };
  return sameKeys(memory.keys, keys) ? memory : { place, keys, before: memory.keys };
}

/**
 * What is new and what is gone since the last change. `held`: a man is in hand, and the last change is the one that is being
 * made.
 */
export function changesOf(memory: Followed, keys: readonly string[], held: boolean): Changes {
  const before = held ? memory.keys : memory.before;
  if (before === null) return { fresh: new Set(), gone: 0 };
  return {
    fresh: new Set(keys.filter((key) => !before.includes(key))),
    gone: before.filter((key) => !keys.includes(key)).length,
  };
}

/** "2 new, 1 gone since the last change"; "" when there is nothing to tell. */
export function changesText({ fresh, gone }: Changes): string {
  const parts = [...(fresh.size === 0 ? [] : [`${fresh.size} new`]), ...(gone === 0 ? [] : [`${gone} gone`])];
  return parts.length === 0 ? '' : `${parts.join(', ')} since the last change`;
}

function sameKeys(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((key) => b.includes(key));
}
