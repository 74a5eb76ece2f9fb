import { describe, expect, it } from 'vitest';
import {
  analyse,
  type Analysis,
  type Front,
  type Pressure,
  type SideStep,
  type Tell,
} from '../../../src/engine/index.ts';
import { frozen, gapText, LOOKS, mine, ODD, pressure, setup, tell, type ROLES } from '../book.ts';

/*
 * Two pressures run at once, against two receivers on each side; the call goes right, so c is right and a is left. What must
 * come out was worked out by hand before the engine was written: an explicit path before an explicit line movement before a
 * rule of consequence before the base job; two explicit jobs that differ are a conflict, and a lineman's always is. From
 * memory, reasoned from J. Bellace, 3-3 stack clinic, Glazier Clinics.
 */
const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];
const LEFT: readonly SideStep[] = [{ kind: 'fixed', side: 'left' }];

/**
 * Ends in B inside the tackles, who are the last of the line to rush and so keep the passer in when it is a pass; inside backers
 * in A, outside backers on the edge, the nose both A.
 */
const BASE: Readonly<Partial<Record<(typeof ROLES)[number]['letter'], Front['roles'][number]['base']>>> = {
  LE: { gaps: [mine('B')], style: 'one-gap', pass: 'contain' },
  RE: { gaps: [mine('B')], style: 'one-gap', pass: 'contain' },
  M: { gaps: [mine('A')], style: 'one-gap', pass: 'none' },
  W: { gaps: [mine('A')], style: 'one-gap', pass: 'none' },
};
const FRONT: Front = {
  ...ODD,
  roles: ODD.roles.map((entry) => ({ ...entry, base: BASE[entry.role] ?? entry.base })),
};

/** The outside backer off the edge: he is the last one outside, so he keeps the passer in. */
const edge: readonly Tell[] = [tell('outside-call', 'path', 'contain C-call')];
/** The inside backer of the call side through A, the nose opposite. */
const insideA: readonly Tell[] = [
  tell('inside-call', 'path', 'rush A-call'),
  tell('@N', 'consequence', 'rush A-away slant'),
];
/** The inside backer away through A, the nose opposite. */
const awayA: readonly Tell[] = [
  tell('inside-away', 'path', 'rush A-away'),
  tell('@N', 'consequence', 'rush A-call slant'),
];
/** The shell of a three-deep, three-under zone behind a pressure, told man by man. */
const threeUnder: readonly Tell[] = [
  tell('inside-away', 'path', 'drop hole may B-away cutback'),
  tell('outside-away', 'path', 'drop seam-away force'),
  tell('safety-call', 'path', 'drop seam-call force'),
  tell('safety-away', 'path', 'drop middle'),
  tell('corner-call', 'path', 'drop third-call'),
  tell('corner-away', 'path', 'drop third-away'),
];
/** The line of an edge pressure: the end long-sticks to A, the nose crosses, the other end steps out. */
const longStick: readonly Tell[] = [
  tell('end-call', 'movement', 'rush A-call slant spill'),
  tell('@N', 'movement', 'rush A-away slant spill'),
  tell('end-away', 'movement', 'contain C-away loop box'),
];
/** Outside backer off the edge, inside backer through B: "3-4 Zone Pressure to Attack the Run", Blitzology, 17 May 2016. */
const edgeAndB: readonly Tell[] = [
  tell('outside-call', 'path', 'contain C-call spill'),
  tell('inside-call', 'path', 'rush B-call spill'),
  ...longStick,
];
/** The two swap: "3-4 Zone Pressure to Attack the Pass", Blitzology, May 2016. */
const swapped: readonly Tell[] = [
  tell('outside-call', 'path', 'rush B-call spill'),
  tell('inside-call', 'path', 'contain C-call box'),
  ...longStick,
];
/** Inside backer through B, the end out, the nose to the call, the outside backer in coverage. */
const endOut: readonly Tell[] = [
  tell('inside-call', 'path', 'rush B-call spill'),
  tell('end-call', 'movement', 'contain C-call loop'),
  tell('@N', 'movement', 'rush A-call slant spill'),
  tell('outside-call', 'path', 'drop curl-flat-call'),
];
/** Two deep, four under behind the same rush: "Blitz of the Week #9", Blitzology, 24 May 2010. */
const twoDeep: readonly Tell[] = [
  tell('inside-away', 'path', 'drop hook-away may B-away cutback'),
  tell('outside-away', 'path', 'drop curl-flat-away force'),
  tell('safety-call', 'path', 'drop hook-call'),
  tell('safety-away', 'path', 'drop half-call'),
  tell('corner-call', 'path', 'drop flat-call force'),
  tell('corner-away', 'path', 'drop half-away'),
];
/** Safety through B, inside backer through A, ends out: "My Favorite Safety Blitz", Compete In All Things, 7 Nov 2011. */
const safetyB: readonly Tell[] = [
  tell('end-call', 'movement', 'contain C-call slant box'),
  tell('@N', 'movement', 'rush A-away slant spill'),
  tell('end-away', 'movement', 'contain C-away slant box'),
  tell('inside-call', 'path', 'rush A-call spill'),
  tell('safety-call', 'path', 'rush B-call spill'),
];
/** Its published tag: the two swap gaps. */
const safetyA: readonly Tell[] = [
  ...safetyB.slice(0, 3),
  tell('inside-call', 'path', 'rush B-call spill'),
  tell('safety-call', 'path', 'rush A-call spill'),
];

const call = (tells: readonly Tell[]): Pressure => pressure('right', tells, RIGHT);
const away = (tells: readonly Tell[]): Pressure => pressure('left', tells, LEFT);

const run = (first: Pressure, second: Pressure): Analysis =>
  analyse(frozen(setup({ look: LOOKS['10 doubles'], front: FRONT, first, second })));

interface Row {
  readonly name: string;
  readonly first: Pressure;
  readonly second: Pressure;
  /** Linemen whom both tell something. */
  readonly line: string;
  /** Linebackers and backs whom both tell something. */
  readonly others: string;
  /** Findings about men told two things, in order. */
  readonly findings: string;
}

/* M and S are the inside and the outside backer of the call side, W and J of the other; SS and RC the backs there. */
const ROWS: readonly Row[] = [
  {
    name: 'outside edge + inside A: nobody is told two things by the rush',
    first: call(edge),
    second: call(insideA),
    line: '',
    others: 'M:yields',
    findings: '',
  },
  {
    name: 'both inside backers through A: the nose has no free A',
    first: call(insideA),
    second: call(awayA),
    line: 'N:conflict',
    others: 'W:yields',
    findings: 'line.two-jobs N',
  },
  {
    name: 'edge and B with the end in + B with the end out: the end is told two things, and so is the nose',
    first: call(edgeAndB),
    second: call(endOut),
    line: 'N:conflict RE:conflict',
    others: 'M:same S:conflict',
    findings: 'line.two-jobs N, line.two-jobs RE, player.two-jobs S',
  },
  {
    name: 'a pressure and its own mirror, every job told: nobody agrees but the corners',
    first: call([...edgeAndB, ...threeUnder]),
    second: away([...edgeAndB, ...threeUnder]),
    line: 'LE:conflict N:conflict RE:conflict',
    others: 'J:conflict W:conflict M:conflict S:conflict LC:same FS:conflict SS:conflict RC:same',
    findings:
      'line.two-jobs LE, line.two-jobs N, line.two-jobs RE, player.two-jobs J, player.two-jobs W, player.two-jobs M, player.two-jobs S, player.two-jobs FS, player.two-jobs SS',
  },
  {
    name: 'a pressure and its own mirror, the shell of the first behind both: whoever covers gives way',
    first: call(edgeAndB),
    second: away(edgeAndB),
    line: 'LE:conflict N:conflict RE:conflict',
    others: 'J:yields W:yields',
    findings: 'line.two-jobs LE, line.two-jobs N, line.two-jobs RE',
  },
  {
    name: 'a safety and an inside backer swap gaps: two rows, no lineman',
    first: call(safetyB),
    second: call(safetyA),
    line: 'LE:same N:same RE:same',
    others: 'M:conflict SS:conflict',
    findings: 'player.two-jobs M, player.two-jobs SS',
  },
  {
    name: 'the same rush with another shell: the line hears one thing',
    first: call([...edgeAndB, ...threeUnder]),
    second: call([...edgeAndB, ...twoDeep]),
    line: 'LE:same N:same RE:same',
    others: 'J:conflict W:conflict M:same S:same LC:conflict FS:conflict SS:conflict RC:conflict',
    findings:
      'player.two-jobs J, player.two-jobs W, player.two-jobs LC, player.two-jobs FS, player.two-jobs SS, player.two-jobs RC',
  },
  {
    name: 'outside and inside backer swap edge and B: the line hears one thing',
    first: call(edgeAndB),
    second: call(swapped),
    line: 'LE:same N:same RE:same',
    others: 'M:conflict S:conflict',
    findings: 'player.two-jobs M, player.two-jobs S',
  },
  {
    name: 'the nose slants to the same A by movement and by consequence: told once',
    first: call(longStick),
    second: call([tell('@N', 'consequence', 'rush A-away slant spill')]),
    line: 'N:same',
    others: '',
    findings: '',
  },
  {
    name: 'by consequence another A than by movement: a lineman never yields in silence',
    first: call(longStick),
    second: call(awayA),
    line: 'N:conflict',
    others: 'W:yields',
    findings: 'line.two-jobs N',
  },
  {
    name: 'the same A, once penetrating and once slanting: two manners',
    first: call([tell('@N', 'movement', 'rush A-away spill')]),
    second: call(longStick),
    line: 'N:two-manners',
    others: '',
    findings: 'line.two-manners N',
  },
];

const told = (analysis: Analysis, onTheLine: boolean): string =>
  analysis.assignments
    .filter(
      ({ combined: { role, first, second } }) =>
        (role.room === 'line') === onTheLine && first !== null && second !== null,
    )
    .map(({ combined }) => `${combined.role.letter}:${combined.status}`)
    .join(' ');

describe('two pressures run at once', () => {
  it.each(ROWS)('$name', ({ first, second, line, others, findings }) => {
    const analysis = run(first, second);
    expect(told(analysis, true)).toBe(line);
    expect(told(analysis, false)).toBe(others);
    const two = analysis.findings.filter(({ rule }) => rule.includes('.two-'));
    expect(two.map(({ rule, who }) => `${rule} ${who.join('+')}`).join(', ')).toBe(findings);
  });

  it.each(ROWS)('the other way round, the same men disagree: $name', ({ first, second }) => {
    const flagged = (analysis: Analysis): readonly string[] =>
      analysis.findings
        .filter(({ rule }) => rule.includes('.two-'))
        .map(({ rule, who }) => `${rule} ${who.join('+')}`)
        .sort();
    expect(flagged(run(second, first))).toEqual(flagged(run(first, second)));
  });
});

/** Who ends up with which gap in the first row above: a sound call, six gaps and six owners. */
const SOUND: readonly (readonly [gap: string, owner: string])[] = [
  ['C-left', 'J'],
  ['B-left', 'LE'],
  ['A-left', 'N'],
  ['A-right', 'M'],
  ['B-right', 'RE'],
  ['C-right', 'S'],
];

describe('outside edge + inside A', () => {
  const analysis = run(call(edge), call(insideA));

  it('has one row for every gap', () => {
    expect(analysis.gaps.map(({ gap }) => gapText(gap))).toEqual(SOUND.map(([gap]) => gap));
  });

  it.each(SOUND)('%s: %s', (gap, owner) => {
    const owners = analysis.gaps.find((each) => gapText(each.gap) === gap)?.owners.map(({ role }) => role);
    expect(owners).toEqual([owner]);
  });

  it('is sound', () => {
    expect(analysis.findings).toEqual([]);
    expect(analysis.verdict).toBe('clean');
  });
});
