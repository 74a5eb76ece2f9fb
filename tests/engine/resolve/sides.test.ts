import { describe, expect, it } from 'vitest';
import { decideSide, opposite, sidesOfRoles } from '../../../src/engine/resolve/sides.ts';
import { turnedSide } from '../../../src/engine/resolve/resolvePressure.ts';
import {
  asGroupId,
  asRoleId,
  fact,
  type Direction,
  type Place,
  type Role,
  type Side,
  type SideDecision,
  type SideStep,
  type Strength,
  type Turn,
} from '../../../src/engine/index.ts';
import { factsOf, LOOKS, ROLES, sayAll } from '../book.ts';

const strength = (by: Strength, toward: Direction): SideStep => ({ kind: 'strength', by, toward });
const standing = (role: string, toward: Direction): SideStep => ({ kind: 'role', role: asRoleId(role), toward });
const fixed = (side: Side): SideStep => ({ kind: 'fixed', side });

interface Row {
  readonly name: string;
  readonly look: keyof typeof LOOKS;
  readonly spot: Place;
  readonly steps: readonly SideStep[];
  readonly side: Side | 'tie';
  readonly why: readonly string[];
}

/*
 * Tie-breaks in the coach's own order (common practice, no source); ways to set a side: "Setting a Strength", The Call Sheet
 * newsletter no. 004; to or away from the back: "Blitz the Formation", Blitzology, 14 Dec 2019.
 * In the tables the nose N stands in the middle and the left end LE on the left; nobody is called X.
 */
const ROWS: readonly Row[] = [
  {
    name: 'fixed',
    look: '11 tight end',
    spot: 'middle',
    steps: [fixed('left')],
    side: 'left',
    why: ['the side is left', 'the rule says left'],
  },
  {
    name: 'to the tight end',
    look: '11 tight end',
    spot: 'middle',
    steps: [strength('tight-end', 'to')],
    side: 'right',
    why: [
      'the side is right',
      'it goes to tight-end strength, right',
      'the surface is 2 men on the left and 3 on the right',
    ],
  },
  {
    name: 'away from the tight end',
    look: '11 tight end',
    spot: 'middle',
    steps: [strength('tight-end', 'away')],
    side: 'left',
    why: [
      'the side is left',
      'it goes away from tight-end strength, left',
      'the surface is 2 men on the left and 3 on the right',
    ],
  },
  {
    name: 'to the passing strength',
    look: '10 trips',
    spot: 'middle',
    steps: [strength('receivers', 'to')],
    side: 'right',
    why: [
      'the side is right',
      'it goes to passing strength, right',
      'there are 1 receivers on the left and 3 on the right',
    ],
  },
  {
    name: 'to the back',
    look: '10 trips',
    spot: 'middle',
    steps: [strength('back', 'to')],
    side: 'left',
    why: ['the side is left', 'it goes to the back, left', 'the back is offset to the left'],
  },
  {
    name: 'away from the back',
    look: '10 trips',
    spot: 'middle',
    steps: [strength('back', 'away')],
    side: 'right',
    why: ['the side is right', 'it goes away from the back, right', 'the back is offset to the left'],
  },
  {
    name: 'to the field',
    look: '10 doubles',
    spot: 'right',
    steps: [strength('field', 'to')],
    side: 'left',
    why: ['the side is left', 'it goes to the field, left', 'the wide side of the field is left'],
  },
  {
    name: 'to the boundary',
    look: '10 doubles',
    spot: 'right',
    steps: [strength('field', 'away')],
    side: 'right',
    why: ['the side is right', 'it goes away from the field, right', 'the wide side of the field is left'],
  },
  {
    name: 'to the side of a role',
    look: '10 doubles',
    spot: 'middle',
    steps: [standing('LE', 'to')],
    side: 'left',
    why: ['the side is left', 'it goes to the side of LE, left'],
  },
  {
    name: 'away from a role',
    look: '10 doubles',
    spot: 'middle',
    steps: [standing('LE', 'away')],
    side: 'right',
    why: ['the side is right', 'it goes away from LE, right'],
  },
  {
    name: 'the first step that decides wins, the ones before are told',
    look: '10 doubles',
    spot: 'left',
    steps: [
      strength('tight-end', 'to'),
      strength('receivers', 'to'),
      strength('field', 'to'),
      strength('back', 'away'),
    ],
    side: 'right',
    why: [
      'the side is right',
      'tight-end strength does not decide',
      'both sides have 2 attached men',
      'passing strength does not decide',
      'both sides have 2 receivers',
      'it goes to the field, right',
      'the wide side of the field is right',
    ],
  },
  {
    name: 'another order, another side',
    look: '10 doubles',
    spot: 'right',
    steps: [strength('back', 'to'), strength('field', 'to')],
    side: 'right',
    why: ['the side is right', 'it goes to the back, right', 'the back is offset to the right'],
  },
  {
    name: 'a role in the middle, and one that is not here, decide nothing',
    look: '10 doubles',
    spot: 'middle',
    steps: [standing('N', 'to'), standing('X', 'to'), fixed('right')],
    side: 'right',
    why: ['the side is right', 'N has no side here', 'X has no side here', 'the rule says right'],
  },
  {
    name: 'a tie is told, never guessed',
    look: '20 split backs',
    spot: 'middle',
    steps: [strength('tight-end', 'to'), strength('back', 'to'), strength('field', 'to')],
    side: 'tie',
    why: [
      'no step of the rule decides a side',
      'tight-end strength does not decide',
      'both sides have 2 attached men',
      'the back does not decide',
      'no back is offset more to one side than to the other',
      'the field does not decide',
      'the ball is in the middle of the field',
    ],
  },
  {
    name: 'a rule without steps is a tie',
    look: '11 tight end',
    spot: 'left',
    steps: [],
    side: 'tie',
    why: ['no step of the rule decides a side'],
  },
];

describe('the side of a rule', () => {
  it.each(ROWS)('$name', ({ look, spot, steps, side, why }) => {
    const facts = factsOf(LOOKS[look], spot);
    const sideOfRole = (role: string): Side | null => (role === 'LE' ? 'left' : null);
    const decision = decideSide(steps, { facts, sideOfRole });
    expect(decision.kind === 'tie' ? 'tie' : decision.side).toBe(side);
    expect(sayAll(decision.because)).toEqual(why);
  });

  it('has one opposite', () => {
    expect([opposite('left'), opposite('right')]).toEqual(['right', 'left']);
  });
});

const decided = (side: Side): SideDecision => ({ kind: 'decided', side, because: fact('as given') });
const tie: SideDecision = { kind: 'tie', because: fact('as given') };

const TURNS: readonly (readonly [
  turn: Turn,
  first: SideDecision,
  own: SideDecision,
  side: Side | 'tie',
  why: readonly string[],
])[] = [
  ['own', decided('right'), decided('left'), 'left', ['as given']],
  ['own', tie, decided('left'), 'left', ['as given']],
  ['own', decided('right'), tie, 'tie', ['as given']],
  [
    'same',
    decided('right'),
    decided('left'),
    'right',
    ['the call turns it to the side of the first, right', 'as given'],
  ],
  ['same', decided('left'), tie, 'left', ['the call turns it to the side of the first, left', 'as given']],
  ['same', tie, decided('left'), 'tie', ['it follows the first pressure, and that one has no side', 'as given']],
  ['opposite', decided('right'), decided('right'), 'left', ['the call turns it opposite the first, left', 'as given']],
  ['opposite', decided('left'), tie, 'right', ['the call turns it opposite the first, right', 'as given']],
  ['opposite', tie, decided('left'), 'tie', ['it follows the first pressure, and that one has no side', 'as given']],
];

describe('how the call turns the second pressure', () => {
  it.each(TURNS)('%s, first %o, own rule %o', (turn, first, own, side, why) => {
    const decision = turnedSide(turn, first, own);
    expect(decision.kind === 'tie' ? 'tie' : decision.side).toBe(side);
    expect(sayAll(decision.because)).toEqual(why);
  });
});

/** The side each role of the test book takes: the strong ones to the tight end, else passing strength, else field, else right. */
const CHOSEN: readonly (readonly [look: keyof typeof LOOKS, spot: Place, sides: string])[] = [
  ['11 tight end', 'middle', 'N- LE:left RE:right S:right J:left M:right W:left SS:right FS:left LC:left RC:right'],
  ['10 trips', 'left', 'N- LE:left RE:right S:right J:left M:right W:left SS:right FS:left LC:left RC:right'],
  ['10 doubles', 'right', 'N- LE:left RE:right S:left J:right M:left W:right SS:left FS:right LC:left RC:right'],
  ['10 doubles', 'middle', 'N- LE:left RE:right S:right J:left M:right W:left SS:right FS:left LC:left RC:right'],
];

describe('the side each role takes', () => {
  it.each(CHOSEN)('%s, %s', (look, spot, expected) => {
    const sides = sidesOfRoles(ROLES, factsOf(LOOKS[look], spot));
    const said = ROLES.map(({ id }) => {
      const side = sides.get(id) ?? null;
      return side === null ? `${id}-` : `${id}:${side}`;
    });
    expect(said.join(' ')).toBe(expected);
  });

  it('follows a role that is told later in the list', () => {
    expect(sidesOfRoles([...ROLES].reverse(), factsOf(LOOKS['11 tight end']))).toEqual(
      sidesOfRoles(ROLES, factsOf(LOOKS['11 tight end'])),
    );
  });

  const role = (id: string, ...steps: readonly SideStep[]): Role => ({
    id: asRoleId(id),
    letter: id,
    name: id,
    room: 'line',
    group: asGroupId('end'),
    side: { kind: 'steps', steps },
  });

  it('a circle of roles is a broken promise', () => {
    const circle = [role('A', standing('B', 'to')), role('B', standing('A', 'away'))];
    expect(() => sidesOfRoles(circle, factsOf(LOOKS['11 tight end']))).toThrow('in a circle: A > B > A');
  });

  it('a rule that does not decide is a broken promise', () => {
    expect(() => sidesOfRoles([role('A', strength('field', 'to'))], factsOf(LOOKS['11 tight end']))).toThrow(
      'role A does not decide',
    );
  });

  it('a role that is not there decides nothing', () => {
    const sides = sidesOfRoles([role('A', standing('B', 'to'), fixed('left'))], factsOf(LOOKS['11 tight end']));
    expect(sides.get(asRoleId('A'))).toBe('left');
  });
});
