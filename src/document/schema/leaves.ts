import * as z from 'zod/mini';
import type { Brand } from '../../base/index.ts';
import { FIELD_BOX, MAX_TEXT } from '../limits.ts';

// zod would otherwise build functions from text, which a page that forbids that reports as an attack.
z.config({ jitless: true });

/** An id: plain characters, so that it is safe as a key anywhere; three names that JavaScript objects already own are out. */
const ID_PATTERN = /^(?!(?:__proto__|constructor|prototype)$)[A-Za-z0-9_-]{1,40}$/;
const ID_WORDS = 'an id: 1 to 40 letters, digits, "_" or "-", and not __proto__, constructor or prototype';

/** The schema of one kind of id; `brand` is the constructor of its type. */
export function id<Name extends string>(brand: (value: string) => Brand<string, Name>) {
  return z.pipe(z.string({ error: ID_WORDS }).check(z.regex(ID_PATTERN, { error: ID_WORDS })), z.transform(brand));
}

/** Free text of at most `max` characters, counted as Unicode code points like `maxLength` of JSON Schema. */
function text(max: number) {
  const words = { error: `text of at most ${max} characters` };
  return z
    .string(words)
    .check(z.refine((value) => hasAtMost(value, max), words))
    .check(z.meta({ maxLength: max }));
}

/** A name of something, as the staff says it. It may be empty: a coach may save before he has found one. */
export const name = text(MAX_TEXT.name);

/** A short word of the staff's own. */
export const tag = text(MAX_TEXT.tag);

/** A reason or a remark of the coach's. */
export const note = text(MAX_TEXT.note);

const RULE_WORDS = { error: 'the id of a check, such as gap.open' };

/** The id of a check. It need not be one this program knows: a newer one may have written it. */
export const ruleId = z.string(RULE_WORDS).check(z.regex(/^[a-z]+(?:[.-][a-z]+){0,6}$/, RULE_WORDS));

const EVIDENCE_WORDS = { error: 'what a finding was about, as this program writes it' };

/** What a waived finding was about: ids and gaps, never coordinates. */
export const evidence = z
  .string(EVIDENCE_WORDS)
  .check(z.maxLength(2_000, EVIDENCE_WORDS), z.regex(/^[A-Za-z0-9_ |-]*$/, EVIDENCE_WORDS));

const LETTER_WORDS = 'one or two letters';

/** What stands in a player's symbol on the board. */
export const letter = z.string({ error: LETTER_WORDS }).check(z.regex(/^.{1,2}$/u, { error: LETTER_WORDS }));

const YARDS_WORDS = { error: `a number from -${FIELD_BOX} to ${FIELD_BOX} (yards)` };

/** Yards, inside the field box. -0 becomes 0: the two are written alike, so they must not be told apart. */
export const yards = z.number(YARDS_WORDS).check(
  z.minimum(-FIELD_BOX, YARDS_WORDS),
  z.maximum(FIELD_BOX, YARDS_WORDS),
  z.overwrite((value) => (value === 0 ? 0 : value)),
);

/** A whole number of players, receivers or bodies. */
export function count(min: number, max: number) {
  const words = { error: `a whole number from ${min} to ${max}` };
  return z.int(words).check(
    z.minimum(min, words),
    z.maximum(max, words),
    z.overwrite((value) => (value === 0 ? 0 : value)),
  );
}

/** A yes or no. */
export const flag = z.boolean({ error: 'true or false' });

/** A list of `min` to `max` entries; its length is judged before its entries, so a huge list costs one problem. */
export function list<Item extends z.ZodMiniType>(item: Item, min: number, max: number) {
  const words = { error: `a list of ${listLength(min, max)}` };
  const bounded = z.array(item, words).check(z.maxLength(max, words));
  return min === 0 ? bounded : bounded.check(z.minLength(min, words));
}

function listLength(min: number, max: number): string {
  if (min === max) return `exactly ${max}`;
  return min === 0 ? `at most ${max}` : `${min} to ${max}`;
}

function hasAtMost(value: string, max: number): boolean {
  // A code point is one or two units: most texts are decided without counting.
  if (value.length <= max) return true;
  return value.length <= 2 * max && Array.from(value).length <= max;
}
