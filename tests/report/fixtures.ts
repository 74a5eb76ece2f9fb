import {
  asCallId,
  asCoverageId,
  asFrontId,
  asGroupId,
  asLookId,
  asPlayerId,
  asPressureId,
  asRoleId,
  type Call,
  type FrontRole,
  type GapRef,
  type Look,
  type OffenceKind,
  type Pressure,
  type Role,
  type RoleId,
  type RoleSide,
  type RuleJob,
  type Setup,
  type Tell,
  type ToldBasis,
  type Who,
} from '../../src/engine/index.ts';

/**
 * An invented odd front, an invented menu of two pressures and two looks. Every id begins with the mark, and no letter or
 * name does, so that an id in a sentence gives itself away.
 */
export const ID_MARK = 'zq';

const id = (text: string): string => `${ID_MARK}-${text}`;
const fixed = (side: 'left' | 'right'): RoleSide => ({ kind: 'steps', steps: [{ kind: 'fixed', side }] });
const MIDDLE: RoleSide = { kind: 'middle' };

function role(key: string, letter: string, name: string, room: Role['room'], group: string, side: RoleSide): Role {
  return { id: asRoleId(id(key)), letter, name, room, group: asGroupId(id(group)), side };
}

export const NOSE = asRoleId(id('nose'));
export const LEFT_END = asRoleId(id('end-l'));
export const RIGHT_END = asRoleId(id('end-r'));
export const LEFT_CORNER = asRoleId(id('corner-l'));

/** Both ends are an E and both corners a C, as on many boards; everybody else has a letter of his own. */
export const ROLES: readonly Role[] = [
  role('nose', 'N', 'nose', 'line', 'noses', MIDDLE),
  role('end-l', 'E', 'left end', 'line', 'ends', fixed('left')),
  role('end-r', 'E', 'right end', 'line', 'ends', fixed('right')),
  role('mike', 'M', 'left inside backer', 'linebackers', 'insiders', fixed('left')),
  role('will', 'W', 'right inside backer', 'linebackers', 'insiders', fixed('right')),
  role('sam', 'S', 'left outside backer', 'linebackers', 'outsiders', fixed('left')),
  role('jet', 'J', 'right outside backer', 'linebackers', 'outsiders', fixed('right')),
  role('corner-l', 'C', 'left corner', 'secondary', 'corners', fixed('left')),
  role('corner-r', 'C', 'right corner', 'secondary', 'corners', fixed('right')),
  role('free', 'F', 'free safety', 'secondary', 'safeties', fixed('left')),
  role('rover', 'R', 'rover', 'secondary', 'safeties', fixed('right')),
];

const mine = (letter: 'A' | 'B' | 'C' | 'D'): GapRef => ({ kind: 'letter', side: 'mine', letter });

function stands(key: string, spot: FrontRole['rules'][number]['spot'], gaps: readonly GapRef[]): FrontRole {
  const line = key === 'nose' || key.startsWith('end');
  const two = key === 'nose';
  return {
    role: asRoleId(id(key)),
    rules: [{ when: [], spot }],
    base: { gaps, style: two ? 'two-gap' : 'one-gap', pass: line ? 'rush' : 'none' },
  };
}

const BOTH_A: readonly GapRef[] = [
  { kind: 'letter', side: 'left', letter: 'A' },
  { kind: 'letter', side: 'right', letter: 'A' },
];
const edge: GapRef = { kind: 'edge', side: 'mine' };

export const FRONT: Setup['front'] = {
  id: asFrontId(id('odd')),
  name: 'Odd',
  byHand: [],
  roles: [
    stands('nose', { kind: 'technique', on: 'snapper', leverage: 'head', depth: 0.5 }, BOTH_A),
    ...['end-l', 'end-r'].map((key) =>
      stands(key, { kind: 'technique', on: 'tackle', leverage: 'inside-foot', depth: 0.5 }, [mine('B'), mine('C')]),
    ),
    ...['mike', 'will'].map((key) =>
      stands(key, { kind: 'technique', on: 'guard', leverage: 'outside-foot', depth: 4.5 }, [mine('B'), mine('A')]),
    ),
    ...['sam', 'jet'].map((key) => stands(key, { kind: 'edge', offset: 1, depth: 1 }, [edge, mine('C')])),
    ...['corner-l', 'corner-r'].map((key) =>
      stands(key, { kind: 'receiver', number: 1, leverage: 'inside', depth: 7 }, []),
    ),
    stands('free', { kind: 'ball', offset: 6, depth: 11 }, [mine('C')]),
    stands('rover', { kind: 'ball', offset: 6, depth: 11 }, [mine('D'), mine('C')]),
  ],
};

type Drawn = readonly [key: string, letter: string, kind: OffenceKind, x: number, y: number];

const LINE: readonly Drawn[] = [
  ['c', 'C', 'snapper', 0, -0.3],
  ['gl', 'G', 'lineman', -1.33, -0.4],
  ['gr', 'G', 'lineman', 1.33, -0.4],
  ['tl', 'T', 'lineman', -2.67, -0.5],
  ['tr', 'T', 'lineman', 2.67, -0.5],
  ['q', 'Q', 'passer', 0, -5],
];

function look(key: string, name: string, others: readonly Drawn[]): Look {
  return {
    id: asLookId(id(key)),
    name,
    players: [...LINE, ...others].map(([player, letter, kind, x, y]) => ({
      id: asPlayerId(id(player)),
      letter,
      kind,
      x,
      y,
    })),
    motion: null,
    runs: [],
    protections: [],
  };
}

/** Two receivers on each side, nobody attached, one back offset to the defence's right. */
export const SPREAD = look('spread', 'Two by two', [
  ['x', 'X', 'receiver', -18, -0.5],
  ['h', 'H', 'receiver', -8, -1.5],
  ['y', 'Y', 'receiver', 8, -1.5],
  ['z', 'Z', 'receiver', 18, -0.5],
  ['b', 'B', 'back', 1.5, -5],
]);

/** A tight end on the defence's right, a flanker outside him, two receivers on the left. */
export const TIGHT = look('tight', 'Tight end right', [
  ['x', 'X', 'receiver', -18, -0.5],
  ['h', 'H', 'receiver', -8, -1.5],
  ['y', 'Y', 'tight-end', 4, -0.5],
  ['z', 'Z', 'receiver', 12, -1.5],
  ['b', 'B', 'back', 0, -6],
]);

/** What this look is known for: runs with and without an option, one it cannot run, protections it has and has not. */
export const KNOWN: Pick<Look, 'runs' | 'protections'> = {
  runs: [
    { concept: 'power', side: 'right', passOption: false },
    { concept: 'zone-read', side: 'right', passOption: true },
    { concept: 'iso', side: 'left', passOption: false },
    { concept: 'counter', side: 'left', passOption: false },
  ],
  protections: [
    { protection: 'half-slide-six', slideSide: 'left' },
    { protection: 'man-five', slideSide: 'left' },
    { protection: 'half-slide-backs', slideSide: 'right' },
  ],
};

/** The slot receiver of the left goes across to the right before the snap. */
export const ACROSS: Look['motion'] = { player: asPlayerId(id('h')), to: { x: 7, y: -1.5 } };

export const man = (key: string): Who => ({ kind: 'role', role: asRoleId(id(key)) });
export const ofGroup = (group: string, side: 'call' | 'away'): Who => ({
  kind: 'group',
  group: asGroupId(id(group)),
  side,
});
export const gapOn = (side: 'call' | 'away' | 'mine', letter: 'A' | 'B' | 'C' | 'D'): GapRef => ({
  kind: 'letter',
  side,
  letter,
});

export const rush = (gap: GapRef, manner: 'penetrate' | 'slant' | 'two-gap' = 'penetrate'): RuleJob => ({
  kind: 'rush',
  gaps: [gap],
  manner,
  track: { kind: 'straight' },
  edge: null,
  peel: false,
  order: null,
});

export const tells = (who: Who, job: RuleJob, basis: ToldBasis = 'path'): Tell => ({
  who,
  cases: [{ when: [], basis, job, preSnap: null }],
});

function pressure(key: string, name: string, all: readonly Tell[]): Pressure {
  return {
    id: asPressureId(id(key)),
    name,
    tags: [],
    callSide: [
      { kind: 'strength', by: 'tight-end', toward: 'to' },
      { kind: 'strength', by: 'back', toward: 'to' },
    ],
    tells: all,
    coverage: asCoverageId(id('shell')),
    rushers: null,
    notAgainst: [],
    installDay: null,
  };
}

/** An outside backer off the edge, the call-side end two gaps in, the nose away. */
export const ANVIL = pressure('anvil', 'Anvil', [
  tells(ofGroup('outsiders', 'call'), {
    kind: 'contain',
    gaps: [{ kind: 'edge', side: 'call' }],
    manner: 'penetrate',
    track: { kind: 'straight' },
    edge: 'spill',
    peel: false,
    order: null,
  }),
  tells(ofGroup('insiders', 'call'), {
    kind: 'rush',
    gaps: [gapOn('call', 'B')],
    manner: 'penetrate',
    track: { kind: 'past', how: 'outside-hip', neighbour: ofGroup('ends', 'call') },
    edge: null,
    peel: false,
    order: null,
  }),
  tells(ofGroup('ends', 'call'), rush(gapOn('call', 'A'), 'slant'), 'movement'),
  tells(man('nose'), rush(gapOn('away', 'A'), 'slant'), 'movement'),
]);

/** The away inside backer through the A gap and the nose opposite him: with Anvil the nose is told two things. */
export const TONGS = pressure('tongs', 'Tongs', [
  tells(ofGroup('insiders', 'away'), rush(gapOn('away', 'A'))),
  tells(man('nose'), rush(gapOn('call', 'A')), 'consequence'),
]);

const none = { fits: [], firm: false, support: null } as const;

const SHELL: Setup['coverage'] = {
  id: asCoverageId(id('shell')),
  name: 'Three deep',
  needs: [],
  tells: [
    ...(['call', 'away'] as const).flatMap(
      (side) =>
        [
          {
            who: ofGroup('corners', side),
            cases: [{ when: [], job: { kind: 'drop', zone: 'third', side, run: none } }],
          },
        ] satisfies Setup['coverage']['tells'][number][],
    ),
    {
      who: ofGroup('safeties', 'call'),
      cases: [
        {
          when: [],
          job: {
            kind: 'drop',
            zone: 'seam',
            side: 'call',
            run: { fits: [{ kind: 'edge', side: 'call' }], firm: false, support: 'force' },
          },
        },
      ],
    },
    {
      who: ofGroup('safeties', 'away'),
      cases: [{ when: [], job: { kind: 'drop', zone: 'middle', side: 'middle', run: none } }],
    },
    {
      who: ofGroup('outsiders', 'away'),
      cases: [
        {
          when: [],
          job: {
            kind: 'man',
            receiver: { kind: 'number', side: 'away', number: 2 },
            run: { fits: [{ kind: 'edge', side: 'away' }], firm: true, support: 'force' },
          },
        },
      ],
    },
  ],
};

/** The same shell with what it cannot do without: the hook has only men who rush or cover, so it may stay empty. */
export const NEEDY_SHELL: Setup['coverage'] = {
  ...SHELL,
  name: 'Three deep, three under',
  needs: [
    ...(['call', 'away'] as const).map((side) => ({
      when: [],
      zone: 'third' as const,
      side,
      takers: [ofGroup('corners', side)],
    })),
    { when: [], zone: 'middle', side: 'middle', takers: [ofGroup('safeties', 'away')] },
    { when: [], zone: 'seam', side: 'call', takers: [ofGroup('safeties', 'call')] },
    { when: [], zone: 'hook', side: 'middle', takers: [ofGroup('insiders', 'away')] },
  ],
};

/** A setup of the fixture world; parts may be exchanged. */
export function setupOf(parts: Partial<Setup> = {}): Setup {
  return {
    level: 'high-school',
    spot: 'middle',
    roles: ROLES,
    front: FRONT,
    look: TIGHT,
    first: ANVIL,
    second: TONGS,
    turn: 'own',
    combination: { kind: 'together' },
    coverage: SHELL,
    secondCoverage: SHELL,
    waivers: [],
    dictionary: [],
    checkOut: null,
    rushers: null,
    ...parts,
  };
}

export const CALL: Pick<Call, 'id' | 'name'> = { id: asCallId(id('call')), name: 'Anvil Tongs' };
export const roleOf = (key: string): RoleId => asRoleId(id(key));
export const playerOf = (key: string) => asPlayerId(id(key));
export const lookIdOf = (key: string) => asLookId(id(key));
