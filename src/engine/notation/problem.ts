/** What is wrong with a line of notation: the word, and what was expected in its place. */
export interface NotationProblem {
  readonly found: string;
  readonly expected: string;
}

/** A listed word, or null: narrows free text to a vocabulary. */
export function wordOf<Word extends string>(list: readonly Word[], text: string): Word | null {
  return list.find((word) => word === text) ?? null;
}
