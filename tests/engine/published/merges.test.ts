import { describe, expect, it } from 'vitest';
import { analyse, type Analysis, type LookTest, type Setup } from '../../../src/engine/index.ts';
import { frozen } from '../book.ts';
import { BOUNDARY_CORNER, FIELD_CROSS } from './fourThree.ts';
import { ODD_TIGHT } from './fronts.ts';
import { THREE_UNDER_THREE_DEEP } from './needs.ts';
import { EDGE_AND_B, SAFETY_B, UNDERNEATH } from './oddFireZones.ts';
import { TWO_DEEP } from './oddOthers.ts';
import { line, type FrontMan, type Line, type Part, type Row, type Way } from './row.ts';
import { pressureOf, setupOf, shellOf } from './setup.ts';
import { elevenTold, gapsTold } from './told.ts';

/*
 * Two pressures as one call. What must come out was worked out by hand before the engine was: an explicit path before an explicit
 * line movement before a rule of consequence before the shell and the base job; two explicit jobs that differ are a conflict,
 * and a lineman's always is. From memory, reasoned from J. Bellace, 3-3 stack clinic, Glazier Clinics ("usually paired … to
 * prevent gap conflicts"), and from the published either-or of "Blitz of the Week #3", Blitzology, 16 Mar 2010.
 */
const RIGHT: Way = { call: 'right', back: 'call', stand: 0 };
const WIDE: Way = { ...RIGHT, stand: 1 };

/** Everybody at base against two receivers on each side: ends B, nose both A, inside backers A, outside backers the edge. */
const BASE: readonly Line[] = [
  line('CE', '4i', 'base', '', '', '', ''),
  line('NT', '0', 'base', '', '', '', ''),
  line('AE', '4i', 'base', '', '', '', ''),
  line('CO', 'edge', 'base', '', '', '', ''),
  line('CI', '20', 'base', '', '', '', ''),
  line('AI', '20', 'shell', 'drop hook may B-away+A-away cutback', '', '', ''),
  line('AO', 'apex of number two', 'shell', 'drop seam-away may edge-away force', '', '', ''),
  line('CS', 'high', 'shell', 'drop seam-call force', '', '', ''),
  line('AS', 'high', 'shell', 'drop middle', '', '', ''),
  line('CC', 'off', 'shell', 'drop third-call', '', '', ''),
  line('AC', 'off', 'shell', 'drop third-away', '', '', ''),
];

/** A piece of a pressure: it tells a few men, and the others are at base or in the shell. */
function piece(id: string, front: readonly FrontMan[], ...tells: readonly (readonly [string, Part, string])[]): Row {
  const told = new Map(tells.map(([man, part, job]) => [man, { part, job }]));
  return {
    ...EDGE_AND_B,
    id,
    front,
    goes: 'fixed',
    men: BASE.map((each) => ({ ...each, ...told.get(each.man) })),
    needs: THREE_UNDER_THREE_DEEP,
  };
}

const EDGE = piece('edge', ODD_TIGHT, ['CO', 'path', 'contain C-call']);
const INSIDE_A = piece(
  'inside A',
  ODD_TIGHT,
  ['CI', 'path', 'rush A-call'],
  ['NT', 'consequence', 'rush A-away slant'],
);
const AWAY_A = piece('away A', ODD_TIGHT, ['AI', 'path', 'rush A-away'], ['NT', 'consequence', 'rush A-call slant']);
const END_OUT = piece(
  'end out',
  ODD_TIGHT,
  ['CI', 'path', 'rush B-call spill'],
  ['CE', 'movement', 'contain C-call loop box'],
  ['NT', 'movement', 'rush A-call slant spill'],
  ['CO', 'path', 'drop curl-flat-call'],
);
/** The first published pressure, its call side fixed like that of the pieces. */
const STICKS: Row = { ...EDGE_AND_B, goes: 'fixed' };
/** The published tag of the safety pressure: he and the inside backer swap gaps. */
const SAFETY_A: Row = {
  ...SAFETY_B,
  id: 'five-6 swapped',
  men: SAFETY_B.men.map((each) => {
    if (each.man === 'CI') return { ...each, job: 'rush B-call spill' };
    return each.man === 'CS' ? { ...each, job: 'rush A-call spill' } : each;
  }),
};

/** How much of the two is told as the pressure's own: the rush alone, or the shell too, man by man. */
type Told = 'rush' | 'everything';

interface Together {
  readonly name: string;
  readonly first: Row;
  readonly second: Row;
  readonly turn: Setup['turn'];
  readonly told: Told;
  readonly way: Way;
  readonly status: string;
  readonly flags: readonly string[];
  readonly rush: number;
  /** Gaps nobody surely has: open, or only those of men told two things. */
  readonly unsure: string;
}

function together({ first, second, turn, told, way }: Together): Analysis {
  const whole = told === 'everything';
  return analyse(
    frozen({
      ...setupOf(first, way),
      first: pressureOf(first, way.call, whole),
      second: pressureOf(second, way.call, whole),
      secondCoverage: shellOf(second),
      turn,
      rushers: null,
    }),
  );
}

/** `CE:one NT:conflict`, in the order of the tables. */
function statusOf(analysis: Analysis, row: Row): string {
  return row.men
    .map(({ man }) => {
      const found = analysis.assignments.find((each) => each.aligned.role.id === man);
      return `${man}:${found?.combined.status ?? 'nobody'}`;
    })
    .join(' ');
}

const flagged = (analysis: Analysis): readonly string[] =>
  analysis.findings
    .filter(({ rule }) => rule.includes('.two-'))
    .map(({ rule, who }) => `${rule} ${who.join(' ')}`)
    .sort();

const unsureIn = (analysis: Analysis): string =>
  analysis.gaps
    .filter(({ owners }) => !owners.some(({ sure }) => sure))
    .map(({ gap }) => `${gap.letter}-${gap.side === RIGHT.call ? 'call' : 'away'}`)
    .sort()
    .join(' ');

const TOGETHER: readonly Together[] = [
  {
    name: 'outside backer off the edge + inside backer through A: nobody is told two things by the rush',
    first: EDGE,
    second: INSIDE_A,
    turn: 'own',
    told: 'rush',
    way: RIGHT,
    status: 'CE:untold NT:one AE:untold CO:one CI:one AI:one AO:one CS:one AS:one CC:one AC:one',
    flags: [],
    rush: 5,
    unsure: '',
  },
  {
    name: 'both inside backers through A: the nose has no free A, the hook gives way',
    first: INSIDE_A,
    second: AWAY_A,
    turn: 'own',
    told: 'rush',
    way: RIGHT,
    status: 'CE:untold NT:conflict AE:untold CO:untold CI:one AI:yields AO:one CS:one AS:one CC:one AC:one',
    flags: ['line.two-jobs NT'],
    rush: 5,
    // Both A gaps are rushed by the backers; the edge on the call side is the outside backer's at base.
    unsure: '',
  },
  {
    name: 'the end sticks + the end goes out: he is told two things, and so are the nose and the outside backer',
    first: STICKS,
    second: END_OUT,
    turn: 'own',
    told: 'rush',
    way: RIGHT,
    status: 'CE:conflict NT:conflict AE:one CO:conflict CI:same AI:one AO:one CS:one AS:one CC:one AC:one',
    flags: ['line.two-jobs CE', 'line.two-jobs NT', 'player.two-jobs CO'],
    rush: 5,
    unsure: 'A-away A-call C-call',
  },
  {
    name: 'a pressure and its own mirror: only the corners agree, so it is no call to run at once',
    first: STICKS,
    second: STICKS,
    turn: 'opposite',
    told: 'everything',
    way: RIGHT,
    status:
      'CE:conflict NT:conflict AE:conflict CO:conflict CI:conflict AI:conflict AO:conflict CS:conflict AS:conflict CC:same AC:same',
    flags: [
      'line.two-jobs AE',
      'line.two-jobs CE',
      'line.two-jobs NT',
      'player.two-jobs AI',
      'player.two-jobs AO',
      'player.two-jobs AS',
      'player.two-jobs CI',
      'player.two-jobs CO',
      'player.two-jobs CS',
    ],
    rush: 5,
    unsure: 'A-away A-call B-away B-call C-away C-call',
  },
  {
    name: 'a pressure and the tag that swaps safety and inside backer: two rows, no lineman',
    first: SAFETY_B,
    second: SAFETY_A,
    turn: 'own',
    told: 'everything',
    way: RIGHT,
    status: 'CE:same NT:same AE:same CO:same CI:conflict AI:same AO:same CS:conflict AS:same CC:same AC:same',
    flags: ['player.two-jobs CI', 'player.two-jobs CS'],
    rush: 5,
    unsure: 'A-call B-call',
  },
  {
    name: 'the same rush with another shell: the front hears one thing',
    first: EDGE_AND_B,
    second: TWO_DEEP,
    turn: 'own',
    told: 'everything',
    way: WIDE,
    status:
      'CE:same NT:same AE:same CO:same CI:same AI:conflict AO:conflict CS:conflict AS:conflict CC:conflict AC:conflict',
    flags: [
      'player.two-jobs AC',
      'player.two-jobs AI',
      'player.two-jobs AO',
      'player.two-jobs AS',
      'player.two-jobs CC',
      'player.two-jobs CS',
    ],
    rush: 5,
    // He has the away B in both, and must still be told which hook: the engine is not sure of a man told two things.
    unsure: 'B-away',
  },
  {
    name: 'outside and inside backer swap edge and B: the same line',
    first: STICKS,
    second: UNDERNEATH,
    turn: 'own',
    told: 'everything',
    way: RIGHT,
    status: 'CE:same NT:same AE:same CO:conflict CI:conflict AI:same AO:same CS:same AS:same CC:same AC:same',
    flags: ['player.two-jobs CI', 'player.two-jobs CO'],
    rush: 5,
    unsure: 'B-call C-call',
  },
];

describe('two pressures run at once', () => {
  for (const row of TOGETHER) {
    describe(row.name, () => {
      const analysis = together(row);

      it('says for every man how his two jobs go together', () => {
        expect(statusOf(analysis, row.first)).toBe(row.status);
      });

      it('flags exactly the men told two things', () => {
        expect(flagged(analysis)).toEqual(row.flags);
      });

      it('counts the rush and knows which gaps nobody surely has', () => {
        expect(analysis.passCount.rush).toBe(row.rush);
        expect(unsureIn(analysis)).toBe(row.unsure);
        expect(analysis.gaps.filter(({ owners }) => owners.length === 0)).toEqual([]);
      });
    });
  }
});

describe('outside backer off the edge + inside backer through A', () => {
  const [row] = TOGETHER;
  if (row === undefined) throw new Error('no first row');

  it('is sound against the run, everybody in a gap of his own', () => {
    expect(gapsTold(together(row), 'right')).toEqual({
      'C-call': 'CO',
      'B-call': 'CE',
      'A-call': 'CI',
      'A-away': 'NT',
      'B-away': 'AE',
      'C-away': 'AO',
    });
  });

  it('lacks contain away from the call, and nothing else', () => {
    expect(together(row).findings.map(({ rule, gaps }) => [rule, gaps])).toEqual([
      ['contain.missing', [{ side: 'left', letter: 'C' }]],
    ]);
  });

  it('lacks nothing when the away end has B against the run and contains against the pass', () => {
    const contains = ODD_TIGHT.map((man) =>
      man.id === 'AE' ? { ...man, base: { ...man.base, pass: 'contain' as const } } : man,
    );
    expect(together({ ...row, first: { ...EDGE, front: contains } }).findings).toEqual([]);
  });
});

interface EitherOr {
  readonly name: string;
  readonly first: Row;
  readonly second: Row;
  readonly turn: Setup['turn'];
  /** Linemen first. */
  readonly hear: { readonly line: string; readonly others: string };
  readonly rush: number;
}

const EITHER: readonly EitherOr[] = [
  {
    name: 'a pressure and its own mirror',
    first: STICKS,
    second: STICKS,
    turn: 'opposite',
    hear: { line: 'AE CE NT', others: 'AI AO AS CI CO CS' },
    rush: 5,
  },
  {
    name: 'safety and inside backer swap gaps',
    first: SAFETY_B,
    second: SAFETY_A,
    turn: 'own',
    hear: { line: '', others: 'CI CS' },
    rush: 5,
  },
  {
    name: 'the same rush, three deep or two',
    first: { ...EDGE_AND_B, goes: 'fixed' },
    second: { ...TWO_DEEP, goes: 'fixed' },
    turn: 'own',
    hear: { line: '', others: 'AC AI AO AS CC CS' },
    rush: 5,
  },
  {
    name: 'outside and inside backer swap edge and B',
    first: STICKS,
    second: UNDERNEATH,
    turn: 'own',
    hear: { line: '', others: 'CI CO' },
    rush: 5,
  },
];

/** The first half when the back is on the call side. */
const BACK_TO_CALL: readonly LookTest[] = [{ kind: 'back', side: 'call' }];

function either({ first, second, turn }: EitherOr, back: Way['back']): Analysis {
  const way: Way = { ...WIDE, back };
  const drawn = setupOf(first, { ...way, stand: first.men.some((man) => man.stands.length > 1) ? 1 : 0 });
  return analyse(
    frozen({
      ...drawn,
      second: pressureOf(second, way.call),
      secondCoverage: shellOf(second),
      turn,
      combination: { kind: 'either-or', key: BACK_TO_CALL },
    }),
  );
}

describe('one of two by a key', () => {
  for (const row of EITHER) {
    describe(row.name, () => {
      it.each([
        ['call', 'first'],
        ['away', 'second'],
      ] as const)('with the back to the %s the %s half is run, and nobody is told two things', (back, half) => {
        const analysis = either(row, back);
        expect(analysis.choice?.ran).toBe(half);
        expect(analysis.assignments.filter(({ combined }) => combined.status === 'conflict')).toEqual([]);
        expect(flagged(analysis)).toEqual([]);
        expect(analysis.passCount.rush).toBe(row.rush);
        expect(unsureIn(analysis)).toBe('');
      });

      it('everybody whose job differs must hear it, linemen first', () => {
        const analysis = either(row, 'call');
        const heard = analysis.choice?.mustHear ?? [];
        const { line: linemen, others } = row.hear;
        const count = linemen === '' ? 0 : linemen.split(' ').length;
        expect(heard.slice(0, count).toSorted().join(' ')).toBe(linemen);
        expect(heard.slice(count).toSorted().join(' ')).toBe(others);
        for (const { combined } of analysis.assignments) {
          expect(combined.status).toBe(heard.includes(combined.role.id) ? 'either' : 'same');
        }
      });
    });
  }
});

/*
 * The published one: called once, and the surface to the field picks the half. Guard, tackle and tight end: the field half; guard
 * and tackle: the boundary corner. "Blitz of the Week #3", Blitzology, 16 Mar 2010.
 */
describe('the surface to the field picks the half', () => {
  const FIELD_SURFACE: readonly LookTest[] = [{ kind: 'bodies', side: 'call', compare: 'at-least', count: 3 }];

  /** The ball on the left hash, so that the field is to the right; the men stand as the half that is run has them. */
  function check(row: Row): Analysis {
    const way: Way = { ...RIGHT, call: row === FIELD_CROSS ? 'right' : 'left' };
    return analyse(
      frozen({
        ...setupOf(row, way),
        first: pressureOf(FIELD_CROSS, 'right'),
        second: pressureOf(BOUNDARY_CORNER, 'left'),
        coverage: shellOf(FIELD_CROSS),
        secondCoverage: shellOf(BOUNDARY_CORNER),
        combination: { kind: 'either-or', key: FIELD_SURFACE },
      }),
    );
  }

  it.each([
    ['three men', FIELD_CROSS, 'first', 'right'],
    ['two men', BOUNDARY_CORNER, 'second', 'left'],
  ] as const)('%s', (_surface, row, half, call) => {
    const analysis = check(row);
    expect(analysis.setup.spot).toBe('left');
    expect(analysis.choice?.ran).toBe(half);
    expect(elevenTold(analysis, row, call)).toEqual(row.men.map(({ man, gap, run, pass }) => [man, gap, run, pass]));
    expect(analysis.passCount).toEqual({ ...row.counts, free: 0 });
    expect(flagged(analysis)).toEqual([]);
    expect(unsureIn(analysis)).toBe('');
  });

  it.each([FIELD_CROSS, BOUNDARY_CORNER])(
    'three of four linemen, both inside backers, a safety and a corner hear it: $id',
    (row) => {
      const heard = check(row).choice?.mustHear ?? [];
      expect(heard.slice(0, 3).toSorted().join(' ')).toBe('BE BT FT');
      expect(heard.slice(3).toSorted().join(' ')).toBe('BC FS MI WI');
    },
  );

  it.each([FIELD_CROSS, BOUNDARY_CORNER])(
    'the field end, Sam, a safety and the field corner do the same in both: $id',
    (row) => {
      const same = check(row).assignments.filter(({ combined }) => combined.status === 'same');
      expect(
        same
          .map(({ combined }) => combined.role.id)
          .toSorted()
          .join(' '),
      ).toBe('FC FE SA SS');
    },
  );
});
