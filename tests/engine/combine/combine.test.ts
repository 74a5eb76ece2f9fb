import { describe, expect, it } from 'vitest';
import { combineMan } from '../../../src/engine/combine/combine.ts';
import { compareJobs, ownGapsOf } from '../../../src/engine/combine/compareJobs.ts';
import { fact, parseJob, printJob, type Basis, type Role, type Telling } from '../../../src/engine/index.ts';
import { gapText, read, ROLES, sayAll } from '../book.ts';

const job = (text: string) => read(parseJob(text));

/*
 * Same: nothing differs. Manner: the same gap and the same work against the pass, taught two ways. Different: it cannot both
 * be done. Common practice, no source; a pairing must not give a lineman two gaps: J. Bellace, 3-3 stack clinic, Glazier
 * Clinics.
 */
const COMPARED: readonly (readonly [a: string, b: string, difference: string])[] = [
  ['rush A-left', 'rush A-left', 'same'],
  ['rush A-left+A-right two-gap', 'rush A-right+A-left two-gap', 'same'],
  ['rush A-left', 'rush A-right', 'different'],
  ['rush A-left', 'rush B-left', 'different'],
  ['rush A-left', 'rush A-left+A-right two-gap', 'different'],
  ['rush A-left', 'rush A-left slant', 'manner'],
  ['rush A-left', 'rush A-left under:E', 'manner'],
  ['rush A-left under:E', 'rush A-left over:E', 'manner'],
  ['rush A-left under:E', 'rush A-left under:N', 'manner'],
  ['rush A-left spill', 'rush A-left box', 'manner'],
  ['rush C-left', 'contain C-left', 'manner'],
  ['rush C-left', 'fit C-left', 'different'],
  ['rush C-left', 'drop hook-left own C-left', 'different'],
  ['fit C-left', 'fit C-left', 'same'],
  ['fit C-left', 'fit C-left two-gap', 'manner'],
  ['fit C-left force', 'fit C-left', 'manner'],
  ['fit C-left', 'fit B-left', 'different'],
  ['drop hook-left', 'drop hook-left', 'same'],
  ['drop hook-left', 'drop hook-right', 'different'],
  ['drop hook-left', 'drop curl-flat-left', 'different'],
  ['drop hook-left force', 'drop hook-left', 'manner'],
  ['drop hook-left may A-left', 'drop hook-left may B-left', 'manner'],
  ['drop hook-left may A-left', 'drop hook-left own A-left', 'different'],
  ['drop hook-left own A-left', 'drop hook-left own A-left', 'same'],
  ['drop hook-left own A-left', 'drop hook-left own B-left', 'different'],
  ['drop hook-left own A-left cutback', 'drop hook-left own A-left', 'manner'],
  ['man Z', 'man Z', 'same'],
  ['man Z', 'man X', 'different'],
  ['man Z force', 'man Z alley', 'manner'],
  ['spy', 'spy', 'same'],
  ['spy', 'spy cutback', 'manner'],
  ['spy', 'drop hole', 'different'],
];

describe('two jobs of one man', () => {
  it.each(COMPARED)('%s and %s: %s', (a, b, difference) => {
    expect(compareJobs(job(a), job(b))).toBe(difference);
    expect(compareJobs(job(b), job(a))).toBe(difference);
  });
});

/*
 * One huddle call, the surface to the field picks the half: "Blitz of the Week #3", Blitzology, 16 Mar 2010 (from a 2001
 * college playbook). Field is right, boundary left. Three of the four linemen change on the check.
 */
const FIELD_OR_BOUNDARY: readonly (readonly [man: string, field: string, boundary: string, difference: string])[] = [
  ['field end', 'contain C-right read box', 'contain C-right read box', 'same'],
  ['field tackle', 'rush A-left slant spill', 'rush A-right spill', 'different'],
  ['boundary tackle', 'contain B-left spill', 'rush A-left slant spill', 'different'],
  ['boundary end', 'drop seam-left own C-left', 'rush B-left slant spill', 'different'],
  ['strong outside', 'drop seam-right may D-right force', 'drop seam-right may D-right force', 'same'],
  ['middle backer', 'rush A-right spill', 'drop hole may B-right cutback', 'different'],
  ['weak backer', 'rush B-right spill', 'drop seam-left force', 'different'],
  ['free safety', 'drop hole cutback', 'drop third-left', 'different'],
  ['strong safety', 'drop middle', 'drop middle', 'same'],
  ['boundary corner', 'drop third-left force', 'contain C-left box', 'different'],
  ['field corner', 'drop third-right', 'drop third-right', 'same'],
];

describe('a published check with two halves', () => {
  it.each(FIELD_OR_BOUNDARY)('%s', (_man, field, boundary, difference) => {
    expect(compareJobs(job(field), job(boundary))).toBe(difference);
  });
});

const OWN: readonly (readonly [job: string, gaps: string])[] = [
  ['rush A-left', 'A-left'],
  ['contain C-right', 'C-right'],
  ['fit B-left', 'B-left'],
  ['rush A-left+A-right two-gap', 'A-left A-right'],
  ['drop hook-left own B-left', 'B-left'],
  ['drop hook-left may B-left', ''],
  ['man Z own C-left', 'C-left'],
  ['spy may A-left', ''],
];

describe('the gaps a job makes a man’s own', () => {
  it.each(OWN)('%s: %s', (text, gaps) => {
    expect(ownGapsOf(job(text)).map(gapText).join(' ')).toBe(gaps);
  });
});

function roleIn(room: Role['room']): Role {
  const role = ROLES.find((each) => each.room === room);
  if (role === undefined) throw new Error(`Nobody in the ${room}`);
  return role;
}

/** `path: rush A-left`, `! reason` for a rule that points at nobody, `-` for told nothing. */
function telling(text: string): Telling | null {
  if (text === '-') return null;
  if (text.startsWith('! ')) return { kind: 'unresolved', because: { template: text.slice(2), data: {}, because: [] } };
  const [basis = '', words = ''] = text.split(': ');
  const known: readonly Exclude<Basis, 'base'>[] = ['coverage', 'consequence', 'movement', 'path'];
  const told = known.find((each) => each === basis);
  if (told === undefined) throw new Error(`No basis ${basis}`);
  return { kind: 'told', basis: told, job: job(words), preSnap: null, because: fact('as given') };
}

interface Row {
  readonly room: Role['room'];
  readonly first: string;
  readonly second: string;
  readonly status: string;
  /** Whose telling stands, and what it is. */
  readonly stands: string;
  readonly why: string;
}

/*
 * Explicit path before line movement before a rule of consequence before the shell; a weaker telling of a linebacker or a
 * back gives way, a lineman's never does in silence. From memory, reasoned from J. Bellace, 3-3 stack clinic, Glazier
 * Clinics.
 */
const ROWS: readonly Row[] = [
  // Told by nobody, by one.
  {
    room: 'line',
    first: '-',
    second: '-',
    status: 'untold',
    stands: '-',
    why: 'neither pressure tells him anything',
  },
  {
    room: 'line',
    first: 'movement: rush A-left slant',
    second: '-',
    status: 'one',
    stands: 'first rush A-left slant',
    why: 'first tells him: rush A-left slant',
  },
  {
    room: 'secondary',
    first: '-',
    second: 'path: rush B-right',
    status: 'one',
    stands: 'second rush B-right',
    why: 'second tells him: rush B-right',
  },
  // Told the same.
  {
    room: 'line',
    first: 'movement: rush A-right slant',
    second: 'consequence: rush A-right slant',
    status: 'same',
    stands: 'both rush A-right slant',
    why: 'both tell him the same',
  },
  {
    room: 'linebackers',
    first: 'path: rush A-right',
    second: 'path: rush A-right',
    status: 'same',
    stands: 'both rush A-right',
    why: 'both tell him the same',
  },
  // A lineman never yields, whatever the two rest on.
  {
    room: 'line',
    first: 'movement: rush A-right slant',
    second: 'consequence: rush A-left slant',
    status: 'conflict',
    stands: 'first rush A-right slant',
    why: 'a lineman is told two things',
  },
  {
    room: 'line',
    first: 'consequence: rush A-left slant',
    second: 'path: rush B-left',
    status: 'conflict',
    stands: 'first rush A-left slant',
    why: 'a lineman is told two things',
  },
  {
    room: 'line',
    first: 'coverage: drop hook-left',
    second: 'movement: contain C-left loop',
    status: 'conflict',
    stands: 'first drop hook-left',
    why: 'a lineman is told two things',
  },
  {
    room: 'line',
    first: 'movement: rush B-left',
    second: 'movement: rush B-left slant',
    status: 'two-manners',
    stands: 'first rush B-left',
    why: 'the same gap, taught two ways',
  },
  {
    room: 'line',
    first: 'movement: contain C-left',
    second: 'consequence: rush C-left',
    status: 'two-manners',
    stands: 'first contain C-left',
    why: 'the same gap, taught two ways',
  },
  // Anybody else's weaker telling gives way, whichever pressure it comes from.
  {
    room: 'linebackers',
    first: 'coverage: drop hook-left may A-left cutback',
    second: 'path: rush A-left',
    status: 'yields',
    stands: 'second rush A-left',
    why: 'the second is the stronger telling',
  },
  {
    room: 'linebackers',
    first: 'path: rush B-right',
    second: 'consequence: fit C-right',
    status: 'yields',
    stands: 'first rush B-right',
    why: 'the first is the stronger telling',
  },
  {
    room: 'linebackers',
    first: 'consequence: fit C-right',
    second: 'movement: rush B-right',
    status: 'yields',
    stands: 'second rush B-right',
    why: 'the second is the stronger telling',
  },
  {
    room: 'secondary',
    first: 'coverage: drop third-left',
    second: 'consequence: drop third-right',
    status: 'yields',
    stands: 'second drop third-right',
    why: 'the second is the stronger telling',
  },
  // Two of a kind.
  {
    room: 'linebackers',
    first: 'path: rush C-right',
    second: 'path: drop curl-flat-right',
    status: 'conflict',
    stands: 'first rush C-right',
    why: 'he is told two things of the same weight that cannot both be done',
  },
  {
    room: 'secondary',
    first: 'consequence: drop middle',
    second: 'consequence: drop seam-left',
    status: 'conflict',
    stands: 'first drop middle',
    why: 'he is told two things of the same weight that cannot both be done',
  },
  {
    room: 'linebackers',
    first: 'path: rush B-right',
    second: 'path: rush B-right inside-hip:RE',
    status: 'yields',
    stands: 'first rush B-right',
    why: 'the same job in two ways; the first one stands',
  },
  {
    room: 'linebackers',
    first: 'movement: rush B-right',
    second: 'path: rush B-right inside-hip:RE',
    status: 'yields',
    stands: 'second rush B-right inside-hip:RE',
    why: 'the second is the stronger telling',
  },
  // A rule that points at somebody who is not there.
  {
    room: 'line',
    first: '! there is no D gap on the left',
    second: '-',
    status: 'unresolved',
    stands: '-',
    why: 'what he is told points at somebody who is not there',
  },
  {
    room: 'linebackers',
    first: '! there is no D gap on the left',
    second: 'path: rush A-left',
    status: 'unresolved',
    stands: 'second rush A-left',
    why: 'what he is told points at somebody who is not there',
  },
  {
    room: 'linebackers',
    first: 'path: rush A-left',
    second: '! there is no D gap on the left',
    status: 'unresolved',
    stands: 'first rush A-left',
    why: 'what he is told points at somebody who is not there',
  },
  {
    room: 'secondary',
    first: '! there is no D gap on the left',
    second: '! there is no D gap on the right',
    status: 'unresolved',
    stands: '-',
    why: 'what he is told points at somebody who is not there',
  },
];

describe('two tellings of one man', () => {
  it.each(ROWS)('$room: $first | $second: $status', (row) => {
    const [first, second] = [telling(row.first), telling(row.second)];
    const combined = combineMan(roleIn(row.room), first, second);
    expect(combined.status).toBe(row.status);
    expect(combined.job === null ? '-' : `${String(combined.from)} ${printJob(combined.job)}`).toBe(row.stands);
    expect(combined.from === null).toBe(combined.job === null);
    expect(sayAll(combined.because)[0]).toBe(row.why);
    expect([combined.first, combined.second]).toEqual([first, second]);
  });

  it('says what each pressure says', () => {
    const combined = combineMan(
      roleIn('line'),
      telling('movement: rush A-right slant'),
      telling('consequence: rush A-left slant'),
    );
    expect(sayAll(combined.because)).toEqual([
      'a lineman is told two things',
      'the first says: rush A-right slant',
      'as given',
      'the second says: rush A-left slant',
      'as given',
    ]);
  });

  it('says every reason why a rule points at nobody', () => {
    const combined = combineMan(
      roleIn('line'),
      telling('! there is no D gap on the left'),
      telling('! there is no wing on the right'),
    );
    expect(sayAll(combined.because)).toEqual([
      'what he is told points at somebody who is not there',
      'there is no D gap on the left',
      'there is no wing on the right',
    ]);
  });
});
