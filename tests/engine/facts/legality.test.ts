import { describe, expect, it } from 'vitest';
import { RULE_LEVELS, type RuleLevel } from '../../../src/engine/index.ts';
import { fieldAt } from '../../../src/engine/facts/field.ts';
import { readFaults } from '../../../src/engine/facts/legality.ts';
import { look, say } from '../book.ts';

/*
 * Sources: NFHS 2-14-1 and 7-2-5-a (since 2019 at least five on the line, no more than four backs; NFHS release of
 * 11 Feb 2019), 7-2-5-b (five numbered 50-79); NCAA 7-1-4-a-2 to -4 (no more than four backs; no "seven" since 2009);
 * NFL 7-5-1 (at least seven on the line, 2026 text). No man's land: NFHS 2-25-2, 2-32-3; NCAA 2-27-4-d-1. The neutral zone
 * belongs to the snapper alone: NFL 3-18.
 */
const OFF_THE_LINE = ['5 men are off the line, no more than four may be'];
const SIX_ON_IT = ['6 men are on the line, seven are needed'];
const NONE: readonly string[] = [];

interface Row {
  readonly name: string;
  readonly men: string;
  /** A man who stays on the bench: ten men play. */
  readonly without: string | null;
  readonly says: Readonly<Record<RuleLevel, readonly string[]>>;
}

const everywhere = (...says: readonly string[]): Row['says'] => ({
  'high-school': says,
  college: says,
  professional: says,
});

const ROWS: readonly Row[] = [
  {
    name: 'seven on the line, four backs',
    men: 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'eight on the line, three backs',
    men: 'line te:Y@4 wr:X@-14 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'ten men, six on the line and four backs: legal but for the professionals',
    men: 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    without: 'B',
    says: { 'high-school': NONE, college: NONE, professional: SIX_ON_IT },
  },
  {
    name: 'six on the line and five backs: illegal everywhere',
    men: 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: { 'high-school': OFF_THE_LINE, college: OFF_THE_LINE, professional: SIX_ON_IT },
  },
  {
    name: 'a covered tight end: legal',
    men: 'line te:Y@4 wr:X@-14,-1.5 wr:H@-7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@-1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'four linemen',
    men: 'te:T1@-2.667 ol:G1@-1.333 sn:C@0 ol:G2@1.333 ol:T2@2.667 wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere('4 linemen are in, five are needed'),
  },
  {
    name: 'six linemen',
    men: 'line ol:T3@4 wr:X@-14 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'a guard off the line',
    men: 'ol:T1@-2.667 ol:G1@-1.333,-1.5 sn:C@0 ol:G2@1.333 ol:T2@2.667 te:Y@4 wr:X@-14 wr:Z@14 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere('a lineman is off the line'),
  },
  {
    // That one yard behind the ball is still on the line, and 1.25 a back, are drawing conventions of this project.
    name: 'a slot one yard deep is on the line',
    men: 'line wr:X@-14,-1.5 wr:H@-7,-1 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'a slot a yard and a quarter deep is a back',
    men: 'line wr:X@-14 wr:H@-7,-1.25 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'a slot in no man’s land',
    men: 'line wr:X@-14 wr:H@-7,-1.1 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere('H is neither on the line nor a back'),
  },
  {
    name: 'the passer under centre is excused',
    men: 'line te:Y@4 wr:X@-14 wr:Z@14,-1.5 qb:Q@0,-1.1 rb:F@0,-4.5 rb:B@0,-7',
    without: null,
    says: everywhere(),
  },
  {
    name: 'a receiver in the neutral zone',
    men: 'line wr:X@-14,-0.1 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere('X stands in the neutral zone'),
  },
  {
    name: 'the snapper alone may be in the neutral zone',
    men: 'ol:T1@-2.667 ol:G1@-1.333 sn:C@0,-0.1 ol:G2@1.333 ol:T2@2.667 wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere(),
  },
  {
    name: 'nobody may be beyond it, the snapper included',
    men: 'ol:T1@-2.667 ol:G1@-1.333 sn:C@0,0.3 ol:G2@1.333 ol:T2@2.667 wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14,0.5 qb:Q@0,-5 rb:B@1.5,-5',
    without: null,
    says: everywhere('C stands in the neutral zone', 'Z stands in the neutral zone'),
  },
];

describe.each(RULE_LEVELS)('a legal formation, %s', (level) => {
  it.each(ROWS)('$name', ({ men, without, says }) => {
    const players = look(men).players.filter(({ id }) => id !== without);
    expect(readFaults(players, level, fieldAt(level, 'middle')).map(({ because }) => say(because))).toEqual(
      says[level],
    );
  });
});

const NAMED: readonly (readonly [level: RuleLevel, men: string, who: readonly string[]])[] = [
  ['college', 'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5', ['H', 'A', 'Z', 'Q', 'B']],
  [
    'professional',
    'line wr:X@-14 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    ['H', 'A', 'Z', 'Q', 'B'],
  ],
  ['college', 'line wr:X@-14 wr:H@-7,-1.1 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5', ['H']],
  ['college', 'line wr:X@-14,-0.1 wr:H@-7,-1.5 wr:A@7,-1.5 wr:Z@14 qb:Q@0,-5 rb:B@1.5,-5', ['X']],
  [
    'high-school',
    'ol:T1@-2.667 ol:G1@-1.333,-1.5 sn:C@0 ol:G2@1.333 ol:T2@2.667 te:Y@4 wr:X@-14 wr:Z@14 wr:H@-7,-1.5 qb:Q@0,-5 rb:B@1.5,-5',
    ['G1'],
  ],
];

describe('who makes a formation illegal', () => {
  it.each(NAMED)('%s: %s', (level, men, who) => {
    const [fault] = readFaults(look(men).players, level, fieldAt(level, 'middle'));
    expect(fault?.players).toEqual(who);
  });
});

/** A split end 18 yards from the ball, by level and ball spot: the sidelines are 17.78, 20 and 23.58 yards from the hash. */
const OFF_THE_FIELD: readonly (readonly [
  level: RuleLevel,
  spot: 'left' | 'middle' | 'right',
  who: readonly string[],
])[] = [
  ['high-school', 'left', ['X']],
  ['high-school', 'middle', []],
  ['high-school', 'right', []],
  ['college', 'left', []],
  ['professional', 'left', []],
];

describe('a man drawn over the sideline', () => {
  it.each(OFF_THE_FIELD)('%s, ball %s', (level, spot, who) => {
    const { players } = look('line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5');
    const faults = readFaults(players, level, fieldAt(level, spot));
    expect(faults.flatMap((fault) => fault.players)).toEqual(who);
    expect(faults.map(({ because }) => say(because))).toEqual(who.map((name) => `${name} is off the field`));
  });
});
