import type { Because } from '../engine/index.ts';
import { capitalised, lowered } from './words/lists.ts';
import type { Lexicon } from './words/lexicon.ts';
import type { Why } from './types.ts';

const BLANK = /\{([^{}]*)\}/g;

/**
 * A fact and its reasons in words: every {blank} of the template filled from its data, the first letter large. A blank
 * without a value is a broken promise inside the program and throws.
 */
export function fill(because: Because, lexicon: Pick<Lexicon, 'datum'>): Why {
  const text = because.template.replace(BLANK, (_whole, name: string, at: number) => {
    const value = Object.hasOwn(because.data, name) ? because.data[name] : undefined;
    if (value === undefined) throw new Error(`No value for {${name}} in "${because.template}"`);
    const words = lexicon.datum(value);
    // A job is a sentence of its own; inside another one it starts small.
    return value.kind === 'job' && at > 0 ? lowered(words) : words;
  });
  return { text: capitalised(text), because: because.because.map((reason) => fill(reason, lexicon)) };
}
