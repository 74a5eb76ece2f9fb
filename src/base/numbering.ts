/** Numbers for things by what they say, from 0 on in the order in which they first come; and the first thing of each number. */
export interface Numbering<Thing> {
  readonly numberOf: (thing: Thing) => number;
  readonly things: readonly Thing[];
}

/** Numbers things by their text: those whose texts are equal have one number. */
export function createNumbering<Thing>(textOf: (thing: Thing) => string): Numbering<Thing> {
  const numbers = new Map<string, number>();
  const things: Thing[] = [];
  const numberOf = (thing: Thing): number => {
    const text = textOf(thing);
    const known = numbers.get(text);
    if (known !== undefined) return known;
    numbers.set(text, things.length);
    return things.push(thing) - 1;
  };
  return { numberOf, things };
}
