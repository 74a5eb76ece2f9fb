import { describe, expect, test } from 'vitest';
import {
  asGroupId,
  asRoleId,
  type BaseJob,
  type GapRef,
  type LookTest,
  type ReceiverRef,
  type SideRef,
  type Spot,
  type Tell,
  type Who,
} from '../../src/engine/index.ts';
import { COMMON_WORDS, makeRuleWords } from '../../src/report/index.ts';
import { ANVIL, gapOn, man, ofGroup, ROLES, roleOf, rush, setupOf } from './fixtures.ts';

/** Wording of rules: ours, from the trade's words. */
const words = makeRuleWords(ROLES, COMMON_WORDS);

test.each<[string, SideRef]>([
  ['call side', 'call'],
  ['away side', 'away'],
  ['my side', 'mine'],
  ['other side', 'other'],
  ['left', 'left'],
  ['right', 'right'],
])('side: %s', (text, side) => {
  expect(words.side(side)).toBe(text);
});

test.each<[string, GapRef]>([
  ['call-side B gap', { kind: 'letter', side: 'call', letter: 'B' }],
  ['A gap left', { kind: 'letter', side: 'left', letter: 'A' }],
  ['away-side edge gap', { kind: 'edge', side: 'away' }],
  ['call-side gap outside the tight end', { kind: 'outside', side: 'call', body: 'end' }],
  ['gap outside the last man on my side', { kind: 'outside', side: 'mine', body: 'last' }],
])('gap: %s', (text, gap) => {
  expect(words.gap(gap)).toBe(text);
});

test.each<[string, Who]>([
  ['N', man('nose')],
  ['E (left end)', man('end-l')],
  // Both men of the group are an E, so the letter is enough.
  ['the call-side E', ofGroup('ends', 'call')],
  ['the away-side outside backer', ofGroup('outsiders', 'away')],
  ['a man who is not in this playbook', { kind: 'role', role: asRoleId('gone') }],
  ['a man who is not in this playbook', { kind: 'group', group: asGroupId('gone'), side: 'call' }],
])('who: %s', (text, who) => {
  expect(words.who(who)).toBe(text);
});

test.each<[string, ReceiverRef]>([
  ['call-side #2', { kind: 'number', side: 'call', number: 2 }],
  ['the back', { kind: 'back', number: 1 }],
  ['back 2 from his side', { kind: 'back', number: 2 }],
])('receiver: %s', (text, receiver) => {
  expect(words.receiver(receiver)).toBe(text);
});

test.each<[string, LookTest]>([
  ['the end man on my side is detached', { kind: 'bodies', side: 'mine', compare: 'at-most', count: 2 }],
  ['the end man on the call side is detached', { kind: 'bodies', side: 'call', compare: 'exactly', count: 2 }],
  [
    'a man is attached outside the tackle on the away side',
    { kind: 'bodies', side: 'away', compare: 'at-least', count: 3 },
  ],
  [
    'the surface has at least 4 men outside the snapper on the left',
    { kind: 'bodies', side: 'left', compare: 'at-least', count: 4 },
  ],
  [
    'the surface has at most 1 man outside the snapper on the other side',
    { kind: 'bodies', side: 'other', compare: 'at-most', count: 1 },
  ],
  [
    'there are at least 3 receivers on the call side',
    { kind: 'receivers', side: 'call', compare: 'at-least', count: 3 },
  ],
  ['there is exactly 1 receiver on the right', { kind: 'receivers', side: 'right', compare: 'exactly', count: 1 }],
  ['there is no receiver on my side', { kind: 'receivers', side: 'mine', compare: 'at-most', count: 0 }],
  ['there is no back in the backfield', { kind: 'backs', compare: 'exactly', count: 0 }],
  ['there are at least 2 backs in the backfield', { kind: 'backs', compare: 'at-least', count: 2 }],
  ['the wide side of the field is on my side', { kind: 'field', side: 'mine' }],
  ['the back is offset on the call side', { kind: 'back', side: 'call' }],
])('condition: %s', (text, condition) => {
  expect(words.test(condition)).toBe(text);
});

test.each<[string, LookTest]>([
  ['a man is attached outside the tackle', { kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
  ['the end man is detached', { kind: 'bodies', side: 'call', compare: 'at-most', count: 2 }],
  ['there are at least 2 receivers', { kind: 'receivers', side: 'left', compare: 'at-least', count: 2 }],
  ['there is no back in the backfield', { kind: 'backs', compare: 'at-most', count: 0 }],
  ['the wide side of the field is there', { kind: 'field', side: 'mine' }],
  ['the back is offset', { kind: 'back', side: 'mine' }],
])('condition to pick, its side picked beside it: %s', (text, condition) => {
  expect(words.testAlone(condition)).toBe(text);
});

test('all conditions of a rule, and none', () => {
  expect(words.when([])).toBe('Always');
  expect(
    words.when([
      { kind: 'bodies', side: 'mine', compare: 'at-most', count: 2 },
      { kind: 'backs', compare: 'exactly', count: 0 },
    ]),
  ).toBe('If the end man on my side is detached and there is no back in the backfield');
});

test.each<[string, GapRef]>([
  ['B gap', { kind: 'letter', side: 'call', letter: 'B' }],
  ['edge gap', { kind: 'edge', side: 'away' }],
  ['gap outside the wing', { kind: 'outside', side: 'mine', body: 'wing' }],
])('gap to pick, its side picked beside it: %s', (text, gap) => {
  expect(words.gapAlone(gap)).toBe(text);
});

describe('the side of a rule', () => {
  test('a step each, in their order', () => {
    expect(
      words.callSide([
        { kind: 'strength', by: 'tight-end', toward: 'to' },
        { kind: 'strength', by: 'receivers', toward: 'to' },
        { kind: 'strength', by: 'field', toward: 'away' },
        { kind: 'role', role: roleOf('jet'), toward: 'to' },
        { kind: 'fixed', side: 'left' },
      ]),
    ).toBe(
      'Call side: toward the tight end, then toward the receivers, then away from the field, then toward J, then to the left',
    );
    expect(words.step({ kind: 'role', role: roleOf('nose'), toward: 'away' })).toBe('away from N');
  });

  test('no step and no side are said, not left blank', () => {
    expect(words.callSide([])).toBe('Call side: not said');
    expect(words.roleSide({ kind: 'middle' })).toBe('Side: the middle');
    const steps = [{ kind: 'strength', by: 'back', toward: 'to' }] as const;
    expect(words.roleSide({ kind: 'steps', steps })).toBe('Side: toward the back');
  });
});

test.each<[string, Spot]>([
  [
    '5: outside foot of the tackle, 0.5 yd off the ball',
    { kind: 'technique', on: 'tackle', leverage: 'outside-foot', depth: 0.5 },
  ],
  [
    '30: outside foot of the guard, 4.5 yd off the ball',
    { kind: 'technique', on: 'guard', leverage: 'outside-foot', depth: 4.5 },
  ],
  ['head up on the last man, 1 yd off the ball', { kind: 'technique', on: 'last', leverage: 'head', depth: 1 }],
  ['head up on the wing, 1 yd off the ball', { kind: 'technique', on: 'wing', leverage: 'head', depth: 1 }],
  ['1 yd outside the last man, 0.5 yd off the ball', { kind: 'edge', offset: 1, depth: 0.5 }],
  ['on #2, inside, 6 yd deep', { kind: 'receiver', number: 2, leverage: 'inside', depth: 6 }],
  ['on #1, head up, 1 yd deep', { kind: 'receiver', number: 1, leverage: 'head', depth: 1 }],
  ['halfway between the last man and #2, 5 yd deep', { kind: 'apex', number: 2, depth: 5 }],
  ['over the ball, 12 yd deep', { kind: 'ball', offset: 0, depth: 12 }],
  ['4 yd from the ball toward my side, 10 yd deep', { kind: 'ball', offset: 4, depth: 10 }],
  ['4 yd from the ball toward the other side, 10 yd deep', { kind: 'ball', offset: -4, depth: 10 }],
])('spot: %s', (text, spot) => {
  expect(words.spot(spot)).toBe(text);
});

test("a spot is said in the staff's numbers", () => {
  const staff = {
    techniques: [
      { on: 'tackle', leverage: 'head', label: '5' },
      { on: 'last', leverage: 'head', label: 'heads' },
    ],
  } as const;
  const own = makeRuleWords(ROLES, staff);
  expect(own.spot({ kind: 'technique', on: 'tackle', leverage: 'head', depth: 0.5 })).toBe(
    '5: head up on the tackle, 0.5 yd off the ball',
  );
  expect(own.spot({ kind: 'technique', on: 'last', leverage: 'head', depth: 0.5 })).toBe(
    'heads: head up on the last man, 0.5 yd off the ball',
  );
});

test('an alignment rule says when, then where', () => {
  const spot = { kind: 'ball', offset: 0, depth: 10 } as const;
  expect(words.alignRule({ when: [], spot })).toBe('Over the ball, 10 yd deep');
  expect(words.alignRule({ when: [{ kind: 'backs', compare: 'exactly', count: 0 }], spot })).toBe(
    'If there is no back in the backfield: over the ball, 10 yd deep',
  );
});

test.each<[string, BaseJob]>([
  [
    'B gap on my side, else C gap on my side; rushes on a pass',
    { gaps: [gapOn('mine', 'B'), gapOn('mine', 'C')], style: 'one-gap', pass: 'rush' },
  ],
  [
    'C gap on my side; rushes and contains on a pass',
    { gaps: [gapOn('mine', 'C')], style: 'one-gap', pass: 'contain' },
  ],
  ['Edge gap on my side', { gaps: [{ kind: 'edge', side: 'mine' }], style: 'one-gap', pass: 'none' }],
  [
    'Two-gap: B gap on my side and C gap on my side; rushes on a pass',
    { gaps: [gapOn('mine', 'B'), gapOn('mine', 'C')], style: 'two-gap', pass: 'rush' },
  ],
  [
    'Two-gap: B gap on my side and C gap on my side, else A gap on my side',
    { gaps: [gapOn('mine', 'B'), gapOn('mine', 'C'), gapOn('mine', 'A')], style: 'two-gap', pass: 'none' },
  ],
  ['No gap of his own', { gaps: [], style: 'one-gap', pass: 'none' }],
])('base job: %s', (text, base) => {
  expect(words.base(base)).toBe(text);
});

describe('what a pressure tells a man', () => {
  const detached: LookTest = { kind: 'bodies', side: 'mine', compare: 'at-most', count: 2 };
  const trips: LookTest = { kind: 'receivers', side: 'call', compare: 'at-least', count: 3 };

  test('cases in their order, then what is left', () => {
    const tell: Tell = {
      who: ofGroup('outsiders', 'call'),
      cases: [
        { when: [detached, trips], basis: 'path', job: rush(gapOn('call', 'C')), preSnap: null },
        { when: [trips], basis: 'movement', job: rush(gapOn('call', 'B'), 'slant'), preSnap: null },
        { when: [], basis: 'consequence', job: { ...rush(gapOn('call', 'A')) }, preSnap: null },
      ],
    };
    expect(words.tell(tell)).toBe(
      'The call-side outside backer: if the end man on my side is detached and there are at least 3 receivers on the call side, ' +
        'rush the call-side C gap; if there are at least 3 receivers on the call side, slant to the call-side B gap ' +
        '(line movement); otherwise rush the call-side A gap (follows from the others)',
    );
  });

  test('without a last case he is told nothing, and that is said', () => {
    const cases = [{ when: [trips], basis: 'path', job: rush(gapOn('call', 'A')), preSnap: null }] as const;
    expect(words.tell({ who: man('nose'), cases })).toBe(
      'N: if there are at least 3 receivers on the call side, rush the call-side A gap; otherwise nothing',
    );
    expect(words.tell({ who: man('nose'), cases: [] })).toBe('N: nothing');
  });

  test('what he does before the snap comes first', () => {
    const told = { when: [], basis: 'path', job: rush(gapOn('call', 'A')) } as const;
    expect(words.tellCase({ ...told, preSnap: { kind: 'heels', of: ofGroup('ends', 'call') } })).toBe(
      'Stand as deep as the heels of the call-side E before the snap, then rush the call-side A gap',
    );
    expect(words.tellCase({ ...told, when: [trips], preSnap: { kind: 'depth', depth: 3.5 } })).toBe(
      'If there are at least 3 receivers on the call side, stand 3.5 yd deep before the snap, then rush the call-side A gap',
    );
  });

  test('tracks, zones and receivers are said from the call', () => {
    expect(ANVIL.tells.map(words.tell)).toEqual([
      'The call-side outside backer: rush the call-side edge gap, spill; contain on a pass',
      'The call-side inside backer: rush the call-side B gap off the outside hip of the call-side E',
      'The call-side E: slant to the call-side A gap (line movement)',
      'N: slant to the away-side A gap (line movement)',
    ]);
    expect(setupOf().coverage.tells.map(words.coverageTell)).toEqual([
      'The call-side C: drop to the call-side deep third',
      'The away-side C: drop to the away-side deep third',
      'The call-side F or R: drop to the call-side seam; force; call-side edge gap if nobody has it',
      'The away-side F or R: drop to the deep middle',
      'The away-side outside backer: man on away-side #2; force; away-side edge gap against the run',
    ]);
  });
});

test('all alignment rules of a man in their order', () => {
  expect(
    words.alignRules([
      {
        when: [{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
        spot: { kind: 'technique', on: 'end', leverage: 'head', depth: 1 },
      },
      { when: [], spot: { kind: 'technique', on: 'tackle', leverage: 'outside-foot', depth: 1 } },
    ]),
  ).toBe(
    'If a man is attached outside the tackle on my side: 6: head up on the tight end, 1 yd off the ball; ' +
      'else 5: outside foot of the tackle, 1 yd off the ball',
  );
});

test.each<[string, Parameters<typeof words.need>[0]]>([
  [
    'Call-side seam: the call-side E, else N',
    { when: [], zone: 'seam', side: 'call', takers: [ofGroup('ends', 'call'), man('nose')] },
  ],
  ['Deep middle: nobody yet', { when: [], zone: 'middle', side: 'middle', takers: [] }],
  [
    'If there is no back in the backfield: deep half left: N',
    {
      when: [{ kind: 'backs', compare: 'at-most', count: 0 }],
      zone: 'half',
      side: 'left',
      takers: [man('nose')],
    },
  ],
])('zone that must be filled: %s', (text, need) => {
  expect(words.need(need)).toBe(text);
});

test('who forces on which side', () => {
  expect(words.forces(setupOf().coverage.tells)).toBe(
    'Force on the call side: the call-side F or R; on the away side: the away-side outside backer',
  );
  expect(words.forces([])).toBe('Force on the call side: nobody is told to; on the away side: nobody is told to');
});
