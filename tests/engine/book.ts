import {
  asCoverageId,
  asFrontId,
  asGroupId,
  asPressureId,
  asRoleId,
  parseLook,
  parseRuleJob,
  printJob,
  readLook,
  type AlignRule,
  type Because,
  type Coverage,
  type Datum,
  type Front,
  type FrontRole,
  type Gap,
  type GapRef,
  type KnownProtection,
  type KnownRun,
  type Look,
  type LookFacts,
  type LookTest,
  type Motion,
  type Place,
  type PreSnap,
  type Pressure,
  type Role,
  type Room,
  type RuleJob,
  type RuleLevel,
  type Setup,
  type SideStep,
  type Spot,
  type Tell,
  type ToldBasis,
  type Turn,
  type Who,
  type ZoneNeed,
} from '../../src/engine/index.ts';

/**
 * The small book the engine's tests read from: an odd front of eleven, written in the notation, so that a test is a table of
 * football. Letters are the trade's: N nose, LE/RE ends, S and J outside backers, M and W inside backers, SS/FS safeties,
 * LC/RC corners.
 */

/** Unwraps a notation; a mistake in a test's own text fails that test with the text's problem. */
export function read<Value>(
  result: { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problem: unknown },
): Value {
  if (result.ok) return result.value;
  throw new Error(JSON.stringify(result.problem));
}

export const look = (text: string): Look => read(parseLook(text));
export const ruleJob = (text: string): RuleJob => read(parseRuleJob(text));

/** `end-call` or `@N`. */
export function who(text: string): Who {
  if (text.startsWith('@')) return { kind: 'role', role: asRoleId(text.slice(1)) };
  const [group = '', side] = text.split('-');
  return { kind: 'group', group: asGroupId(group), side: side === 'away' ? 'away' : 'call' };
}

const steps = (...list: readonly SideStep[]): Role['side'] => ({ kind: 'steps', steps: list });
const toStrength: Role['side'] = steps(
  { kind: 'strength', by: 'tight-end', toward: 'to' },
  { kind: 'strength', by: 'receivers', toward: 'to' },
  { kind: 'strength', by: 'field', toward: 'to' },
  { kind: 'fixed', side: 'right' },
);
const withRole = (role: string, toward: 'to' | 'away'): Role['side'] =>
  steps({ kind: 'role', role: asRoleId(role), toward });
const fixed = (side: 'left' | 'right'): Role['side'] => steps({ kind: 'fixed', side });

function role(letter: string, name: string, room: Room, group: string, side: Role['side']): Role {
  return { id: asRoleId(letter), letter, name, room, group: asGroupId(group), side };
}

export const ROLES: readonly Role[] = [
  role('N', 'Nose', 'line', 'nose', { kind: 'middle' }),
  role('LE', 'Left end', 'line', 'end', fixed('left')),
  role('RE', 'Right end', 'line', 'end', fixed('right')),
  role('S', 'Strong outside backer', 'linebackers', 'outside', toStrength),
  role('J', 'Weak outside backer', 'linebackers', 'outside', withRole('S', 'away')),
  role('M', 'Strong inside backer', 'linebackers', 'inside', withRole('S', 'to')),
  role('W', 'Weak inside backer', 'linebackers', 'inside', withRole('S', 'away')),
  role('SS', 'Strong safety', 'secondary', 'safety', withRole('S', 'to')),
  role('FS', 'Free safety', 'secondary', 'safety', withRole('S', 'away')),
  role('LC', 'Left corner', 'secondary', 'corner', fixed('left')),
  role('RC', 'Right corner', 'secondary', 'corner', fixed('right')),
];

const bodies = (side: 'mine' | 'other', compare: 'at-least' | 'at-most', count: number): LookTest => ({
  kind: 'bodies',
  side,
  compare,
  count,
});
const at = (spot: Spot, ...when: readonly LookTest[]): AlignRule => ({ when, spot });
const technique = (
  on: 'snapper' | 'guard' | 'tackle' | 'end' | 'last',
  leverage: 'head' | 'outside-foot' | 'inside-foot',
  depth: number,
): Spot => ({ kind: 'technique', on, leverage, depth });
export const mine = (letter: 'A' | 'B' | 'C' | 'D' | 'edge'): GapRef =>
  letter === 'edge' ? { kind: 'edge', side: 'mine' } : { kind: 'letter', side: 'mine', letter };
const letter = (side: 'left' | 'right', gap: 'A'): GapRef => ({ kind: 'letter', side, letter: gap });

function inFront(name: string, rules: readonly AlignRule[], base: FrontRole['base']): FrontRole {
  return { role: asRoleId(name), rules, base };
}
const end = (name: string): FrontRole =>
  inFront(name, [at(technique('tackle', 'outside-foot', 0.8))], {
    gaps: [mine('C'), mine('B')],
    style: 'one-gap',
    pass: 'contain',
  });
const outside = (name: string): FrontRole =>
  inFront(
    name,
    [
      at(technique('last', 'outside-foot', 0.8), bodies('mine', 'at-least', 3)),
      at({ kind: 'apex', number: 2, depth: 4.5 }),
      at({ kind: 'edge', offset: 1.5, depth: 1 }),
    ],
    { gaps: [mine('edge'), mine('C')], style: 'one-gap', pass: 'none' },
  );
const inside = (name: string): FrontRole =>
  inFront(name, [at(technique('guard', 'outside-foot', 4.5))], {
    gaps: [mine('B'), mine('A')],
    style: 'one-gap',
    pass: 'none',
  });
const safety = (name: string): FrontRole =>
  inFront(name, [at({ kind: 'ball', offset: 6, depth: 11 })], {
    gaps: [mine('edge')],
    style: 'one-gap',
    pass: 'none',
  });
const corner = (name: string): FrontRole =>
  inFront(
    name,
    [at({ kind: 'receiver', number: 1, leverage: 'outside', depth: 7 }), at({ kind: 'ball', offset: 8, depth: 7 })],
    { gaps: [], style: 'one-gap', pass: 'none' },
  );

/** Five-technique ends who keep the passer in, a two-gap nose over the snapper, outside backers on the tight end or in the alley. */
export const ODD: Front = {
  id: asFrontId('odd'),
  name: 'Odd',
  roles: [
    inFront('N', [at(technique('snapper', 'head', 0.8))], {
      gaps: [letter('left', 'A'), letter('right', 'A')],
      style: 'two-gap',
      pass: 'rush',
    }),
    end('LE'),
    end('RE'),
    outside('S'),
    outside('J'),
    inside('M'),
    inside('W'),
    safety('SS'),
    safety('FS'),
    corner('LC'),
    corner('RC'),
  ],
  byHand: [],
};

/** A telling in one line: who, on what basis, his job; cases with conditions go through `Tell` itself. */
export function tell(name: string, basis: ToldBasis, job: string, preSnap: PreSnap | null = null): Tell {
  return { who: who(name), cases: [{ when: [], basis, job: ruleJob(job), preSnap }] };
}

/** A shell of the test's own: `['safety-call', 'drop middle']` a man. */
export function shell(
  name: string,
  tells: readonly (readonly [who: string, job: string])[],
  needs: readonly ZoneNeed[] = [],
): Coverage {
  return {
    id: asCoverageId(name.toLowerCase().replaceAll(' ', '-')),
    name,
    needs,
    tells: tells.map(([each, job]) => ({ who: who(each), cases: [{ when: [], job: ruleJob(job) }] })),
  };
}

/** A zone a shell cannot do without, `seam-call` or `middle`, with the men who may take it, the most natural first. */
export function need(zone: string, ...takers: readonly string[]): ZoneNeed {
  const job = ruleJob(`drop ${zone}`);
  if (job.kind !== 'drop') throw new Error(`${zone} is no zone`);
  return { when: [], zone: job.zone, side: job.side, takers: takers.map(who) };
}

/**
 * Three deep, three under, rolling to the call: the call-side safety down to force, the other one to the middle. It cannot
 * do without its thirds, its seams and one hook; a second inside backer who stays drops to the other hook.
 */
export const THREE_DEEP: Coverage = shell(
  'Three deep',
  [
    ['safety-call', 'drop seam-call may edge-call force'],
    ['safety-away', 'drop middle'],
    ['corner-call', 'drop third-call'],
    ['corner-away', 'drop third-away'],
    ['inside-away', 'drop hook-away may A-away+B-away cutback'],
    ['inside-call', 'drop hook-call may A-call+B-call'],
    ['outside-away', 'drop seam-away may edge-away force'],
    ['outside-call', 'drop curl-flat-call may edge-call'],
  ],
  [
    need('third-call', 'corner-call', 'safety-call'),
    need('third-away', 'corner-away'),
    need('middle', 'safety-away', 'safety-call'),
    need('seam-call', 'safety-call', 'outside-call'),
    need('seam-away', 'outside-away', 'inside-away'),
    need('hook-call', 'inside-call', 'inside-away'),
  ],
);

export const TO_TIGHT_END: readonly SideStep[] = [
  { kind: 'strength', by: 'tight-end', toward: 'to' },
  { kind: 'strength', by: 'receivers', toward: 'to' },
  { kind: 'strength', by: 'back', toward: 'to' },
  { kind: 'strength', by: 'field', toward: 'to' },
];

export function pressure(name: string, tells: readonly Tell[], callSide: readonly SideStep[] = TO_TIGHT_END): Pressure {
  return {
    id: asPressureId(name),
    name,
    tags: [],
    callSide,
    tells,
    coverage: THREE_DEEP.id,
    rushers: null,
    notAgainst: [],
    installDay: null,
  };
}

/** What a test says of a setup; the rest is usual. The look is its line of notation, with what happens in it beside. */
export type SetupParts = Partial<Omit<Setup, 'look'>> & {
  readonly look: string;
  readonly motion?: Motion;
  readonly runs?: readonly KnownRun[];
  readonly protections?: readonly KnownProtection[];
  readonly first: Pressure;
  readonly turn?: Turn;
  readonly spot?: Place;
};

/** A setup with everything usual unless said otherwise. */
export function setup({ look: text, motion, runs = [], protections = [], ...parts }: SetupParts): Setup {
  return {
    level: 'high-school',
    spot: 'middle',
    roles: ROLES,
    front: ODD,
    second: null,
    turn: 'own',
    combination: { kind: 'together' },
    coverage: THREE_DEEP,
    secondCoverage: null,
    waivers: [],
    dictionary: [],
    checkOut: null,
    rushers: null,
    ...parts,
    look: { ...look(text), motion: motion ?? null, runs, protections },
  };
}

/** Every kind of look once, tight end strength to the defence's right where there is one. */
export const LOOKS = {
  '10 doubles': 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@1.5,-5',
  '10 trips': 'line wr:X@-18 wr:H@6,-1.5 wr:Y@12,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@-1.5,-5',
  '11 tight end': 'line te:Y@4 wr:X@-18 wr:H@-9,-1.5 wr:Z@16,-1.5 qb:Q@0,-5 rb:T@-1.5,-5',
  '12 wing': 'line te:Y@4 te:U@5.3,-1.5 wr:X@-18 wr:Z@-14,-1.5 qb:Q@0,-1.3 rb:T@0,-7',
  '20 split backs': 'line wr:X@-18 wr:H@9,-1.5 wr:Z@18 qb:Q@0,-5 rb:F@-1.5,-5 rb:T@1.5,-5',
  '21 pro I': 'line te:Y@4 wr:X@-17 wr:Z@16,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:T@0,-7',
  '22 double tight I': 'line te:Y@4 te:U@-4 wr:Z@14,-1.5 qb:Q@0,-1.3 rb:F@0,-4.5 rb:T@0,-7',
} as const;

/** A look read at one ball spot. */
export const factsOf = (text: string, spot: Place = 'middle', level: RuleLevel = 'high-school'): LookFacts =>
  readLook(look(text), level, spot);

/** The same value, frozen to the last leaf: whoever tries to change it fails the test. */
export function frozen<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach((part: unknown) => frozen(part));
  }
  return value;
}

/** `A-left` for a gap, as in the notation. */
export const gapText = (gap: Gap): string => `${gap.letter}-${gap.side}`;

function datumText(datum: Datum): string {
  switch (datum.kind) {
    case 'role':
      return datum.role;
    case 'roles':
      return datum.roles.join('+');
    case 'gap':
      return gapText(datum.gap);
    case 'gaps':
      return datum.gaps.map(gapText).join('+');
    case 'letter':
      return datum.letter;
    case 'side':
      return datum.side;
    case 'player':
      return datum.player;
    case 'players':
      return datum.players.join('+');
    case 'job':
      return printJob(datum.job);
    case 'zone':
      return datum.side === 'middle' ? datum.zone : `${datum.zone}-${datum.side}`;
    case 'who':
      return datum.who.kind === 'role' ? `@${datum.who.role}` : `${datum.who.group}-${datum.who.side}`;
    case 'pressure':
      return datum.which;
    case 'number':
      return String(datum.value);
    case 'word':
      return datum.word;
  }
}

/** A sentence of the engine with its blanks filled by bare ids and notation: what a table compares. */
export function say(because: Because): string {
  return because.template.replace(/\{(\w+)\}/g, (blank, name: string) => {
    const datum = because.data[name];
    return datum === undefined ? blank : datumText(datum);
  });
}

/** A sentence with all sentences it follows from, the conclusion first. */
export function sayAll(because: Because): readonly string[] {
  return [say(because), ...because.because.flatMap(sayAll)];
}
