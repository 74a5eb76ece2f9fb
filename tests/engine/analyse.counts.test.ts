import { describe, expect, it } from 'vitest';
import {
  analyse,
  type Analysis,
  type Coverage,
  type Pressure,
  type SideStep,
  type Turn,
} from '../../src/engine/index.ts';
import { frozen, LOOKS, pressure, tell, setup, THREE_DEEP } from './book.ts';

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
  /** Run gaps; men who rush; men in a zone; men on a man; gaps somebody is surely sent to; findings by severity. */
  readonly counts: readonly [
    gaps: number,
    rush: number,
    zone: number,
    man: number,
    sent: number,
    stop: number,
    check: number,
    note: number,
  ];
}

const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];
const NOTHING: Coverage = { ...THREE_DEEP, tells: [] };

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
  // The front at base, three linemen rush, the shell takes the other eight; the backers fit the two B, all six gaps have a man.
  { name: 'nothing called', look: '10 doubles', first: [], shell: THREE_DEEP, counts: [6, 3, 8, 0, 0, 0, 0, 0] },
  // Nobody told anything at all: three rush, the rest of the front keeps its base gaps and has no pass job.
  { name: 'nothing called, no shell', look: '10 doubles', first: [], counts: [6, 3, 0, 0, 0, 0, 0, 0] },
  // One more gap, D; the safety who comes down may fit the edge.
  {
    name: 'nothing called, tight end',
    look: '11 tight end',
    first: [],
    shell: THREE_DEEP,
    counts: [7, 3, 8, 0, 0, 0, 0, 0],
  },
  // Three told and the other end: four rush. Three gaps sent to; W, LE and J take the three away from the call.
  { name: 'through B', look: '10 doubles', first: THROUGH_B, shell: THREE_DEEP, counts: [6, 4, 7, 0, 3, 0, 0, 0] },
  // D is left to the safety who forces there.
  {
    name: 'through B, tight end',
    look: '11 tight end',
    first: THROUGH_B,
    shell: THREE_DEEP,
    counts: [7, 4, 7, 0, 3, 0, 0, 0],
  },
  // A wing makes D and E on the call side; the safety has the edge, E; nobody may fit D.
  { name: 'through B, wing', look: '12 wing', first: THROUGH_B, shell: THREE_DEEP, counts: [8, 4, 7, 0, 3, 1, 0, 0] },
  // M and the nose told, both ends rush at base: four. Only the two A are sent to; everybody else slides by base or shell.
  { name: 'through A', look: '10 doubles', first: THROUGH_A, shell: THREE_DEEP, counts: [6, 4, 7, 0, 2, 0, 0, 0] },
  // The left inside backer rushes too: five rush, six cover. The nose hears the right A twice: four gaps sent to.
  {
    name: 'through B and, opposite, through A',
    look: '10 doubles',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'opposite',
    shell: THREE_DEEP,
    counts: [6, 5, 6, 0, 4, 0, 0, 0],
  },
  // The nose hears right A and left A: one stop. The right A is M's for sure, B and C as before: three sent to.
  {
    name: 'through B and, on the same side, through A',
    look: '10 doubles',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'same',
    shell: THREE_DEEP,
    counts: [6, 5, 6, 0, 3, 1, 0, 0],
  },
  // The same conflict, and D without a man on a wing's side: two stops.
  {
    name: 'the same against a wing',
    look: '12 wing',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'same',
    shell: THREE_DEEP,
    counts: [8, 5, 6, 0, 3, 2, 0, 0],
  },
  // Tight ends on both sides, eight gaps: four sent to; SS and J fit the two D; LE has left C and B, so left B stays open.
  {
    name: 'opposite against two tight ends',
    look: '22 double tight I',
    first: THROUGH_B,
    second: THROUGH_A,
    turn: 'opposite',
    shell: THREE_DEEP,
    counts: [8, 5, 6, 0, 4, 1, 0, 0],
  },
  // Published: five rush, three under, three deep; six gaps, six owners.
  { name: 'edge and B', look: '10 doubles', first: EDGE_AND_B, counts: [6, 5, 6, 0, 6, 0, 0, 0] },
  // The tight end adds D and nobody is told to take it.
  {
    name: 'edge and B, tight end, unchanged',
    look: '11 tight end',
    first: EDGE_AND_B,
    counts: [7, 5, 6, 0, 6, 1, 0, 0],
  },
  // The mend: the safety who forces there may fit it. He is not sent, so still six gaps sent to.
  {
    name: 'edge and B, tight end, the safety fits D',
    look: '11 tight end',
    first: but(EDGE_AND_B, ['safety-call', 'drop seam-call may D-call force']),
    counts: [7, 5, 6, 0, 6, 0, 0, 0],
  },
  // The away end slants in to B: C is open there (stop), and he and the backer are both sent to B (check).
  {
    name: 'edge and B, the away end slants in',
    look: '10 doubles',
    first: but(EDGE_AND_B, ['end-away', 'rush B-away slant']),
    counts: [6, 5, 6, 0, 5, 1, 1, 0],
  },
  // The call-side end stays in B: A is open there (stop), and he and the rushing backer are both in B (check).
  {
    name: 'edge and B, the end stays',
    look: '10 doubles',
    first: but(EDGE_AND_B, ['end-call', 'rush B-call']),
    counts: [6, 5, 6, 0, 5, 1, 1, 0],
  },
  // Bumped against trips: S, RE, N, LE and W rush; M, J, SS, FS and the corners drop; six gaps, six owners.
  { name: 'edge and B, bumped against trips', look: '10 trips', first: BUMPED, counts: [6, 5, 6, 0, 6, 0, 0, 0] },
  // The I with a tight end: seven standing gaps, the safety has D.
  { name: 'edge and B, run first', look: '21 pro I', first: CRASH, counts: [7, 5, 6, 0, 7, 0, 0, 0] },
  // S still has C, M and W cross in A, the nose loops to B, each end one gap: six of six.
  { name: 'inside backers cross', look: '10 doubles', first: CROSS, counts: [6, 5, 6, 0, 6, 0, 0, 0] },
  // Seven gaps: RE, N, LE, M and SS rush five of them, S owns D and W the away B.
  { name: 'safety through B', look: '11 tight end', first: SAFETY_B, counts: [7, 5, 6, 0, 7, 0, 0, 0] },
  // Four rush, four under, three deep.
  { name: 'four rush', look: '10 doubles', first: FOUR_RUSH, counts: [6, 4, 7, 0, 6, 0, 0, 0] },
  // Both ends own B and drop, so only N, M and the two edges rush; three under, four deep.
  { name: 'both ends drop', look: '10 doubles', first: ENDS_DROP, counts: [6, 4, 7, 0, 6, 0, 0, 0] },
  // Five rush, five in man, one free in the middle.
  { name: 'man free', look: '10 doubles', first: MAN_FREE, counts: [6, 5, 1, 5, 6, 0, 0, 0] },
  // The safety who had the back and B is free in the middle as well: B is open.
  {
    name: 'man free, nobody on the back',
    look: '10 doubles',
    first: but(MAN_FREE, ['safety-call', 'drop middle']),
    counts: [6, 5, 2, 4, 5, 1, 0, 0],
  },
  // Against trips there is no second receiver away: J's rule points at nobody; he keeps his base, the edge, but C is LE's.
  { name: 'man free against trips', look: '10 trips', first: MAN_FREE, counts: [6, 5, 1, 4, 6, 1, 0, 0] },
  // Six rush, five in man: every one of the seven gaps is somebody's.
  { name: 'nobody free', look: '11 tight end', first: NOBODY_FREE, counts: [7, 6, 0, 5, 7, 0, 0, 0] },
  // Without a tight end there is no D: the safety's rule points at no gap (stop) and he has no pass job; six gaps full.
  { name: 'nobody free, no tight end', look: '10 doubles', first: NOBODY_FREE, counts: [6, 5, 0, 5, 6, 1, 0, 0] },
  // Every gap rushed; two under, three deep.
  { name: 'six rush', look: '10 doubles', first: SIX_RUSH, counts: [6, 6, 5, 0, 6, 0, 0, 0] },
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
    // Sent for sure: N's A and S's C.
    counts: [6, 5, 6, 0, 2, 9, 1, 0],
  },
];

const asPressure = (name: string, told: Told): Pressure =>
  pressure(
    name,
    told.map(([who, job]) => tell(who, 'path', job)),
    RIGHT,
  );

function counts({ gaps, assignments, findings }: Analysis): Row['counts'] {
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
    expect(analysis.verdict).toBe(expected[5] > 0 ? 'stop' : expected[6] > 0 ? 'check' : 'clean');
  });

  it('has enough rows', () => {
    expect(ROWS.length).toBeGreaterThanOrEqual(20);
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
