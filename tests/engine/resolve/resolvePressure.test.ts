import { describe, expect, it } from 'vitest';
import { align } from '../../../src/engine/align/align.ts';
import { ownSide, resolvePressure } from '../../../src/engine/resolve/resolvePressure.ts';
import {
  analyse,
  asGroupId,
  asRoleId,
  fact,
  printJob,
  type Coverage,
  type Front,
  type PreSnap,
  type Pressure,
  type ResolvedPressure,
  type Side,
  type SideDecision,
  type Tell,
} from '../../../src/engine/index.ts';
import {
  factsOf,
  look,
  LOOKS,
  ODD,
  pressure,
  ROLES,
  ruleJob,
  say,
  sayAll,
  setup,
  tell,
  THREE_DEEP,
  who,
} from '../book.ts';

type LookName = keyof typeof LOOKS;

const decided = (side: Side): SideDecision => ({ kind: 'decided', side, because: fact('as given') });
const tie: SideDecision = { kind: 'tie', because: fact('as given') };

function resolve(
  name: LookName,
  tells: readonly Tell[],
  coverage: Coverage | null = null,
  side: SideDecision = decided('right'),
): ResolvedPressure {
  const facts = factsOf(LOOKS[name]);
  return resolvePressure(pressure('p', tells), coverage, side, facts, align(ODD, ROLES, facts, look(LOOKS[name]).id));
}

/** `S path rush B-right`, one man a line, sorted by name; `S ! reason` for a rule that points at nobody. */
function told({ tellings }: ResolvedPressure): readonly string[] {
  return [...tellings]
    .map(([role, telling]) =>
      telling.kind === 'told'
        ? `${role} ${telling.basis} ${printJob(telling.job)}`
        : `${role} ! ${say(telling.because)}`,
    )
    .sort();
}

/** A tight end on his side: B inside the end; else straight through B; two cases of one man. */
const twoCases: Tell = {
  who: who('outside-call'),
  cases: [
    {
      when: [{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
      basis: 'path',
      job: ruleJob('rush B-call inside-hip:end-call'),
      preSnap: { kind: 'heels', of: who('end-call') },
    },
    { when: [], basis: 'movement', job: ruleJob('rush B-call'), preSnap: null },
  ],
};
/** Only against a tight end on his side. */
const onlyTight: Tell = { ...twoCases, cases: twoCases.cases.slice(0, 1) };

interface Row {
  readonly name: string;
  readonly look: LookName;
  readonly tells: readonly Tell[];
  readonly coverage?: Coverage;
  readonly side?: SideDecision;
  readonly told: readonly string[];
  readonly lost?: readonly string[];
}

const ROWS: readonly Row[] = [
  {
    name: 'nobody is told anything by an empty pressure without a shell',
    look: '11 tight end',
    tells: [],
    told: [],
  },
  {
    name: 'call and away become right and left',
    look: '11 tight end',
    tells: [tell('end-call', 'movement', 'contain C-call'), tell('end-away', 'movement', 'rush B-away slant')],
    told: ['LE movement rush B-left slant', 'RE movement contain C-right'],
  },
  {
    name: 'the same pressure called to the left',
    look: '11 tight end',
    tells: [tell('end-call', 'movement', 'contain C-call'), tell('end-away', 'movement', 'rush B-away slant')],
    side: decided('left'),
    told: ['LE movement contain C-left', 'RE movement rush B-right slant'],
  },
  {
    name: 'the first case that holds',
    look: '11 tight end',
    tells: [twoCases],
    told: ['S path rush B-right inside-hip:RE'],
  },
  {
    name: 'else the next',
    look: '10 doubles',
    tells: [twoCases],
    told: ['S movement rush B-right'],
  },
  {
    name: 'no case holds: he is told nothing',
    look: '10 doubles',
    tells: [onlyTight],
    told: [],
  },
  {
    name: 'the shell tells whoever the rush leaves free, and nobody else',
    look: '11 tight end',
    tells: [tell('outside-call', 'path', 'rush B-call'), tell('safety-call', 'consequence', 'drop middle')],
    coverage: THREE_DEEP,
    told: [
      'FS coverage drop middle',
      'J coverage drop seam-left may C-left force',
      'LC coverage drop third-left',
      'M coverage drop hook-right may A-right+B-right',
      'RC coverage drop third-right',
      'S path rush B-right',
      'SS consequence drop middle',
      'W coverage drop hook-left may A-left+B-left cutback',
    ],
  },
  {
    name: 'a man whose cases do not hold is free for the shell',
    look: '10 doubles',
    tells: [onlyTight],
    coverage: { ...THREE_DEEP, tells: THREE_DEEP.tells.slice(-1) },
    told: ['S coverage drop curl-flat-right may C-right'],
  },
  {
    name: 'a rule that points at nobody says why, and the shell does not hide it',
    look: '10 doubles',
    tells: [tell('outside-call', 'path', 'rush D-call')],
    coverage: { ...THREE_DEEP, tells: THREE_DEEP.tells.slice(-1) },
    told: ['S ! there is no D gap on the right'],
  },
  {
    name: 'a path past a man who is not in this front',
    look: '11 tight end',
    tells: [tell('outside-call', 'path', 'rush B-call under:tackle-call')],
    told: ['S ! tackle-call is not in this front'],
  },
  {
    name: 'who is not in this front is lost, the others are told',
    look: '11 tight end',
    tells: [
      tell('@X', 'path', 'rush A-call'),
      tell('tackle-away', 'movement', 'rush B-away'),
      tell('@N', 'movement', 'rush A-call slant'),
    ],
    told: ['N movement rush A-right slant'],
    lost: ['@X is not in this front', 'tackle-away is not in this front'],
  },
  {
    name: 'one man of a group is meant on both sides: the first telling stands',
    look: '11 tight end',
    tells: [tell('nose-call', 'movement', 'rush A-call'), tell('nose-away', 'movement', 'rush A-away')],
    told: ['N movement rush A-right'],
  },
  {
    name: 'without a side nobody is told anything',
    look: '11 tight end',
    tells: [tell('@N', 'movement', 'rush A-call slant'), tell('@X', 'path', 'rush A-call')],
    coverage: THREE_DEEP,
    side: tie,
    told: [],
  },
];

describe('one pressure in one look', () => {
  it.each(ROWS)('$name', (row) => {
    const resolved = resolve(row.look, row.tells, row.coverage ?? null, row.side);
    expect(told(resolved)).toEqual(row.told);
    expect(resolved.lost.map(say)).toEqual(row.lost ?? []);
  });
});

const WHY: readonly (readonly [tell: Tell, sentence: string])[] = [
  [tell('@N', 'path', 'rush A-call'), 'the pressure sends him (his rule 1)'],
  [tell('@N', 'movement', 'rush A-call'), 'the pressure moves the line (his rule 1)'],
  [tell('@N', 'consequence', 'rush A-call'), 'it follows from what another man does (his rule 1)'],
  [twoCases, 'the pressure moves the line (his rule 2)'],
];

describe('why he is told it', () => {
  it.each(WHY)('%o: %s', (one, sentence) => {
    const [telling] = resolve('10 doubles', [one]).tellings.values();
    expect(telling === undefined ? [] : sayAll(telling.because)).toEqual([sentence, 'as given']);
  });

  it('the shell', () => {
    const telling = resolve('10 doubles', [], THREE_DEEP).tellings.get(asRoleId('LC'));
    expect(telling === undefined ? [] : sayAll(telling.because)).toEqual([
      'the shell behind the rush gives it to him (his rule 1)',
      'as given',
    ]);
  });
});

describe('the call side by a role', () => {
  const bySide = (role: string): string => {
    const facts = factsOf(LOOKS['11 tight end']);
    const rule = pressure('p', [], [{ kind: 'role', role: asRoleId(role), toward: 'to' }]);
    const side = ownSide(rule, facts, align(ODD, ROLES, facts, look(LOOKS['11 tight end']).id));
    return side.kind === 'tie' ? 'tie' : side.side;
  };

  it.each([
    ['S', 'right'],
    ['J', 'left'],
    ['N', 'tie'],
    ['X', 'tie'],
  ])('%s: %s', (role, side) => {
    expect(bySide(role)).toBe(side);
  });
});

interface DepthRow {
  readonly name: string;
  readonly look: LookName;
  readonly first: Pressure;
  readonly second?: Pressure;
  readonly sides?: readonly [SideDecision, SideDecision];
  /** `S 1.8 why`, one man a line. */
  readonly depths: readonly string[];
}

const moving = (name: string, preSnap: PreSnap): Tell => tell(name, 'path', 'rush B-call', preSnap);

/** Linemen of the odd front stand 0.8 yards off the ball, inside backers 4.5; heels are one yard behind a man (a convention). */
const DEPTHS: readonly DepthRow[] = [
  {
    name: 'on the heels of the end of his side',
    look: '11 tight end',
    first: pressure('p', [twoCases]),
    depths: ['S 1.8 the pressure has him on the heels of RE'],
  },
  {
    name: 'only where the case that holds says so',
    look: '10 doubles',
    first: pressure('p', [twoCases]),
    depths: [],
  },
  {
    name: 'a depth in yards',
    look: '11 tight end',
    first: pressure('p', [moving('inside-call', { kind: 'depth', depth: 2 })]),
    depths: ['M 2 the pressure has him 2 yards deep'],
  },
  {
    name: 'on the heels of somebody who is not in this front: he stays',
    look: '11 tight end',
    first: pressure('p', [moving('inside-call', { kind: 'heels', of: who('tackle-call') })]),
    depths: [],
  },
  {
    name: 'the second one to its own side',
    look: '11 tight end',
    first: pressure('p', [moving('inside-call', { kind: 'depth', depth: 2 })]),
    second: pressure('q', [moving('inside-call', { kind: 'depth', depth: 3 })]),
    sides: [decided('right'), decided('left')],
    depths: ['M 2 the pressure has him 2 yards deep', 'W 3 the pressure has him 3 yards deep'],
  },
  {
    name: 'a pressure without a side moves nobody',
    look: '11 tight end',
    first: pressure('p', [moving('inside-call', { kind: 'depth', depth: 2 })]),
    second: pressure('q', [moving('inside-call', { kind: 'depth', depth: 3 })]),
    sides: [tie, decided('right')],
    depths: ['M 3 the pressure has him 3 yards deep'],
  },
  {
    name: 'nobody of that name: nobody moves',
    look: '11 tight end',
    first: pressure('p', [moving('@X', { kind: 'depth', depth: 2 })]),
    depths: [],
  },
  {
    name: 'a man in the middle',
    look: '11 tight end',
    first: pressure('p', [moving('@N', { kind: 'depth', depth: 1.5 })]),
    depths: ['N 1.5 the pressure has him 1.5 yards deep'],
  },
];

describe('before the snap', () => {
  it.each(DEPTHS)('$name', ({ look: name, first, second, sides, depths }) => {
    const facts = factsOf(LOOKS[name]);
    const [one, two] = sides ?? [decided('right'), decided('right')];
    const aligned = align(ODD, ROLES, facts, look(LOOKS[name]).id);
    const moved = [
      ...resolvePressure(first, null, one, facts, aligned).tellings,
      ...(second === undefined ? [] : resolvePressure(second, null, two, facts, aligned).tellings),
    ].flatMap(([role, telling]) =>
      telling.kind === 'told' && telling.preSnap !== null ? [{ role, ...telling.preSnap }] : [],
    );
    expect(moved.map(({ role, depth, because }) => `${role} ${String(depth)} ${say(because)}`).sort()).toEqual(depths);
  });

  const heels = pressure('p', [twoCases]);
  const byHand: Front = {
    ...ODD,
    byHand: [{ look: look(LOOKS['11 tight end']).id, role: asRoleId('S'), x: 5, y: 3 }],
  };

  it.each([
    ['the rule puts him on the heels, the width stays', ODD, 'pressure', 4.333, 1.8],
    ['a spot set by hand stays', byHand, 'hand', 5, 3],
  ] as const)('%s', (_name, front, by, x, y) => {
    const { assignments } = analyse(setup({ look: LOOKS['11 tight end'], first: heels, front }));
    const man = assignments.find(({ aligned }) => aligned.role.id === 'S')?.aligned;
    expect(man?.x).toBeCloseTo(x, 3);
    expect([man?.by, man?.y]).toEqual([by, y]);
  });

  it('a man dragged across the ball changes who is meant', () => {
    // The left inside backer stands right of the other one: now he is the inside backer on the right.
    const crossed: Front = {
      ...ODD,
      byHand: [{ look: look(LOOKS['11 tight end']).id, role: asRoleId('W'), x: 3, y: 4 }],
    };
    const first = pressure('p', [tell('inside-call', 'path', 'rush A-call')]);
    const { assignments } = analyse(setup({ look: LOOKS['11 tight end'], first, front: crossed }));
    const rushers = assignments.filter(
      ({ combined }) => combined.first?.kind === 'told' && combined.first.basis === 'path',
    );
    expect(rushers.map(({ aligned }) => aligned.role.id)).toEqual(['W']);
  });
});

describe('a group no role is in', () => {
  it('is lost, not guessed', () => {
    const first = pressure('p', [
      { who: { kind: 'group', group: asGroupId('nickel'), side: 'call' }, cases: twoCases.cases },
    ]);
    const { first: resolved } = analyse(setup({ look: LOOKS['11 tight end'], first }));
    expect(resolved.lost.map(say)).toEqual(['nickel-call is not in this front']);
  });
});
