/** One man of an either-or call, and a man of whom one pressure asks for the rush and the other for contain as well. */
import { describe, expect, it } from 'vitest';
import { combineMan, eitherMan } from '../../../src/engine/combine/combine.ts';
import { fact, parseJob, printJob, type Combined, type Role, type Telling } from '../../../src/engine/index.ts';
import { read, ROLES } from '../book.ts';

function roleIn(room: Role['room']): Role {
  const role = ROLES.find((each) => each.room === room);
  if (role === undefined) throw new Error(`Nobody in the ${room}`);
  return role;
}

const told = (text: string): Telling => ({
  kind: 'told',
  basis: 'path',
  job: read(parseJob(text)),
  preSnap: null,
  because: fact('as given'),
});
const nobody: Telling = { kind: 'unresolved', because: fact('there is no tight end') };

const stands = ({ status, from, job }: Combined): string =>
  `${status} ${from ?? '-'} ${job === null ? '-' : printJob(job)}`;

/*
 * One call in the huddle, and a key at the line that picks the half: every man plays the half that is run, and has to know
 * whether the other one asks something else of him. Common practice, no source.
 */
const HALVES: readonly (readonly [
  first: Telling | null,
  second: Telling | null,
  ran: 'first' | 'second',
  stands: string,
])[] = [
  [told('rush A-left'), told('rush B-left'), 'first', 'either first rush A-left'],
  [told('rush A-left'), told('rush B-left'), 'second', 'either second rush B-left'],
  [told('rush A-left'), told('rush A-left'), 'first', 'same first rush A-left'],
  [told('rush A-left'), told('rush A-left'), 'second', 'same second rush A-left'],
  // Taught two ways is two things to hear.
  [told('rush A-left'), told('rush A-left slant'), 'first', 'either first rush A-left'],
  [told('rush A-left'), null, 'first', 'either first rush A-left'],
  [told('rush A-left'), null, 'second', 'either - -'],
  [null, told('rush B-left'), 'second', 'either second rush B-left'],
  [null, told('rush B-left'), 'first', 'either - -'],
  [null, null, 'first', 'untold - -'],
  [nobody, told('rush B-left'), 'first', 'unresolved - -'],
  // The half that is not run points at somebody who is not there: that is for another look.
  [nobody, told('rush B-left'), 'second', 'either second rush B-left'],
];

describe('one of two, for one man', () => {
  it.each(HALVES)('%o or %o, %s is run: %s', (first, second, ran, expected) => {
    const combined = eitherMan(roleIn('line'), first, second, ran);
    expect(stands(combined)).toBe(expected);
    expect([combined.first, combined.second]).toEqual([first, second]);
  });
});

/* He who contains also rushes his gap, so of the two ways to play it that one leaves nothing out. Common practice. */
const CONTAINS: readonly (readonly [first: string, second: string, stands: string, why: string])[] = [
  [
    'rush C-left',
    'contain C-left',
    'yields second contain C-left',
    'the same job in two ways; the second one also contains, so it stands',
  ],
  ['contain C-left', 'rush C-left', 'yields first contain C-left', 'the same job in two ways; the first one stands'],
  [
    'contain C-left',
    'contain C-left spill',
    'yields first contain C-left',
    'the same job in two ways; the first one stands',
  ],
  ['rush C-left', 'rush C-left spill', 'yields first rush C-left', 'the same job in two ways; the first one stands'],
];

describe('a linebacker told to rush and to contain through one gap', () => {
  it.each(CONTAINS)('%s and %s: %s', (first, second, expected, why) => {
    const combined = combineMan(roleIn('linebackers'), told(first), told(second));
    expect(stands(combined)).toBe(expected);
    expect(combined.because.template).toBe(why);
  });
});
