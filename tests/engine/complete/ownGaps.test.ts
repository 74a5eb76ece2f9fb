import { describe, expect, it } from 'vitest';
import {
  analyse,
  type Analysis,
  type Coverage,
  type OwnedGap,
  type Place,
  type Pressure,
  type SideStep,
  type Tell,
} from '../../../src/engine/index.ts';
import { frozen, gapText, LOOKS, pressure, ruleJob, sayAll, setup, tell, THREE_DEEP, who } from '../book.ts';

/*
 * Who has which gap of the odd front: ends C, then B; nose both A; outside backers the edge, then C; inside backers B, then
 * A; safeties the edge; corners none. `!` sent, `=` his base gap, `+` filled in, `?` in conflict, `/2` one of two he plays;
 * an open gap shows the gaps of its proof and the men who can reach them.
 */
function owners(owned: OwnedGap): string {
  if (owned.proof !== null) {
    return `open: ${owned.proof.gaps.map(gapText).join('+')} for ${owned.proof.reachable.join('+') || 'nobody'}`;
  }
  const how = { told: '!', base: '=', filled: '+' };
  return owned.owners
    .map((owner) => `${owner.role}${how[owner.how]}${owner.sure ? '' : '?'}${owner.shared ? '/2' : ''}`)
    .join(' ');
}

const print = ({ gaps }: Analysis): readonly string[] => gaps.map((owned) => `${gapText(owned.gap)} ${owners(owned)}`);

const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];
const NOTHING: Coverage = { ...THREE_DEEP, needs: [], tells: [] };

interface Row {
  readonly name: string;
  readonly look: keyof typeof LOOKS;
  readonly first: readonly Tell[];
  readonly second?: readonly Tell[];
  readonly coverage?: Coverage;
  readonly gaps: readonly string[];
}

/*
 * A two-gap nose in a 3-4 has both A, the ends C, the inside backers B, the outside backers the edge: r/footballstrategy,
 * "Run Fitting a 3-4/5-2 (Odd) Defense", 30 May 2025; "Upon further review", GTSwarm. What is filled in when somebody is sent
 * elsewhere is common practice, no source: the nearest man who may.
 */
const ROWS: readonly Row[] = [
  {
    name: 'nobody told anything: the front at base',
    look: '10 doubles',
    first: [],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right M=', 'C-right RE='],
  },
  {
    name: 'a tight end adds D, the outside backer on him has it',
    look: '11 tight end',
    first: [],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right M=', 'C-right RE=', 'D-right S='],
  },
  {
    name: 'a wing adds E: the outside backer slides out, the safety cannot take D for him, so he takes the edge',
    look: '12 wing',
    first: [],
    gaps: [
      'C-left LE=',
      'B-left W=',
      'A-left N=/2',
      'A-right N=/2',
      'B-right M=',
      'C-right RE=',
      'D-right open: D-right for nobody',
      'E-right S=',
    ],
  },
  {
    name: 'an inside backer is sent to A: the nose keeps the other A alone, and the end gives B its man',
    look: '10 doubles',
    first: [tell('inside-call', 'path', 'rush A-call')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=', 'A-right M!', 'B-right RE+', 'C-right S='],
  },
  {
    name: 'an end sent in: the outside backer has the edge',
    look: '10 doubles',
    first: [tell('end-call', 'movement', 'rush B-call slant')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right RE!', 'C-right S='],
  },
  {
    name: 'an inside backer may take his second gap when the count needs him there',
    look: '10 doubles',
    first: [tell('@N', 'movement', 'rush A-call slant')],
    gaps: ['C-left J=', 'B-left LE+', 'A-left W+', 'A-right N!', 'B-right M=', 'C-right RE='],
  },
  {
    name: 'two sent to one gap both stand in it',
    look: '10 doubles',
    first: [tell('inside-call', 'path', 'rush B-call'), tell('outside-call', 'path', 'rush B-call')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right M! S!', 'C-right RE='],
  },
  {
    name: 'a man sent to two gaps plays half of each',
    look: '10 doubles',
    first: [tell('end-call', 'movement', 'rush B-call+C-call two-gap')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right RE!/2', 'C-right RE!/2'],
  },
  {
    name: 'a lineman told two gaps counts for both, surely for neither',
    look: '10 doubles',
    first: [tell('@N', 'movement', 'rush A-call slant')],
    second: [tell('@N', 'consequence', 'rush A-away slant')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N!?', 'A-right N!?', 'B-right M=', 'C-right RE='],
  },
  {
    name: 'told the same gap as a rush and as a fit he is there once, unsure',
    look: '10 doubles',
    first: [tell('end-call', 'movement', 'rush C-call')],
    second: [tell('end-call', 'movement', 'fit C-call')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right M=', 'C-right RE!?'],
  },
  {
    name: 'told a gap that is not there he keeps his base',
    look: '10 doubles',
    first: [tell('end-call', 'movement', 'rush D-call')],
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right M=', 'C-right RE='],
  },
  {
    name: 'a fit is his',
    look: '10 doubles',
    first: [tell('inside-away', 'path', 'fit A-away'), tell('@N', 'movement', 'rush A-call')],
    gaps: ['C-left J=', 'B-left LE+', 'A-left W!', 'A-right N!', 'B-right M=', 'C-right RE='],
  },
  {
    name: 'a shell man’s own gap is his',
    look: '10 doubles',
    first: [],
    coverage: {
      ...THREE_DEEP,
      tells: [{ who: who('inside-call'), cases: [{ when: [], job: ruleJob('drop hook-call own B-call') }] }],
    },
    gaps: ['C-left LE=', 'B-left W=', 'A-left N=/2', 'A-right N=/2', 'B-right M!', 'C-right RE='],
  },
  {
    name: 'a shell man fits what nobody has, the first he may',
    look: '11 tight end',
    first: [tell('outside-call', 'path', 'rush B-call'), tell('end-call', 'movement', 'contain C-call')],
    coverage: THREE_DEEP,
    gaps: ['C-left LE=', 'B-left W+', 'A-left N=/2', 'A-right N=/2', 'B-right S!', 'C-right RE!', 'D-right SS+'],
  },
  {
    name: 'a shell man who may fit nothing leaves it open',
    look: '10 doubles',
    first: [tell('end-away', 'movement', 'rush B-away slant')],
    coverage: {
      ...NOTHING,
      tells: [
        { who: who('outside-away'), cases: [{ when: [], job: ruleJob('drop seam-away') }] },
        { who: who('safety-away'), cases: [{ when: [], job: ruleJob('drop middle') }] },
      ],
    },
    gaps: ['C-left open: C-left for nobody', 'B-left LE!', 'A-left N=/2', 'A-right N=/2', 'B-right M=', 'C-right RE='],
  },
  {
    name: 'three gaps for two men: the set that proves it',
    look: '10 doubles',
    first: [tell('@N', 'movement', 'rush A-call slant')],
    coverage: {
      ...NOTHING,
      tells: [
        { who: who('outside-away'), cases: [{ when: [], job: ruleJob('drop seam-away') }] },
        { who: who('safety-away'), cases: [{ when: [], job: ruleJob('drop middle') }] },
      ],
    },
    gaps: [
      'C-left LE=',
      'B-left W=',
      'A-left open: A-left+B-left+C-left for LE+W',
      'A-right N!',
      'B-right M=',
      'C-right RE=',
    ],
  },
];

const right = (tells: readonly Tell[]): Pressure => pressure('p', tells, RIGHT);

function run(row: Pick<Row, 'look' | 'first' | 'second' | 'coverage'>): Analysis {
  return analyse(
    frozen(
      setup({
        look: LOOKS[row.look],
        first: right(row.first),
        second: row.second === undefined ? null : right(row.second),
        coverage: row.coverage ?? NOTHING,
      }),
    ),
  );
}

describe('who has which gap', () => {
  it.each(ROWS)('$name', (row) => {
    expect(print(run(row))).toEqual(row.gaps);
  });
});

const WHY: readonly (readonly [
  name: string,
  row: Pick<Row, 'look' | 'first' | 'second' | 'coverage'>,
  gap: string,
  why: readonly string[],
])[] = [
  [
    'his base gap',
    { look: '10 doubles', first: [] },
    'C-right',
    ['RE keeps his base gap', 'neither pressure tells him anything'],
  ],
  [
    'filled in',
    { look: '10 doubles', first: [tell('inside-call', 'path', 'rush A-call')] },
    'B-right',
    ['RE may fit it and nobody nearer has to', 'nobody is sent there', 'neither pressure tells him anything'],
  ],
  [
    'sent',
    { look: '10 doubles', first: [tell('inside-call', 'path', 'rush A-call')] },
    'A-right',
    [
      'M is sent there',
      'first tells him: rush A-right',
      'the pressure sends him (his rule 1)',
      'the side is right',
      'the rule says right',
    ],
  ],
];

describe('why he has it', () => {
  it.each(WHY)('%s', (_name, row, gap, why) => {
    const [owner] = run(row).gaps.find((owned) => gapText(owned.gap) === gap)?.owners ?? [];
    expect(owner === undefined ? [] : sayAll(owner.because)).toEqual(why);
  });
});

/*
 * Whether a call side is decided or a tie, and whichever way the look leans then, the same men are free and the gaps go to
 * the same ones: everybody at base has a side of his own.
 */
const SIDES: readonly (readonly [name: string, look: string, callSide: readonly SideStep[], spot: Place])[] = [
  ['called right', LOOKS['10 doubles'], RIGHT, 'middle'],
  ['called left', LOOKS['10 doubles'], [{ kind: 'fixed', side: 'left' }], 'middle'],
  [
    'a tie, passing strength left',
    'line wr:X@-18 wr:H@-9,-1.5 wr:Y@-12,-1.5 wr:Z@18 qb:Q@0,-5 rb:T@1.5,-5',
    [],
    'left',
  ],
  ['a tie, back right', LOOKS['10 doubles'], [], 'right'],
  ['a tie, field left', 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-4 rb:T@0,-7', [], 'right'],
  ['a tie, nothing leans', 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-4 rb:T@0,-7', [], 'middle'],
];

describe('the front at base, whatever the call side', () => {
  it.each(SIDES)('%s', (_name, look, callSide, spot) => {
    const analysis = analyse(frozen(setup({ look, first: pressure('p', [], callSide), coverage: NOTHING, spot })));
    // The inside backers change sides with the strength; whoever stands there has B.
    const backer = (side: 'left' | 'right'): string =>
      analysis.assignments.find(({ aligned }) => aligned.role.group === 'inside' && aligned.place === side)?.aligned
        .role.letter ?? '';
    expect(print(analysis)).toEqual([
      'C-left LE=',
      `B-left ${backer('left')}=`,
      'A-left N=/2',
      'A-right N=/2',
      `B-right ${backer('right')}=`,
      'C-right RE=',
    ]);
  });
});
