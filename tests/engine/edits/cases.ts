/** Calls in need of mending, one table: what is wrong, and some of the edits that must be offered, smallest first. */
import {
  asLookId,
  asPlayerId,
  asRoleId,
  type Coverage,
  type Front,
  type Tell,
  type TellCase,
} from '../../../src/engine/index.ts';
import { LOOKS, need, ODD, pressure, ruleJob, shell, tell, THREE_DEEP, who, type SetupParts } from '../book.ts';

export type Case = SetupParts & {
  readonly name: string;
  readonly rule: string;
  /** Which finding of the rule, where there are more. */
  readonly index?: number;
  /** Shells of the playbook. */
  readonly shells?: readonly Coverage[];
  /** These are offered, in this order, others between them or not. */
  readonly offers: readonly string[];
  /** These are not: they would not help, or do harm. */
  readonly keeps?: readonly string[];
};

const { '11 tight end': tightEnd, '10 doubles': doubles, '10 trips': trips } = LOOKS;
/** Two receivers a side, the back behind the passer: nothing leans. */
const EVEN = 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@0,-7';
const shells = [THREE_DEEP];

/** Three deep with some rows told otherwise, or (null) not at all. */
function threeDeep(rows: Readonly<Record<string, string | null>>, needs = THREE_DEEP.needs): Coverage {
  const changed = Object.keys(rows)
    .map(who)
    .map((each) => JSON.stringify(each));
  const told = Object.entries(rows).flatMap(([name, job]) => (job === null ? [] : [[name, job] as const]));
  const kept = THREE_DEEP.tells.filter((each) => !changed.includes(JSON.stringify(each.who)));
  return { ...shell('Own', told, needs), tells: [...kept, ...shell('Own', told).tells] };
}

const hand = (role: string, x: number, y: number): Front => ({
  ...ODD,
  byHand: [{ look: asLookId('look'), role: asRoleId(role), x, y }],
});
const withBase = (role: string, pass: 'rush' | 'contain' | 'none'): Front => ({
  ...ODD,
  roles: ODD.roles.map((each) => (each.role === role ? { ...each, base: { ...each.base, pass } } : each)),
});
const noseToCall = tell('@N', 'movement', 'rush A-call slant');
const noseAway = tell('@N', 'movement', 'rush A-away slant');
/** The left end inside, and nobody else for his gap. */
const endInside = pressure('p', [tell('end-away', 'movement', 'contain B-away slant')]);
const noFitLeft = threeDeep({ 'outside-away': 'drop seam-away force' });
const byCases: Tell = {
  who: who('end-call'),
  cases: (
    [
      [[{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 4 }], 'rush B-call'],
      [[], 'rush C-call'],
    ] as const
  ).map(([when, job]): TellCase => ({ when, basis: 'movement', job: ruleJob(job), preSnap: null })),
};

const TELLINGS: readonly Case[] = [
  {
    name: 'the nose to both A, the second turned the same',
    look: tightEnd,
    first: pressure('p', [noseToCall]),
    second: pressure('q', [noseAway]),
    turn: 'same',
    rule: 'line.two-jobs',
    offers: [
      'turn opposite',
      'q @N on at-least 3 call: movement rush A-call slant',
      'q @N on at-least 3 call: nothing',
      'q @N: as the other: movement rush A-call slant',
      'q @N: nothing',
      'leave q out against look',
      'leave p out against look',
    ],
    keeps: ['turn own', 'swap'],
  },
  {
    name: 'an end in and out, the second opposite: the other’s job in this one’s words',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'contain B-call slant over:inside-call')]),
    second: pressure('q', [tell('end-away', 'movement', 'contain C-away')]),
    turn: 'opposite',
    rule: 'line.two-jobs',
    offers: [
      'turn same',
      'p end-call on at-most 2 mine: movement contain C-call',
      'q end-away: as the other: movement contain B-away slant over:inside-away',
      'p end-call: as the other: movement contain C-call',
    ],
  },
  {
    name: 'the shell drops a lineman whom the second sends: another shell leaves him alone',
    look: tightEnd,
    first: pressure('p', []),
    coverage: { ...THREE_DEEP, ...shell('End drops', [['end-call', 'drop hook-call']]), needs: [] },
    second: pressure('q', [tell('end-call', 'movement', 'contain C-call')]),
    turn: 'same',
    shells,
    rule: 'line.two-jobs',
    offers: ['play three-deep', 'leave q out against look'],
  },
  {
    name: 'the same gap, taught two ways',
    look: tightEnd,
    first: pressure('p', [noseToCall]),
    second: pressure('q', [tell('@N', 'movement', 'rush A-call')]),
    turn: 'same',
    rule: 'line.two-manners',
    offers: [
      'p @N on at-least 3 call: movement rush A-call',
      'q @N: as the other: movement rush A-call slant',
      'p @N: as the other: movement rush A-call',
    ],
  },
  {
    name: 'a backer to two gaps',
    look: tightEnd,
    first: pressure('p', [tell('outside-call', 'path', 'rush B-call')]),
    second: pressure('q', [tell('outside-call', 'path', 'rush C-call')]),
    turn: 'same',
    rule: 'player.two-jobs',
    offers: ['q outside-call: as the other: path rush B-call', 'q outside-call: nothing'],
  },
];

const SIDES: readonly Case[] = [
  {
    name: 'nothing decides the side of the first',
    look: EVEN,
    first: pressure('p', [noseToCall]),
    rule: 'side.undecided',
    offers: ['p else right', 'p else left', 'leave p out against look'],
  },
  {
    name: 'nothing decides the side of the second',
    look: EVEN,
    first: pressure('p', [noseToCall], [{ kind: 'fixed', side: 'left' }]),
    second: pressure('q', [tell('inside-call', 'path', 'rush A-call')]),
    rule: 'side.undecided',
    offers: ['turn same', 'turn opposite', 'q else right', 'q else left'],
    keeps: ['p else right', 'p else left'],
  },
  {
    name: 'a rule that does not ask for the field, on a hash',
    look: EVEN,
    spot: 'left',
    first: pressure('p', [], [{ kind: 'strength', by: 'back', toward: 'to' }]),
    rule: 'side.undecided',
    offers: ['p else to field', 'p else right', 'p else left'],
    keeps: ['p else to back', 'p else to receivers'],
  },
  {
    name: 'the second follows a first without a side: they change places',
    look: EVEN,
    first: pressure('p', []),
    second: pressure('q', [tell('inside-call', 'path', 'rush B-call')], [{ kind: 'fixed', side: 'left' }]),
    turn: 'same',
    rule: 'side.undecided',
    offers: ['swap', 'p else right'],
    keeps: ['q else right'],
  },
  {
    name: 'each goes its own way',
    look: tightEnd,
    first: pressure('p', [tell('outside-call', 'path', 'contain edge-call')]),
    second: pressure(
      'q',
      [tell('inside-call', 'path', 'rush B-call')],
      [{ kind: 'strength', by: 'back', toward: 'to' }],
    ),
    rule: 'side.split',
    offers: ['turn same'],
    keeps: ['turn own'],
  },
  {
    name: 'a motion turns the second only',
    look: doubles,
    motion: { player: asPlayerId('H'), to: { x: 4, y: -1.5 } },
    first: pressure('p', []),
    second: pressure(
      'q',
      [tell('inside-call', 'path', 'rush B-call')],
      [
        { kind: 'strength', by: 'tight-end', toward: 'away' },
        { kind: 'strength', by: 'receivers', toward: 'to' },
        { kind: 'strength', by: 'back', toward: 'to' },
      ],
    ),
    rule: 'side.motion-flips',
    offers: ['turn same', 'leave q out against look'],
  },
];

const RULES: readonly Case[] = [
  {
    name: 'a gap that is not there: the edge by its name',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'contain D-call')]),
    rule: 'rule.unresolved',
    offers: ['p end-call on at-most 2 mine: nothing', 'p end-call: movement contain edge-call', 'p end-call: nothing'],
  },
  {
    name: 'a neighbour who is not there: straight',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'contain C-call under:@Q')]),
    rule: 'rule.unresolved',
    offers: ['p end-call: movement contain C-call'],
  },
  {
    name: 'somebody who is not in this front',
    look: doubles,
    first: pressure('p', [tell('@Q', 'movement', 'rush A-call')]),
    rule: 'rule.unresolved',
    offers: ['p @Q: nothing', 'leave p out against look'],
  },
  {
    name: 'the shell points at a third receiver',
    look: doubles,
    first: pressure('p', []),
    coverage: shell('Man', [['safety-call', 'man #3-call']]),
    shells,
    rule: 'rule.unresolved',
    offers: ['play three-deep'],
  },
];

const GAPS: readonly Case[] = [
  {
    name: 'the end inside, and nobody for his gap',
    look: doubles,
    first: endInside,
    coverage: noFitLeft,
    shells,
    rule: 'gap.open',
    offers: [
      'p end-away on at-most 2 mine: nothing',
      'p end-away: nothing',
      'own inside-away: drop hook-away may A-away+B-away+C-away cutback',
      'own outside-away: drop seam-away may C-away force',
      'play three-deep',
    ],
    keeps: ['own corner-away: drop third-away may C-away'],
  },
  {
    name: 'the same, as the line sees it',
    look: doubles,
    first: endInside,
    coverage: noFitLeft,
    shells,
    rule: 'front.unreplaced',
    offers: ['p end-away: nothing', 'own outside-away: drop seam-away may C-away force', 'play three-deep'],
  },
  {
    name: 'end and backer in one gap, the one inside it open',
    look: tightEnd,
    first: pressure('p', [
      tell('outside-call', 'path', 'contain D-call'),
      tell('inside-call', 'path', 'rush C-call'),
      tell('end-call', 'movement', 'rush C-call'),
      tell('@N', 'path', 'rush A-call'),
    ]),
    rule: 'gap.doubled',
    offers: [
      'p end-call on at-least 3 mine: nothing',
      'p end-call: movement rush B-call',
      'p inside-call: path rush B-call',
    ],
  },
  {
    name: 'nobody rushes the lane inside two who share one',
    look: doubles,
    first: pressure('p', [tell('outside-call', 'path', 'rush C-call'), tell('end-call', 'movement', 'contain C-call')]),
    rule: 'lane.empty',
    offers: ['p outside-call: path rush B-call', 'p outside-call: nothing'],
  },
  {
    name: 'the nose drops and nobody comes inside',
    look: doubles,
    first: pressure('p', [tell('@N', 'movement', 'drop hole')]),
    rule: 'lane.empty',
    offers: ['p @N on at-most 2 call: nothing', 'p @N: nothing'],
  },
  {
    name: 'an end all the way to A: closer, or not at all',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'rush A-call')]),
    rule: 'line.too-far',
    offers: ['stand RE at 2.65,0.8 against look', 'p end-call: nothing'],
    keeps: ['stand RE at 2.35,0.8 against look'],
  },
  {
    name: 'across the ball: nearer to the ball than before, one spot is offered',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'rush A-away')]),
    rule: 'line.too-far',
    offers: ['stand RE at 1.35,0.8 against look'],
    keeps: ['stand RE at 1,0.8 against look'],
  },
];

const EDGES: readonly Case[] = [
  {
    name: 'the end contains, and nobody is told force',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'contain C-call')]),
    coverage: threeDeep({ 'safety-call': 'drop seam-call may edge-call' }),
    shells,
    rule: 'force.missing',
    offers: [
      'own outside-call: drop curl-flat-call may edge-call force',
      'own safety-call: drop seam-call may edge-call force',
      'p end-call: movement contain C-call box',
      'play three-deep',
    ],
    keeps: ['own corner-call: drop third-call may edge-call force'],
  },
  {
    name: 'two are told force',
    look: doubles,
    first: pressure('p', []),
    coverage: threeDeep({ 'outside-call': 'drop curl-flat-call may edge-call force' }),
    shells,
    rule: 'force.doubled',
    offers: [
      'own outside-call: drop curl-flat-call may edge-call',
      'own safety-call: drop seam-call may edge-call',
      'play three-deep',
    ],
  },
  {
    name: 'he spills and nobody is outside him',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'contain C-call spill')]),
    coverage: threeDeep({ 'safety-call': 'drop seam-call may edge-call' }),
    shells,
    rule: 'edge.inconsistent',
    offers: [
      'p end-call: movement contain C-call box',
      'own safety-call: drop seam-call may edge-call force',
      'p end-call: nothing',
      'play three-deep',
    ],
  },
  {
    name: 'end and backer both box',
    look: tightEnd,
    first: pressure('p', [
      tell('end-call', 'movement', 'contain C-call box'),
      tell('outside-call', 'path', 'contain D-call box'),
    ]),
    rule: 'edge.inconsistent',
    offers: ['p end-call: movement contain C-call spill', 'p end-call: movement contain C-call', 'p end-call: nothing'],
  },
  {
    name: 'the end rushes and does not contain; his first case does not hold here and stays',
    look: tightEnd,
    first: {
      ...pressure('p', [tell('outside-call', 'path', 'rush D-call')]),
      tells: [byCases, tell('outside-call', 'path', 'rush D-call')],
    },
    rule: 'contain.missing',
    offers: [
      'p outside-call: path contain D-call',
      'p end-call: case 1: movement contain C-call',
      'p end-call: nothing',
    ],
    keeps: ['p @N: movement contain A-call'],
  },
  {
    name: 'the front has him rush, nobody tells him: from now on somebody does',
    look: doubles,
    front: withBase('RE', 'rush'),
    first: pressure('p', []),
    rule: 'contain.missing',
    offers: ['p end-call: movement contain C-call'],
  },
  {
    name: 'a two-gapper contains, and keeps both gaps',
    look: doubles,
    first: pressure('p', [tell('end-call', 'movement', 'rush B-call+C-call two-gap')]),
    rule: 'contain.missing',
    offers: ['p end-call: movement contain B-call+C-call two-gap'],
  },
  {
    name: 'he may leave with the back, the end inside him rushes',
    look: tightEnd,
    first: pressure('p', [
      tell('outside-call', 'path', 'contain D-call peel'),
      tell('end-call', 'movement', 'rush C-call'),
    ]),
    rule: 'peel.unconverted',
    offers: ['p outside-call: path contain D-call', 'p end-call: movement contain C-call'],
    keeps: ['p @N: movement contain A-call'],
  },
];

const MAN = shell('Man', [
  ['corner-call', 'man #1-call'],
  ['corner-away', 'man #1-away'],
  ['safety-call', 'man #2-call'],
  ['safety-away', 'drop middle'],
  ['inside-call', 'man back'],
  ['outside-away', 'fit edge-away force'],
  ['outside-call', 'fit edge-call force'],
]);

const COVER: readonly Case[] = [
  {
    name: 'the second takes the middle safety from the first’s shell',
    look: doubles,
    first: pressure('p', []),
    second: pressure('q', [tell('safety-away', 'path', 'rush B-away')]),
    turn: 'same',
    rule: 'player.orphaned-duty',
    offers: [
      'swap',
      'q safety-away on at-most 2 mine: nothing',
      'three-deep safety-call: drop middle',
      'q safety-away: nothing',
    ],
    keeps: [
      'three-deep outside-away: drop middle may edge-away',
      'three-deep inside-away: drop middle may A-away+B-away',
    ],
  },
  {
    name: 'the second takes the force of that side',
    look: doubles,
    first: pressure('p', []),
    second: pressure('q', [tell('outside-away', 'path', 'rush C-away')]),
    turn: 'same',
    rule: 'player.orphaned-duty',
    offers: [
      'turn opposite',
      'swap',
      'q outside-away on at-most 2 mine: nothing',
      'three-deep inside-away: drop seam-away may A-away+B-away force',
    ],
    keeps: ['three-deep safety-away: drop middle may edge-away force'],
  },
  {
    name: 'man to man, and nobody on the third receiver of trips',
    look: trips,
    first: pressure('p', []),
    coverage: { ...MAN, tells: MAN.tells.slice(0, -1) },
    shells,
    rule: 'cover.unmatched',
    offers: ['man outside-call: man #3-call may edge-mine+C-mine', 'play three-deep'],
  },
  {
    name: 'nobody on the second of two backs: counted from the man’s own side',
    look: LOOKS['20 split backs'],
    first: pressure('p', []),
    coverage: MAN,
    rule: 'cover.unmatched',
    offers: ['man inside-away: man back may B-mine+A-mine'],
  },
  {
    name: 'only a corner may take the middle of this shell',
    look: doubles,
    first: pressure('p', []),
    coverage: threeDeep({ 'safety-away': null }, [
      ...THREE_DEEP.needs.filter(({ zone }) => zone !== 'middle'),
      need('middle', 'corner-call'),
    ]),
    shells,
    rule: 'cover.zone-empty',
    offers: ['own safety-away: drop middle', 'play three-deep'],
  },
  {
    name: 'nobody in the deep middle',
    look: doubles,
    first: pressure('p', []),
    coverage: threeDeep({ 'safety-away': null }, []),
    shells,
    rule: 'cover.no-post',
    offers: ['own safety-away: drop middle', 'play three-deep'],
    keeps: ['own inside-away: drop middle'],
  },
  {
    name: 'an inside backer on a slot',
    look: trips,
    first: pressure('p', []),
    coverage: threeDeep({ 'inside-call': 'man #2-call may B-call', 'outside-call': 'drop hook-call may edge-call' }),
    shells,
    rule: 'cover.mismatch',
    offers: ['play three-deep'],
  },
  {
    name: 'run and pass on the backer in the seam',
    look: doubles,
    runs: [{ concept: 'inside-zone', side: 'left', passOption: true }],
    first: endInside,
    rule: 'conflict.run-pass',
    offers: ['three-deep inside-away: man #2-away may A-away+B-away cutback'],
    keeps: ['three-deep outside-away: man #2-away may edge-away force'],
  },
];

const COUNTS: readonly Case[] = [
  {
    name: 'the dive and the quarterback for one man who is read',
    look: doubles,
    runs: [{ concept: 'midline', side: 'right', passOption: false }],
    first: pressure('p', [
      noseAway,
      tell('inside-call', 'path', 'rush A-away'),
      tell('outside-call', 'path', 'contain edge-call', { kind: 'depth', depth: 1 }),
    ]),
    rule: 'option.unassigned',
    offers: ['three-deep inside-away: drop hook-away own A-call cutback'],
    keeps: ['three-deep safety-call: drop seam-call own A-call force'],
  },
  {
    name: 'more come than the call says: another number, or one stays',
    look: trips,
    first: pressure('p', [
      tell('outside-call', 'path', 'contain edge-call'),
      tell('inside-call', 'path', 'rush B-call'),
    ]),
    rushers: 4,
    rule: 'rush.count',
    offers: ['5 come', 'p inside-call: nothing'],
  },
  {
    name: 'fewer come than the call says: another number',
    look: doubles,
    first: pressure('p', []),
    rushers: 4,
    rule: 'rush.count',
    offers: ['3 come'],
  },
  {
    name: 'an end in the neutral zone',
    look: doubles,
    front: hand('RE', 3, 0.1),
    first: pressure('p', []),
    rule: 'align.illegal',
    offers: ['stand RE at 3,0.5 against look'],
  },
  {
    name: 'a corner off the field',
    look: doubles,
    front: hand('LC', -40, 7),
    first: pressure('p', []),
    rule: 'align.illegal',
    offers: ['stand LC at -26.15,7 against look'],
  },
];

/*
 * First and second, never one wave: K. Bowers, "Shuffle to Sprint Technique for 2-Players in Hot Pressures", X&O Labs, 2022; do
 * not blitz from depth: "5 Tips for Developing a Blitz", MatchQuarters. When they meet, and what is too far, are estimates.
 */
const PATHS: readonly Case[] = [
  {
    name: 'an end loops into the backer who comes inside him: the backer waits, or the end',
    look: tightEnd,
    first: pressure('p', [
      tell('end-call', 'movement', 'rush C-call loop'),
      tell('outside-call', 'path', 'rush B-call'),
    ]),
    rule: 'path.crossing',
    offers: [
      'p outside-call: path rush B-call second:end-call',
      'p end-call: movement rush C-call loop second:outside-call',
      'p end-call: movement rush C-call loop first:outside-call',
      'p outside-call: nothing',
      'leave p out against look',
    ],
  },
  {
    name: 'two inside backers cross, each told to wait for the other: one goes first, or does not wait',
    look: doubles,
    first: pressure('p', [
      tell('inside-call', 'path', 'rush A-away second:inside-away'),
      tell('inside-away', 'path', 'rush A-call second:inside-call'),
    ]),
    rule: 'path.crossing',
    offers: [
      'p inside-away: path rush A-call first:inside-call',
      'p inside-call: path rush A-away first:inside-away',
      'p inside-away: path rush A-call',
      'p inside-call: path rush A-away',
    ],
  },
  {
    name: 'a safety comes from depth: nearer by hand, up by the pressure’s word, or not at all',
    look: doubles,
    first: pressure('p', [tell('safety-call', 'path', 'rush B-call')]),
    rule: 'align.reach',
    offers: [
      'stand SS at 5,8.25 against look',
      'p safety-call: path rush B-call, 6 deep',
      'p safety-call: nothing',
      'leave p out against look',
    ],
  },
  {
    name: 'the nose drops to the curl-flat: he does not',
    look: doubles,
    first: pressure('p', [tell('@N', 'movement', 'drop curl-flat-call')]),
    rule: 'align.reach',
    offers: ['p @N on at-most 2 call: nothing', 'p @N: nothing'],
    keeps: ['p @N: movement drop curl-flat-call, 6 deep'],
  },
  {
    name: 'the far inside backer has the widest receiver: nearer, or another shell',
    look: tightEnd,
    first: pressure('p', []),
    coverage: shell('Far', [['inside-away', 'man #1-call']]),
    shells,
    rule: 'align.reach',
    offers: ['stand W at 2.75,4.5 against look', 'play three-deep'],
  },
  {
    name: 'an inside backer has the deep third, and the corner is free: the corner takes it',
    look: doubles,
    spot: 'left',
    first: pressure('p', []),
    coverage: threeDeep({ 'inside-call': 'drop third-call', 'corner-call': null }),
    rule: 'align.reach',
    offers: ['own corner-call: drop third-call'],
  },
];

export const CASES: readonly Case[] = [
  ...TELLINGS,
  ...SIDES,
  ...RULES,
  ...GAPS,
  ...EDGES,
  ...COVER,
  ...COUNTS,
  ...PATHS,
];
