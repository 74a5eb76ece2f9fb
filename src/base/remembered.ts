/**
 * A pure function that is asked the same again and again: it works once, and answers from memory when it is given the very same
 * arguments, objects by identity. That is safe because nothing here ever changes an object that has been handed over. What is
 * remembered about an object goes when the object does; the first argument has to be one.
 */
export function remembered<First extends object, Rest extends readonly unknown[], Value>(
  work: (first: First, ...rest: Rest) => Value,
): (first: First, ...rest: Rest) => Value {
  const root = new WeakMap<First, Shelf<Value>>();
  // No further than it takes arguments: a list that maps with it hands over places as well.
  const more = work.length - 1;
  if (more === 0) return rememberedOfOne(work);
  return (first, ...rest) => {
    let shelf = root.get(first);
    if (shelf === undefined) root.set(first, (shelf = new Shelf<Value>()));
    for (let at = 0; at < more; at += 1) shelf = shelf.at(rest[at]);
    shelf.answer ??= { value: work(first, ...rest) };
    return shelf.answer.value;
  };
}

/**
 * The same for what is asked several times in a row about one object and then never again: only the last answer is kept, and
 * keeping it costs next to nothing.
 */
export function rememberedLast<Asked extends object, Value>(work: (asked: Asked) => Value): (asked: Asked) => Value {
  let last: { readonly asked: Asked; readonly value: Value } | null = null;
  return (asked) => {
    if (last?.asked !== asked) last = { asked, value: work(asked) };
    return last.value;
  };
}

/** The same of a function that is told one thing alone, as most are: one look into memory. */
function rememberedOfOne<First extends object, Rest extends readonly unknown[], Value>(
  work: (first: First, ...rest: Rest) => Value,
): (first: First, ...rest: Rest) => Value {
  const answers = new WeakMap<First, { readonly value: Value }>();
  return (first, ...rest) => {
    let answer = answers.get(first);
    if (answer === undefined) answers.set(first, (answer = { value: work(first, ...rest) }));
    return answer.value;
  };
}

/** What is remembered for the arguments so far. */
class Shelf<Value> {
  answer: { readonly value: Value } | null = null;
  private objects: WeakMap<object, Shelf<Value>> | null = null;
  private others: Map<unknown, Shelf<Value>> | null = null;

  /** The shelf of one more argument. */
  at(part: unknown): Shelf<Value> {
    const isObject = (typeof part === 'object' && part !== null) || typeof part === 'function';
    if (isObject) {
      this.objects ??= new WeakMap();
      const known = this.objects.get(part);
      if (known !== undefined) return known;
      const made = new Shelf<Value>();
      this.objects.set(part, made);
      return made;
    }
    this.others ??= new Map();
    const known = this.others.get(part);
    if (known !== undefined) return known;
    const made = new Shelf<Value>();
    this.others.set(part, made);
    return made;
  }
}
