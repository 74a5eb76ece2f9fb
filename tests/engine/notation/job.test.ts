import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asGroupId,
  asPlayerId,
  asRoleId,
  BODIES,
  EDGE_PLAYS,
  GAP_LETTERS,
  MANNERS,
  parseJob,
  parseRuleJob,
  PASSINGS,
  printJob,
  printRuleJob,
  SIDES,
  SUPPORTS,
  ZONES,
  type Gap,
  type GapRef,
  type Job,
  type JobOf,
  type LookNames,
  type Names,
  type ReceiverRef,
  type RoleId,
  type RuleJob,
  type RuleNames,
  type SideRef,
  type Who,
} from '../../../src/engine/index.ts';
import { read } from '../book.ts';

const left = (letter: Gap['letter']): Gap => ({ side: 'left', letter });
const none = { fits: [], firm: false, support: null } as const;

const JOBS: readonly (readonly [text: string, job: Job])[] = [
  [
    'rush A-left',
    {
      kind: 'rush',
      gaps: [left('A')],
      manner: 'penetrate',
      track: { kind: 'straight' },
      edge: null,
      peel: false,
      order: null,
    },
  ],
  [
    'rush A-left slant under:E spill',
    {
      kind: 'rush',
      gaps: [left('A')],
      manner: 'slant',
      track: { kind: 'past', how: 'under', neighbour: asRoleId('E') },
      edge: 'spill',
      peel: false,
      order: null,
    },
  ],
  [
    'rush A-left+B-left two-gap',
    {
      kind: 'rush',
      gaps: [left('A'), left('B')],
      manner: 'two-gap',
      track: { kind: 'straight' },
      edge: null,
      peel: false,
      order: null,
    },
  ],
  [
    'contain C-left box',
    {
      kind: 'contain',
      gaps: [left('C')],
      manner: 'penetrate',
      track: { kind: 'straight' },
      edge: 'box',
      peel: false,
      order: null,
    },
  ],
  ['fit B-left', { kind: 'fit', gaps: [left('B')], manner: 'read', support: null }],
  ['fit B-left slant fold', { kind: 'fit', gaps: [left('B')], manner: 'slant', support: 'fold' }],
  ['drop middle', { kind: 'drop', zone: 'middle', side: 'middle', run: none }],
  ['drop curl-flat-right', { kind: 'drop', zone: 'curl-flat', side: 'right', run: none }],
  [
    'drop seam-left may C-left+D-left force',
    { kind: 'drop', zone: 'seam', side: 'left', run: { fits: [left('C'), left('D')], firm: false, support: 'force' } },
  ],
  [
    'drop hook-left own B-left',
    { kind: 'drop', zone: 'hook', side: 'left', run: { fits: [left('B')], firm: true, support: null } },
  ],
  ['man Z', { kind: 'man', receiver: asPlayerId('Z'), run: none }],
  ['man Z alley', { kind: 'man', receiver: asPlayerId('Z'), run: { ...none, support: 'alley' } }],
  ['spy', { kind: 'spy', run: none }],
  ['spy may A-left cutback', { kind: 'spy', run: { fits: [left('A')], firm: false, support: 'cutback' } }],
];

describe('a job in one look', () => {
  it.each(JOBS)('%s', (text, job) => {
    expect(parseJob(text)).toEqual({ ok: true, value: job });
    expect(printJob(job)).toBe(text);
  });

  // What goes without saying may be said.
  it.each([
    ['rush A-left penetrate', 'rush A-left'],
    ['fit B-left read', 'fit B-left'],
    ['drop middle-middle', 'drop middle'],
    ['  rush   A-left ', 'rush A-left'],
  ])('%s is %s', (text, short) => {
    expect(printJob(read(parseJob(text)))).toBe(short);
  });
});

const call: SideRef = 'call';
const RULES: readonly (readonly [text: string, job: RuleJob])[] = [
  [
    'rush B-call inside-hip:end-call',
    {
      kind: 'rush',
      gaps: [{ kind: 'letter', side: call, letter: 'B' }],
      manner: 'penetrate',
      track: { kind: 'past', how: 'inside-hip', neighbour: { kind: 'group', group: asGroupId('end'), side: 'call' } },
      edge: null,
      peel: false,
      order: null,
    },
  ],
  [
    'contain edge-away over:@N box',
    {
      kind: 'contain',
      gaps: [{ kind: 'edge', side: 'away' }],
      manner: 'penetrate',
      track: { kind: 'past', how: 'over', neighbour: { kind: 'role', role: asRoleId('N') } },
      edge: 'box',
      peel: false,
      order: null,
    },
  ],
  [
    'fit outside:end-call force',
    { kind: 'fit', gaps: [{ kind: 'outside', side: call, body: 'end' }], manner: 'read', support: 'force' },
  ],
  [
    'drop seam-mine may A-left',
    {
      kind: 'drop',
      zone: 'seam',
      side: 'mine',
      run: { fits: [{ kind: 'letter', side: 'left', letter: 'A' }], firm: false, support: null },
    },
  ],
  ['man #2-other', { kind: 'man', receiver: { kind: 'number', side: 'other', number: 2 }, run: none }],
  ['man back2', { kind: 'man', receiver: { kind: 'back', number: 2 }, run: none }],
  [
    'contain edge-call loop second:inside-call spill peel',
    {
      kind: 'contain',
      gaps: [{ kind: 'edge', side: call }],
      manner: 'loop',
      track: { kind: 'straight' },
      edge: 'spill',
      peel: true,
      order: { turn: 'second', neighbour: { kind: 'group', group: asGroupId('inside'), side: 'call' } },
    },
  ],
  ['man back', { kind: 'man', receiver: { kind: 'back', number: 1 }, run: none }],
  [
    'rush A-call under:outside-backers-away',
    {
      kind: 'rush',
      gaps: [{ kind: 'letter', side: call, letter: 'A' }],
      manner: 'penetrate',
      track: {
        kind: 'past',
        how: 'under',
        neighbour: { kind: 'group', group: asGroupId('outside-backers'), side: 'away' },
      },
      edge: null,
      peel: false,
      order: null,
    },
  ],
];

describe('a job as a rule tells it', () => {
  it.each(RULES)('%s', (text, job) => {
    expect(parseRuleJob(text)).toEqual({ ok: true, value: job });
    expect(printRuleJob(job)).toBe(text);
  });
});

const KINDS = 'rush, contain, fit, drop, man or spy';
const GAP = 'a gap such as A-left';
const END = 'the end of the job';
const BAD: readonly (readonly [text: string, found: string, expected: string])[] = [
  ['', 'the end', KINDS],
  ['blitz A-left', 'blitz', KINDS],
  ['rush', 'the end', GAP],
  ['rush slant', 'slant', GAP],
  ['rush A', 'A', GAP],
  ['rush A-call', 'A-call', GAP],
  ['rush H-left', 'H-left', GAP],
  ['rush A-left+', 'A-left+', GAP],
  ['rush A-left+Z-left', 'A-left+Z-left', GAP],
  ['contain', 'the end', GAP],
  ['fit', 'the end', GAP],
  ['rush A-left slowly', 'slowly', END],
  ['rush A-left spill slant', 'slant', END],
  ['rush A-left under:', 'under:', END],
  ['rush A-left beside:E', 'beside:E', END],
  ['rush A-left force', 'force', END],
  ['fit A-left spill', 'spill', END],
  ['drop', 'the end', 'a zone such as seam-left or middle'],
  ['drop deep', 'deep', 'a zone such as seam-left or middle'],
  ['drop seam-call', 'seam-call', 'a zone such as seam-left or middle'],
  ['drop seams-left', 'seams-left', 'a zone such as seam-left or middle'],
  ['drop seam-left own', 'the end', GAP],
  ['drop seam-left may force', 'force', GAP],
  ['drop seam-left A-left', 'A-left', END],
  ['man', 'the end', 'a player'],
  ['man Z own', 'the end', GAP],
  ['man Z X', 'X', END],
  ['spy may', 'the end', GAP],
  ['spy spy', 'spy', END],
];

describe('a line that is no job', () => {
  it.each(BAD)('%s', (text, found, expected) => {
    expect(parseJob(text)).toEqual({ ok: false, problem: { found, expected } });
  });
});

const RULE_GAP = 'a gap such as A-call, edge-away or outside:end-call';
const BAD_RULES: readonly (readonly [text: string, found: string, expected: string])[] = [
  ['rush A', 'A', RULE_GAP],
  ['rush A-up', 'A-up', RULE_GAP],
  ['rush H-call', 'H-call', RULE_GAP],
  ['rush edge', 'edge', RULE_GAP],
  ['rush outside:slot-call', 'outside:slot-call', RULE_GAP],
  ['rush outside-call', 'outside-call', RULE_GAP],
  ['rush A-call under:end', 'under:end', END],
  ['rush A-call under:end-mine', 'under:end-mine', END],
  ['rush A-call under:-call', 'under:-call', END],
  ['rush A-call under:@', 'under:@', END],
  ['drop seam-up', 'seam-up', 'a zone such as seam-left or middle'],
  ['man 2-call', '2-call', 'a receiver such as #2-call, or back'],
  ['man #0-call', '#0-call', 'a receiver such as #2-call, or back'],
  ['man #12-call', '#12-call', 'a receiver such as #2-call, or back'],
  ['man #2', '#2', 'a receiver such as #2-call, or back'],
  ['man #2-up', '#2-up', 'a receiver such as #2-call, or back'],
  ['man Z', 'Z', 'a receiver such as #2-call, or back'],
];

describe('a line that is no job of a rule', () => {
  it.each(BAD_RULES)('%s', (text, found, expected) => {
    expect(parseRuleJob(text)).toEqual({ ok: false, problem: { found, expected } });
  });
});

const word = fc.stringMatching(/^[A-Za-z0-9_-]{1,12}$/);
const orNull = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> => fc.option(value, { nil: null });

/** Any job with such names. A man with no gap of his own has none firmly, and one or two gaps are told, as in a document. */
function anyJob<N extends Names>(
  gap: fc.Arbitrary<N['gap']>,
  who: fc.Arbitrary<N['who']>,
  side: fc.Arbitrary<N['side']>,
  receiver: fc.Arbitrary<N['receiver']>,
): fc.Arbitrary<JobOf<N>> {
  const gaps = fc.array(gap, { minLength: 1, maxLength: 2 });
  const track = fc.oneof(
    fc.constant({ kind: 'straight' } as const),
    fc.record({ kind: fc.constant('past' as const), how: fc.constantFrom(...PASSINGS), neighbour: who }),
  );
  const support = orNull(fc.constantFrom(...SUPPORTS));
  const manner = fc.constantFrom(...MANNERS);
  const run = fc
    .record({ fits: fc.array(gap, { maxLength: 3 }), firm: fc.boolean(), support })
    .map((each) => ({ ...each, firm: each.firm && each.fits.length > 0 }));
  return fc.oneof(
    fc.record({
      kind: fc.constantFrom('rush' as const, 'contain' as const),
      gaps,
      manner,
      track,
      edge: orNull(fc.constantFrom(...EDGE_PLAYS)),
      peel: fc.boolean(),
      order: orNull(fc.record({ turn: fc.constantFrom('first' as const, 'second' as const), neighbour: who })),
    }),
    fc.record({ kind: fc.constant('fit' as const), gaps, manner, support }),
    fc.record({ kind: fc.constant('drop' as const), zone: fc.constantFrom(...ZONES), side, run }),
    fc.record({ kind: fc.constant('man' as const), receiver, run }),
    fc.record({ kind: fc.constant('spy' as const), run }),
  );
}

const sideRef = fc.constantFrom<SideRef>('call', 'away', 'mine', 'other', 'left', 'right');
const letter = fc.constantFrom(...GAP_LETTERS);
const role: fc.Arbitrary<RoleId> = word.map(asRoleId);
const lookJob: fc.Arbitrary<Job> = anyJob<LookNames>(
  fc.record({ side: fc.constantFrom(...SIDES), letter }),
  role,
  fc.constantFrom(...SIDES, 'middle' as const),
  word.map(asPlayerId),
);
const ruleGap: fc.Arbitrary<GapRef> = fc.oneof(
  fc.record({ kind: fc.constant('letter' as const), side: sideRef, letter }),
  fc.record({ kind: fc.constant('edge' as const), side: sideRef }),
  fc.record({ kind: fc.constant('outside' as const), side: sideRef, body: fc.constantFrom(...BODIES) }),
);
const anyWho: fc.Arbitrary<Who> = fc.oneof(
  fc.record({ kind: fc.constant('role' as const), role }),
  fc.record({
    kind: fc.constant('group' as const),
    group: word.map(asGroupId),
    side: fc.constantFrom('call' as const, 'away' as const),
  }),
);
const anyReceiver: fc.Arbitrary<ReceiverRef> = fc.oneof(
  fc.record({ kind: fc.constant('back' as const), number: fc.integer({ min: 1, max: 4 }) }),
  fc.record({ kind: fc.constant('number' as const), side: sideRef, number: fc.integer({ min: 1, max: 11 }) }),
);
const anyRuleJob: fc.Arbitrary<RuleJob> = anyJob<RuleNames>(
  ruleGap,
  anyWho,
  fc.oneof(sideRef, fc.constant('middle' as const)),
  anyReceiver,
);

describe('printing and reading back', () => {
  it('a job in one look', () => {
    fc.assert(
      fc.property(lookJob, (job) => {
        expect(parseJob(printJob(job))).toEqual({ ok: true, value: job });
      }),
      { numRuns: 1000 },
    );
  });

  it('a job of a rule', () => {
    fc.assert(
      fc.property(anyRuleJob, (job) => {
        expect(parseRuleJob(printRuleJob(job))).toEqual({ ok: true, value: job });
      }),
      { numRuns: 1000 },
    );
  });
});
