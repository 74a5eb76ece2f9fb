import { describe, expect, it } from 'vitest';
import { openDocument, toSetup } from '../../../src/document/index.ts';
import {
  analyse,
  asCallId,
  asRoleId,
  type Analysis,
  type Finding,
  type Setup,
  type SideStep,
} from '../../../src/engine/index.ts';
import { frozen, gapText, read } from '../book.ts';
import { FIELD_CROSS } from './fourThree.ts';
import type { LookName } from './looks.ts';
import { EDGE_AND_B, SAFETY_B } from './oddFireZones.ts';
import { SIX_HOT, THREE_MAN_TWIST, TWO_DEEP } from './oddOthers.ts';
import type { Line, Row, Way } from './row.ts';
import { lookOf, pressureOf, run, setupOf, shellOf } from './setup.ts';
import { coverTold, elevenTold, findingsTold, gapsTold } from './told.ts';

/*
 * The published tables with one thing wrong in each: what the engine must say, and that it says none of it about the table as
 * it was published. What must be found was worked out by hand before the engine was; the reasons are those of the checks.
 */
const RIGHT: Way = { call: 'right', back: 'call', stand: 0 };

/** A table with other words for some men. */
function but(row: Row, changes: Readonly<Record<string, Partial<Pick<Line, 'job' | 'stands'>>>>, look = row.look): Row {
  return { ...row, look, men: row.men.map((each) => ({ ...each, ...changes[each.man] })) };
}

/** A finding as its rule, the gaps it is about, and the players. */
const about = ({ rule, gaps, players }: Finding): string => [rule, ...gaps.map(gapText), ...players].join(' ');

interface Negative {
  readonly name: string;
  readonly row: Row;
  readonly wrong: Row;
  /** Rule and men, by the alphabet. */
  readonly finds: readonly string[];
  /** Some of them again, with gaps and players. */
  readonly about: readonly string[];
}

const NEGATIVES: readonly Negative[] = [
  {
    name: 'the away end slants in: his edge is open and nobody contains there, the hook man’s gap has two',
    row: EDGE_AND_B,
    wrong: but(EDGE_AND_B, { AE: { job: 'rush B-away slant spill' } }),
    finds: ['contain.missing', 'front.unreplaced AE', 'gap.doubled AE AI', 'gap.open'],
    about: ['gap.open C-left', 'contain.missing C-left'],
  },
  {
    name: 'the end of the call side stays in B: A is open and B has two',
    row: EDGE_AND_B,
    wrong: but(EDGE_AND_B, { CE: { job: 'rush B-call spill' } }),
    finds: ['front.unreplaced NT', 'gap.doubled CE CI', 'gap.open', 'lane.empty CE CI'],
    about: ['gap.open A-right'],
  },
  {
    name: 'a tight end adds a gap and nothing changes: it is open',
    row: EDGE_AND_B,
    wrong: but(EDGE_AND_B, {}, 'doubles tight end'),
    finds: ['gap.open'],
    about: ['gap.open D-right'],
  },
  {
    name: 'three receivers to the call and nobody bumps: the third has only the backer from across the ball',
    row: EDGE_AND_B,
    // There is no second receiver away for the outside backer to stand on.
    wrong: { ...but(EDGE_AND_B, { AO: { stands: ['edge'] } }, 'trips'), goes: 'fixed' },
    finds: ['cover.mismatch AI'],
    about: ['cover.mismatch H'],
  },
  {
    name: 'the call-side safety stays deep: the second receiver has nobody, and the edge nobody outside the spill',
    row: EDGE_AND_B,
    wrong: but(EDGE_AND_B, { CS: { job: 'drop middle' } }),
    finds: ['cover.unmatched AI AO', 'cover.zone-empty', 'edge.inconsistent CO', 'force.missing'],
    about: ['cover.unmatched Y', 'force.missing C-right'],
  },
  {
    name: 'a second free safety, and so nobody on the back or in his gap',
    row: THREE_MAN_TWIST,
    wrong: but(THREE_MAN_TWIST, { CS: { job: 'drop middle' } }),
    finds: ['cover.unmatched', 'edge.inconsistent CE', 'gap.open'],
    about: ['cover.unmatched R', 'gap.open B-right'],
  },
  {
    name: 'told the second receiver away, who is not there: the tight end is alone on that side',
    row: THREE_MAN_TWIST,
    wrong: but(THREE_MAN_TWIST, {}, 'trips nub'),
    finds: ['cover.unmatched', 'force.missing', 'rule.unresolved AO'],
    about: ['cover.unmatched H', 'force.missing D-left'],
  },
  {
    // "5 Tips for Developing a Blitz", MatchQuarters: do not blitz from depth.
    name: 'the safety who comes has not crept up: he has too far to run from 12 yards',
    row: SAFETY_B,
    wrong: { ...SAFETY_B, creeps: { CS: 12 } },
    finds: ['align.reach CS'],
    about: ['align.reach B-right'],
  },
];

describe('one thing wrong', () => {
  for (const { name, row, wrong, finds, about: expected } of NEGATIVES) {
    it(name, () => {
      const analysis = analyse(frozen(setupOf(wrong, RIGHT)));
      expect(findingsTold(analysis)).toEqual(finds);
      expect(analysis.findings.map(about)).toEqual(expect.arrayContaining([...expected]));
    });

    it(`as published, none of it: ${name}`, () => {
      const rules = run(row, RIGHT).findings.map(({ rule }) => rule);
      expect(rules.filter((rule) => finds.some((each) => each.startsWith(rule)))).toEqual([]);
    });
  }
});

describe('what is wrong, in numbers', () => {
  it('the safety who stays deep leaves two under and four deep', () => {
    const wrong = but(EDGE_AND_B, { CS: { job: 'drop middle' } });
    expect(run(wrong, RIGHT).passCount).toEqual({ rush: 5, under: 2, deep: 4, man: 0, free: 0 });
  });

  it('against the tight end the gap is the call-side safety’s as soon as he is told that he may have it', () => {
    const told = but(EDGE_AND_B, { CS: { job: 'drop seam-call may D-call force' } }, 'doubles tight end');
    const analysis = run(told, RIGHT);
    expect(gapsTold(analysis, 'right')['D-call']).toBe('CS');
    expect(findingsTold(analysis)).toEqual([]);
  });

  it('against three receivers the away backer has the third, the away outside backer the back and no receiver', () => {
    const wrong: Row = { ...but(EDGE_AND_B, { AO: { stands: ['edge'] } }, 'trips'), goes: 'fixed' };
    const cover = coverTold(run(wrong, RIGHT), 'right');
    expect(cover).toEqual({ '#1-call': 'CC', '#2-call': 'CS', '#3-call': 'AI', '#1-away': 'AC', R: 'AO' });
  });
});

/** Two halves are no thirds: a shell that needs three deep and three under has none of its zones filled by such men. */
describe('two deep behind a call that counts on three', () => {
  const zones = ({ findings }: Analysis): readonly string[] =>
    findings
      .filter(({ rule }) => rule === 'cover.zone-empty')
      .map(({ because }) => {
        const zone = because.data['zone'];
        return zone?.kind === 'zone' ? `${zone.zone} ${zone.side}` : 'no zone';
      });

  it('finds both outside thirds and the middle empty, and the zones under them', () => {
    const counted: Setup = {
      ...setupOf(TWO_DEEP, RIGHT),
      first: pressureOf(TWO_DEEP, 'right', true),
      coverage: shellOf(EDGE_AND_B),
    };
    const analysis = analyse(frozen(counted));
    expect(zones(analysis)).toEqual([
      'third right',
      'third left',
      'middle middle',
      'seam right',
      'seam left',
      'hook middle',
    ]);
    expect(analysis.passCount.deep).toBe(2);
  });

  it.each([TWO_DEEP, EDGE_AND_B])('in its own shell, none: $id', (row) => {
    expect(zones(run(row, RIGHT))).toEqual([]);
  });
});

/** A playbook of one table, as the text of a file. */
function fileOf(row: Row, change: (setup: Setup) => Setup = (setup) => setup): string {
  const setup = change(setupOf(row, RIGHT));
  const call = {
    id: 'call',
    name: row.id,
    combination: { kind: 'together' },
    front: setup.front.id,
    first: setup.first.id,
    second: null,
    turn: 'own',
    coverage: null,
    rushers: row.counts.rush,
    waivers: [],
  };
  return JSON.stringify({
    format: 'gapwright-playbook',
    version: 2,
    team: { name: 'Made up', level: 'high-school', season: '' },
    roles: setup.roles,
    fronts: [setup.front],
    coverages: [setup.coverage],
    looks: [setup.look],
    pressures: [setup.first],
    calls: [call],
    opponents: [],
    sheets: [],
    checkOuts: [],
    dictionary: [],
    words: { techniques: [] },
  });
}

/** A third man under, who makes twelve. */
function withTwelfth(setup: Setup): Setup {
  const [role] = setup.roles;
  const [standing] = setup.front.roles;
  if (role === undefined || standing === undefined) throw new Error('nobody in the front');
  const id = asRoleId('TU');
  return {
    ...setup,
    roles: [...setup.roles, { ...role, id, letter: 'TU' }],
    front: { ...setup.front, roles: [...setup.front.roles, { ...standing, role: id }] },
  };
}

describe('six rush and two under, from a file', () => {
  it('eleven open, and come out as the table has them', () => {
    const playbook = read(openDocument(fileOf(SIX_HOT)));
    const [call] = playbook.calls;
    const [look] = playbook.looks;
    if (call?.id !== asCallId('call') || look === undefined) throw new Error('the playbook lost its call');
    const analysis = analyse(read(toSetup(playbook, { call, look: look.id, spot: 'middle' })));
    expect(elevenTold(analysis, SIX_HOT, 'right')).toEqual(
      SIX_HOT.men.map(({ man, gap, run: role, pass }) => [man, gap, role, pass]),
    );
    expect(analysis.passCount).toEqual({ ...SIX_HOT.counts, free: 0 });
  });

  it('twelve are refused, at the front', () => {
    expect(openDocument(fileOf(SIX_HOT, withTwelfth))).toEqual({
      ok: false,
      problem: [{ path: 'fronts[0].roles (front)', found: 'a list of 12', expected: 'a list of exactly 11' }],
    });
  });
});

/*
 * "Strong" said of a formation whose tight end is on one side and whose receivers are on the other: "Setting Strength and
 * Getting Lined Up", r/footballstrategy, Jan 2025. One pressure alone has the one side its rule says; called by both words at
 * once, the engine tells both sides.
 */
describe('strong by two measures', () => {
  const by = (strength: 'tight-end' | 'receivers'): readonly SideStep[] => [
    { kind: 'strength', by: strength, toward: 'to' },
    { kind: 'fixed', side: 'right' },
  ];

  function calledTwice(name: LookName): Analysis {
    const drawn = setupOf({ ...EDGE_AND_B, goes: 'fixed' }, RIGHT);
    const men = but(EDGE_AND_B, { AO: { stands: ['edge'] }, CO: { stands: ['edge'] } });
    return analyse(
      frozen({
        ...drawn,
        front: setupOf(men, RIGHT).front,
        look: lookOf(name, RIGHT),
        first: { ...drawn.first, callSide: by('tight-end') },
        second: { ...drawn.first, callSide: by('receivers') },
        secondCoverage: drawn.coverage,
      }),
    );
  }

  const sides = ({ first, second }: Analysis): readonly unknown[] =>
    [first.side, second?.side].map((each) => (each?.kind === 'decided' ? each.side : 'none'));

  it('the tight end on one side, three receivers on the other: each its own way, and said', () => {
    const analysis = calledTwice('trips nub');
    expect(sides(analysis)).toEqual(['left', 'right']);
    const split = analysis.findings.filter(({ rule }) => rule === 'side.split');
    expect(split.map(({ because }) => [because.data['a'], because.data['b']])).toEqual([
      [
        { kind: 'side', side: 'left' },
        { kind: 'side', side: 'right' },
      ],
    ]);
  });

  it('both on one side: one side, and nothing to say', () => {
    const analysis = calledTwice('trips tight end');
    expect(sides(analysis)).toEqual(['right', 'right']);
    expect(analysis.findings.filter(({ rule }) => rule.startsWith('side.'))).toEqual([]);
  });
});

/** NCAA 7-3-3 (eligibility by position: a back, or the end man of the line). */
describe('the tight end is covered by the flanker', () => {
  const asPublished = run(FIELD_CROSS, RIGHT);
  const covered = run({ ...FIELD_CROSS, look: 'covered tight end' }, RIGHT);

  it('his gap is still there and still Sam’s', () => {
    expect(gapsTold(asPublished, 'right')['D-call']).toBe('SA');
    expect(gapsTold(covered, 'right')).toEqual(gapsTold(asPublished, 'right'));
  });

  it('four may catch a pass, and Sam has nobody', () => {
    expect(coverTold(asPublished, 'right')).toEqual(FIELD_CROSS.cover);
    expect(coverTold(covered, 'right')).toEqual({ '#1-call': 'FC', '#1-away': 'BC', '#2-away': 'BE', R: 'FS' });
  });

  it('nothing more is found than as published', () => {
    expect(findingsTold(covered)).toEqual(findingsTold(asPublished));
  });
});
