import { describe, expect, it } from 'vitest';
import {
  analyse,
  type Analysis,
  type Assignment,
  type Coverage,
  type Pressure,
  type SideStep,
  type Turn,
} from '../../src/engine/index.ts';
import { frozen, gapText, LOOKS, ODD, pressure, tell, setup, THREE_DEEP } from './book.ts';

/*
 * Whole calls as counts: almost any mistake changes one of them. The call goes right. Men: RE, N, LE the line; S and M the
 * outside and inside backer of the call side, J and W those of the other; SS, FS, RC, LC the backs.
 */
type Told = readonly (readonly [who: string, job: string])[];

interface Row {
  readonly name: string;
  readonly look: keyof typeof LOOKS;
  readonly first: Told;
  readonly second?: Told;
  readonly turn?: Turn;
  /** Without one nobody is told more than the rush tells him. */
  readonly shell?: Coverage;
  /**
   * Run gaps; men who rush; men in a zone; men on a man; gaps somebody is surely sent to; findings by severity; ways to give
   * every gap that nobody is sent to a man of its own (0: no way, a gap stays open).
   */
  readonly counts: readonly [
    gaps: number,
    rush: number,
    zone: number,
    man: number,
    sent: number,
    stop: number,
    check: number,
    note: number,
    legal: number,
  ];
}

const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];
const NOTHING: Coverage = { ...THREE_DEEP, needs: [], tells: [] };

/** Outside backer through B, end out to C, nose to the call; and inside backer through A, nose away (common practice). */
const THROUGH_B: Told = [
  ['outside-call', 'rush B-call inside-hip:end-call spill'],
  ['end-call', 'contain C-call loop box'],
  ['@N', 'rush A-call slant'],
];
const THROUGH_A: Told = [
  ['inside-call', 'rush A-call'],
  ['@N', 'rush A-away slant'],
];

/** "3-4 Zone Pressure to Attack the Run", Blitzology, 17 May 2016: edge and B, the end long-sticks, three under, three deep. */
const EDGE_AND_B: Told = [
  ['end-call', 'rush A-call slant spill'],
  ['@N', 'rush A-away slant spill'],
  ['end-away', 'contain C-away loop box'],
  ['outside-call', 'contain C-call spill'],
  ['inside-call', 'rush B-call spill'],
  ['inside-away', 'drop hole own B-away cutback'],
  ['outside-away', 'drop seam-away force'],
  ['safety-call', 'drop seam-call force'],
  ['safety-away', 'drop middle'],
  ['corner-call', 'drop third-call'],
  ['corner-away', 'drop third-away'],
];
/** The same with some men told something else. */
const but = (usual: Told, ...changes: Told): Told =>
  usual.map(([who, job]) => changes.find(([name]) => name === who) ?? [who, job]);

/** The same source against trips to the call: the inside backers bump and swap jobs, the away outside backer fits B. */
const BUMPED: Told = but(
  EDGE_AND_B,
  ['outside-call', 'rush B-call spill'],
  ['inside-call', 'drop hook-call'],
  ['inside-away', 'contain C-call box'],
  ['outside-away', 'drop seam-away own B-away cutback'],
);
/** The same source, run first, against the I: the outside backer crashes flat, the inside backer scrapes to contain. */
const CRASH: Told = but(
  EDGE_AND_B,
  ['outside-call', 'rush B-call spill'],
  ['inside-call', 'contain C-call box'],
  ['safety-call', 'drop seam-call own D-call force'],
);
/** "Building a Better [Zone] Blitz", MatchQuarters (gap map from memory): both inside backers cross in the A gaps. */
const CROSS: Told = [
  ['end-call', 'contain B-call spill'],
  ['@N', 'rush B-away loop spill'],
  ['end-away', 'contain C-away loop box'],
  ['outside-call', 'drop seam-call own C-call force'],
  ['inside-call', 'rush A-away spill'],
  ['inside-away', 'rush A-call spill'],
  ['outside-away', 'drop seam-away force'],
  ['safety-call', 'drop hole cutback'],
  ['safety-away', 'drop middle'],
  ['corner-call', 'drop third-call'],
  ['corner-away', 'drop third-away'],
];
/** "My Favorite Safety Blitz", Compete In All Things, 7 Nov 2011: safety B, inside backer A, ends out. */
const SAFETY_B: Told = [
  ['end-call', 'contain C-call slant box'],
  ['@N', 'rush A-away slant spill'],
  ['end-away', 'contain C-away slant box'],
  ['outside-call', 'drop seam-call own D-call force'],
  ['inside-call', 'rush A-call spill'],
  ['inside-away', 'drop hole own B-away cutback'],
  ['outside-away', 'drop seam-away force'],
  ['safety-call', 'rush B-call spill'],
  ['safety-away', 'drop middle'],
  ['corner-call', 'drop third-call'],
  ['corner-away', 'drop third-away'],
];
/** "3 Match Coverage Variation", Blitzology, 16 Jun 2019 (gap map from memory): four rush, one inside backer among them. */
const FOUR_RUSH: Told = [
  ['end-call', 'contain C-call loop box'],
  ['@N', 'rush A-call slant spill'],
  ['end-away', 'contain B-away spill'],
  ['outside-call', 'drop curl-flat-call force'],
  ['inside-call', 'rush B-call spill'],
  ['inside-away', 'drop hook-away own A-away cutback'],
  ['outside-away', 'drop curl-flat-away own C-away force'],
  ['safety-call', 'drop hook-call'],
  ['safety-away', 'drop middle'],
  ['corner-call', 'drop third-call'],
  ['corner-away', 'drop third-away'],
];
/** "Quarters Coverage Zone Pressure", Blitzology, 22 Dec 2016: both edges rush, both ends hit the tackle and drop. */
const ENDS_DROP: Told = [
  ['end-call', 'drop hook-call own B-call'],
  ['@N', 'rush A-away spill'],
  ['end-away', 'drop hook-away own B-away'],
  ['outside-call', 'contain C-call box'],
  ['inside-call', 'rush A-call spill'],
  ['inside-away', 'drop hole cutback'],
  ['outside-away', 'contain C-away box'],
  ['safety-call', 'drop quarter-call force'],
  ['safety-away', 'drop quarter-away force'],
  ['corner-call', 'drop quarter-call'],
  ['corner-away', 'drop quarter-away'],
];
/** "Breaking Half Slide Protection", Blitzology, 3 May 2019 (gap map from memory): three twist inside, five in man, one free. */
const MAN_FREE: Told = [
  ['end-call', 'contain C-call box'],
  ['@N', 'rush B-away loop spill'],
  ['end-away', 'contain C-away box'],
  ['outside-call', 'man #2-call force'],
  ['inside-call', 'rush A-away spill'],
  ['inside-away', 'rush A-call spill'],
  ['outside-away', 'man #2-away force'],
  ['safety-call', 'man back own B-call cutback'],
  ['safety-away', 'drop middle'],
  ['corner-call', 'man #1-call'],
  ['corner-away', 'man #1-away'],
];
/** "Short Yardage Run Blitz", Blitzology, 29 Apr 2019 (some fits from memory): six rush, five in man, nobody free. */
const NOBODY_FREE: Told = [
  ['end-call', 'rush A-call slant spill'],
  ['@N', 'rush A-away slant spill'],
  ['end-away', 'rush B-away spill'],
  ['outside-call', 'rush B-call spill'],
  ['inside-call', 'man back own C-call cutback'],
  ['outside-away', 'contain C-away box'],
  ['safety-call', 'contain D-call box'],
  ['inside-away', 'man #2-call'],
  ['safety-away', 'man #2-away'],
  ['corner-call', 'man #1-call'],
  ['corner-away', 'man #1-away'],
];
/** "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O Labs, 27 Feb 2022 (rush map from memory): every gap rushed. */
const SIX_RUSH: Told = [
  ['end-call', 'rush B-call slant spill'],
  ['@N', 'rush A-call slant spill'],
  ['end-away', 'rush B-away slant spill'],
  ['outside-call', 'contain C-call box'],
  ['inside-call', 'rush A-away spill'],
  ['inside-away', 'drop hot-away force'],
  ['outside-away', 'contain C-away box'],
  ['safety-call', 'drop hot-call force'],
  ['safety-away', 'drop middle'],
  ['corner-call', 'drop third-call'],
  ['corner-away', 'drop third-away'],
];

const ROWS: readonly Row[] = [
  // The front at base, three linemen rush (both ends contain, each side has its force), the shell takes the other eight.
  // Legal: right C is RE's (then B is M's and A is N's: 1), or SS's or S's (then B is RE's and A is N's or M's, or B is M's and A
  // is N's: 3 each): 7. Left the same with J alone for SS and S: 1 + 3 = 4. N has one A on each side, so 7 x 4.
  { name: 'nothing called', look: '10 doubles', first: [], shell: THREE_DEEP, counts: [6, 3, 8, 0, 0, 0, 0, 0, 28] },
  // Nobody told anything at all: three rush, the rest of the front keeps its base gaps and has no pass job. Stop: nobody has any
  // of the five receivers. Checks: on each side the end contains in the edge gap and nobody is told force. Note: no deep middle.
  // Legal: on each side C is the end's (1), the outside backer's (3) or the safety's (3): 7 x 7.
  { name: 'nothing called, no shell', look: '10 doubles', first: [], counts: [6, 3, 0, 0, 0, 1, 2, 1, 49] },
  // One more gap, D; the safety who comes down may fit the edge. Legal: only RE is left for right C, so M has B and N has A; D is
  // SS's or S's: 2. Left as without a tight end: 4.
  {
    name: 'nothing called, tight end',
    look: '11 tight end',
    first: [],
    shell: THREE_DEEP,
    counts: [7, 3, 8, 0, 0, 0, 0, 0, 8],
  },
  // Three told and the other end: four rush. Three gaps sent to; W, LE and J take the three away from the call. Legal: left A is W's
  // for nobody else may, so B is LE's and C is J's: 1.
  { name: 'through B', look: '10 doubles', first: THROUGH_B, shell: THREE_DEEP, counts: [6, 4, 7, 0, 3, 0, 0, 0, 1] },
  // D is left to the safety who forces there; the left as before: one way.
  {
    name: 'through B, tight end',
    look: '11 tight end',
    first: THROUGH_B,
    shell: THREE_DEEP,
    counts: [7, 4, 7, 0, 3, 0, 0, 0, 1],
  },
  // A wing makes D and E on the call side; the safety has the edge, E; nobody may fit D (stop), so there is no legal way.
  {
    name: 'through B, wing',
    look: '12 wing',
    first: THROUGH_B,
    shell: THREE_DEEP,
    counts: [8, 4, 7, 0, 3, 1, 0, 0, 0],
  },
  // M and the nose told, both ends rush at base: four. Only the two A are sent to; everybody else slides by base or shell. Legal: right
  // B is RE's, so C is SS's or S's: 2. Left B is LE's (C is J's) or W's (C is LE's or J's): 3. Together 6.
  { name: 'through A', look: '10 doubles', first: THROUGH_A, shell: THREE_DEEP, counts: [6, 4, 7, 0, 2, 0, 0, 0, 6] },
  // The left inside backer rushes too: five rush, six cover. The nose hears the right A twice: four gaps sent to. Legal: left B is LE's
  // for nobody else may, so C is J's.
  {
    name: 'through B and, opposite, through A',
    look: '10 doubles',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'opposite',
    shell: THREE_DEEP,
    counts: [6, 5, 6, 0, 4, 0, 0, 0, 1],
  },
  // The nose hears right A and left A: one stop. The right A is M's for sure, B and C as before: three sent to. Legal, the nose
  // counted in left A: left B is LE's (C is J's) or W's (C is LE's or J's): 3.
  {
    name: 'through B and, on the same side, through A',
    look: '10 doubles',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'same',
    shell: THREE_DEEP,
    counts: [6, 5, 6, 0, 3, 1, 0, 0, 3],
  },
  // The same conflict, and D without a man on a wing's side: two stops, no legal way.
  {
    name: 'the same against a wing',
    look: '12 wing',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'same',
    shell: THREE_DEEP,
    counts: [8, 5, 6, 0, 3, 2, 0, 0, 0],
  },
  // Tight ends on both sides, eight gaps: four sent to; SS and J fit the two D; LE has left C and B, so left B stays open.
  {
    name: 'opposite against two tight ends',
    look: '22 double tight I',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'opposite',
    shell: THREE_DEEP,
    counts: [8, 5, 6, 0, 4, 1, 0, 0, 0],
  },
  // Published: five rush, three under, three deep; six gaps, six owners, told: one legal way. The end long-sticks from C to A, two gaps:
  // a check, for that is hard from outside the tackle ("Align to Win Part 3", Blitzology, 28 Apr 2019).
  { name: 'edge and B', look: '10 doubles', first: EDGE_AND_B, counts: [6, 5, 6, 0, 6, 0, 1, 0, 1] },
  // The tight end adds D and nobody is told to take it: a stop. The long stick: a check.
  {
    name: 'edge and B, tight end, unchanged',
    look: '11 tight end',
    first: EDGE_AND_B,
    counts: [7, 5, 6, 0, 6, 1, 1, 0, 0],
  },
  // The mend: the safety who forces there may fit it. He is not sent, so still six gaps sent to. The long stick stays a check.
  {
    name: 'edge and B, tight end, the safety fits D',
    look: '11 tight end',
    first: but(EDGE_AND_B, ['safety-call', 'drop seam-call may D-call force']),
    counts: [7, 5, 6, 0, 6, 0, 1, 0, 1],
  },
  // The away end slants in to B: C is open there (stop), it is his place in the front and nobody replaces him (stop), and nobody contains
  // on that side any more (stop). He and the backer are both sent to B (check); the long stick (check).
  {
    name: 'edge and B, the away end slants in',
    look: '10 doubles',
    first: but(EDGE_AND_B, ['end-away', 'rush B-away slant']),
    counts: [6, 5, 6, 0, 5, 3, 2, 0, 0],
  },
  // The call-side end stays in B: A is open there (stop), a gap the nose leaves and nobody takes for him (stop). He and the rushing
  // backer are both in B (check), so as a rush they share a lane with none beside it in A (check). No long stick.
  {
    name: 'edge and B, the end stays',
    look: '10 doubles',
    first: but(EDGE_AND_B, ['end-call', 'rush B-call']),
    counts: [6, 5, 6, 0, 5, 2, 2, 0, 0],
  },
  // Bumped against trips: S, RE, N, LE and W rush; M, J, SS, FS and the corners drop; six gaps, six owners, told. Checks: the long
  // stick; W comes from the other side round to C while S comes in to B through the same place, and neither is told to wait; LE
  // loops out to C where J, close outside him for want of a second receiver there, still reads before he drops.
  { name: 'edge and B, bumped against trips', look: '10 trips', first: BUMPED, counts: [6, 5, 6, 0, 6, 0, 3, 0, 1] },
  // The I with a tight end: seven standing gaps, the safety has D; all told. Checks: the long stick; LE loops out into J as above, for
  // X is alone on that side.
  { name: 'edge and B, run first', look: '21 pro I', first: CRASH, counts: [7, 5, 6, 0, 7, 0, 2, 0, 1] },
  // S still has C, M and W cross in A, the nose loops to B, each end one gap: six of six. M and W start alike and cross over the ball
  // at one time; the page tells who goes first, this row does not: a check.
  { name: 'inside backers cross', look: '10 doubles', first: CROSS, counts: [6, 5, 6, 0, 6, 0, 1, 0, 1] },
  // Seven gaps: RE, N, LE, M and SS rush five of them, S owns D and W the away B. SS starts 11 yards deep: more than 10 to run, a check.
  { name: 'safety through B', look: '11 tight end', first: SAFETY_B, counts: [7, 5, 6, 0, 7, 0, 1, 0, 1] },
  // Four rush, four under, three deep; every gap told.
  { name: 'four rush', look: '10 doubles', first: FOUR_RUSH, counts: [6, 4, 7, 0, 6, 0, 0, 0, 1] },
  // Both ends own B and drop, so only N, M and the two edges rush; three under, four deep.
  { name: 'both ends drop', look: '10 doubles', first: ENDS_DROP, counts: [6, 4, 7, 0, 6, 0, 0, 0, 1] },
  // Five rush, five in man, one free in the middle. M and W cross as above: a check.
  { name: 'man free', look: '10 doubles', first: MAN_FREE, counts: [6, 5, 1, 5, 6, 0, 1, 0, 1] },
  // The safety who had the back and B is free in the middle as well: B is open (stop), so RE boxes beside an open gap (stop), and nobody
  // has the back (stop). The crossing: a check.
  {
    name: 'man free, nobody on the back',
    look: '10 doubles',
    first: but(MAN_FREE, ['safety-call', 'drop middle']),
    counts: [6, 5, 2, 4, 5, 3, 1, 0, 0],
  },
  // Against trips there is no second receiver away: J's rule points at nobody (stop); he keeps his base, the edge, but C is LE's. The man
  // for the third receiver to the call is that J: nobody has H (stop). The crossing: a check.
  { name: 'man free against trips', look: '10 trips', first: MAN_FREE, counts: [6, 5, 1, 4, 6, 2, 1, 0, 1] },
  // Six rush, five in man: every one of the seven gaps is somebody's. Checks: the long stick; SS contains from 11 yards. Note: nobody
  // in the deep middle, as it is meant.
  { name: 'nobody free', look: '11 tight end', first: NOBODY_FREE, counts: [7, 6, 0, 5, 7, 0, 2, 1, 1] },
  // Without a tight end there is no D: the safety's rule points at no gap (stop) and he has no pass job; six gaps full. He was force
  // (stop) and contain (stop) to the right. Checks: the long stick; W, inside the box, is left with Y who is split wide now. Note:
  // nobody in the deep middle.
  { name: 'nobody free, no tight end', look: '10 doubles', first: NOBODY_FREE, counts: [6, 5, 0, 5, 6, 3, 2, 1, 1] },
  // Every gap rushed; two under, three deep. The corners have the ones, the two hot men the twos: nobody is left for the back, and no
  // rusher peels with him (stop). W, inside the box, has the slot (check).
  { name: 'six rush', look: '10 doubles', first: SIX_RUSH, counts: [6, 6, 5, 0, 6, 1, 1, 0, 1] },
  // Two whole pressures at once, each telling all eleven.
  {
    name: 'edge and B with both ends drop',
    look: '10 doubles',
    first: EDGE_AND_B,
    second: ENDS_DROP,
    turn: 'same',
    // RE: A, or drop with B. N: left A both, slanting or not: two manners, a check. LE: C, or drop with B.
    // S: contain C both, spill or box: a manner, the first stands. M: B or A. W: own B or not. J: seam or contain C.
    // SS: seam or quarter. FS: middle or quarter. RC, LC: third or quarter. Stops: RE LE M W J SS FS RC LC = 9.
    // Sent for sure: N's A and S's C. Legal, those in conflict counted in both of their gaps: nothing is left over.
    counts: [6, 5, 6, 0, 2, 9, 1, 0, 1],
  },
];

const asPressure = (name: string, told: Told): Pressure =>
  pressure(
    name,
    told.map(([who, job]) => tell(who, 'path', job)),
    RIGHT,
  );

/** A gap of the base front in this look, worked out here: the engine's own reading of names is what is tested. */
function baseGaps({ aligned: { role, place } }: Assignment, { facts }: Analysis): readonly string[] {
  const gaps = ODD.roles.find((entry) => entry.role === role.id)?.base.gaps ?? [];
  return gaps.flatMap((ref): readonly string[] => {
    const side = ref.side === 'mine' ? place : ref.side;
    if ((side !== 'left' && side !== 'right') || ref.kind === 'outside') return [];
    const letter = ref.kind === 'edge' ? facts.edge[side] : ref.letter;
    return letter <= facts.edge[side] ? [`${letter}-${side}`] : [];
  });
}

/** The gaps a man is sent to, both jobs of one who is told two; null: he is free for what nobody has. */
function sentTo({ combined: { status, job, first, second } }: Assignment): readonly string[] | null {
  if (status === 'conflict') {
    const told = [first, second].flatMap((each) => (each?.kind === 'told' ? [each.job] : []));
    return told.flatMap((each) => ('run' in each ? (each.run.firm ? each.run.fits : []) : each.gaps)).map(gapText);
  }
  if (job === null) return null;
  if (!('run' in job)) return job.gaps.map(gapText);
  return job.run.firm ? job.run.fits.map(gapText) : null;
}

/** Who may take a gap, and how many gaps each of them takes at most. */
interface Free {
  readonly role: string;
  readonly may: readonly string[];
  readonly most: number;
}

/** Every complete way, by trying them all: each gap nobody is sent to goes to one man who is free and may take it. */
function waysFrom(open: readonly string[], free: readonly Free[]): readonly (readonly string[])[] {
  const [gap, ...rest] = open;
  if (gap === undefined) return [[]];
  return free.flatMap((man, at) => {
    if (man.most === 0 || !man.may.includes(gap)) return [];
    const left = free.map((other, index) => (index === at ? { ...other, most: other.most - 1 } : other));
    return waysFrom(rest, left).map((way) => [`${gap} ${man.role}`, ...way]);
  });
}

function legalWays(analysis: Analysis): number {
  const { gaps, assignments } = analysis;
  const sent = assignments.flatMap((man) => sentTo(man) ?? []);
  const open = gaps.map(({ gap }) => gapText(gap)).filter((gap) => !sent.includes(gap));
  const free = assignments.flatMap((man): readonly Free[] => {
    if (sentTo(man) !== null) return [];
    const { job, role } = man.combined;
    const two = job === null && ODD.roles.some((entry) => entry.role === role.id && entry.base.style === 'two-gap');
    const may = job !== null && 'run' in job ? job.run.fits.map(gapText) : baseGaps(man, analysis);
    return [{ role: role.id, may, most: two ? 2 : 1 }];
  });
  const ways = waysFrom(open, free).map((way) => way.join());
  // What the engine chose is one of them; where it leaves a gap open there is none.
  const chosen = open.map((gap) => {
    const [owner] = gaps.find((each) => gapText(each.gap) === gap)?.owners ?? [];
    return `${gap} ${owner?.role ?? ''}`;
  });
  expect(ways.includes(chosen.join())).toBe(gaps.every(({ owners }) => owners.length > 0));
  expect(new Set(ways).size).toBe(ways.length);
  return ways.length;
}

function counts(analysis: Analysis): Row['counts'] {
  const { gaps, assignments, findings } = analysis;
  const passes = (...kinds: readonly string[]): number =>
    assignments.filter(({ pass }) => kinds.includes(pass.kind)).length;
  const severe = (severity: string): number => findings.filter((finding) => finding.severity === severity).length;
  return [
    gaps.length,
    passes('rush', 'contain'),
    passes('zone'),
    passes('man'),
    gaps.filter(({ owners }) => owners.some(({ how, sure }) => how === 'told' && sure)).length,
    severe('stop'),
    severe('check'),
    severe('note'),
    legalWays(analysis),
  ];
}

describe('whole calls, counted', () => {
  it.each(ROWS)('$name: $look', ({ look, first, second, turn, shell, counts: expected }) => {
    const analysis = analyse(
      frozen(
        setup({
          look: LOOKS[look],
          first: asPressure('first', first),
          second: second === undefined ? null : asPressure('second', second),
          turn: turn ?? 'own',
          coverage: shell ?? NOTHING,
        }),
      ),
    );
    expect(analysis.assignments).toHaveLength(11);
    expect(counts(analysis)).toEqual(expected);
    const worst = expected[5] > 0 ? 'stop' : expected[6] > 0 ? 'check' : expected[7] > 0 ? 'note' : 'clean';
    expect(analysis.verdict).toBe(worst);
  });

  it('has enough rows', () => {
    expect(ROWS.length).toBeGreaterThanOrEqual(24);
    expect(new Set(ROWS.map(({ look }) => look)).size).toBeGreaterThanOrEqual(6);
  });
});

describe('a look a pressure is not run against', () => {
  const look = LOOKS['12 wing'];
  const open = asPressure('p', THROUGH_B);
  const notHere: Pressure = { ...open, notAgainst: [setup({ look, first: open }).look.id] };

  it.each([
    ['run against it: judged', open, null, 'stop'],
    ['the first is not', notHere, null, 'left-out'],
    ['the second is not', open, notHere, 'left-out'],
  ] as const)('%s', (_name, first, second, verdict) => {
    const analysis = analyse(frozen(setup({ look, first, second, turn: 'same' })));
    expect(analysis.verdict).toBe(verdict);
    // What is wrong is still told, for the coach who asks.
    expect(analysis.findings.map(({ rule }) => rule)).toContain('gap.open');
  });
});
