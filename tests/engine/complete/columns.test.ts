import { describe, expect, it } from 'vitest';
import {
  analyse,
  asPlayerId,
  type Assignment,
  type Coverage,
  type SideStep,
  type Tell,
} from '../../../src/engine/index.ts';
import { frozen, gapText, LOOKS, pressure, setup, tell, THREE_DEEP } from '../book.ts';

const RIGHT: readonly SideStep[] = [{ kind: 'fixed', side: 'right' }];
const NOTHING: Coverage = { ...THREE_DEEP, needs: [], tells: [] };

interface Row {
  readonly name: string;
  readonly man: string;
  readonly first: readonly Tell[];
  readonly second?: readonly Tell[];
  readonly coverage?: Coverage;
  /** Gaps, `two` if he plays two, how he takes a kick-out block, his support. */
  readonly run: string;
  readonly pass: Assignment['pass'];
}

/*
 * Against the run and against the pass, one job has two columns; force is a run fact and contain a pass fact (common practice,
 * no source). A tight end Y stands on the right, the call goes there.
 */
const ROWS: readonly Row[] = [
  {
    // The end of this front is the last man of the line and keeps the passer in; the nose only rushes (see below).
    name: 'an end told nothing plays his base and contains on his side',
    man: 'RE',
    first: [],
    run: 'C-right',
    pass: { kind: 'contain', side: 'right' },
  },
  { name: 'a linebacker told nothing plays his base', man: 'M', first: [], run: 'B-right', pass: { kind: 'none' } },
  { name: 'a corner told nothing has nothing', man: 'RC', first: [], run: '', pass: { kind: 'none' } },
  { name: 'the nose at base plays two', man: 'N', first: [], run: 'A-left A-right two', pass: { kind: 'rush' } },
  {
    name: 'the nose left with one plays one',
    man: 'N',
    first: [tell('inside-call', 'path', 'rush A-call')],
    run: 'A-left',
    pass: { kind: 'rush' },
  },
  {
    name: 'sent to one gap',
    man: 'RE',
    first: [tell('end-call', 'movement', 'rush B-call slant spill')],
    run: 'B-right spill',
    pass: { kind: 'rush' },
  },
  {
    name: 'sent to two',
    man: 'RE',
    first: [tell('end-call', 'movement', 'rush B-call+C-call two-gap')],
    run: 'B-right C-right two',
    pass: { kind: 'rush' },
  },
  {
    name: 'contain is on the side of his gap',
    man: 'LE',
    first: [tell('end-away', 'movement', 'contain C-away loop box')],
    run: 'C-left box',
    pass: { kind: 'contain', side: 'left' },
  },
  {
    name: 'a fit is no rush for a linebacker',
    man: 'M',
    first: [tell('inside-call', 'consequence', 'fit A-call fold')],
    run: 'A-right fold',
    pass: { kind: 'none' },
  },
  {
    name: 'an end who fits another gap still does on pass what his front has him do',
    man: 'RE',
    first: [tell('end-call', 'movement', 'fit B-call')],
    run: 'B-right',
    pass: { kind: 'contain', side: 'right' },
  },
  {
    name: 'a nose who fits still rushes if it is a pass',
    man: 'N',
    first: [tell('@N', 'movement', 'fit A-call')],
    run: 'A-right',
    pass: { kind: 'rush' },
  },
  {
    name: 'sent to rush, an end does not contain unless he is told to',
    man: 'LE',
    first: [tell('end-away', 'movement', 'rush C-away')],
    run: 'C-left',
    pass: { kind: 'rush' },
  },
  {
    name: 'a linebacker told nothing whom the shell needs in a zone plays run first: his gap stays his to fill',
    man: 'M',
    first: [],
    coverage: { ...THREE_DEEP, tells: [] },
    run: 'B-right',
    pass: { kind: 'zone', zone: 'hook', side: 'right' },
  },
  {
    name: 'a drop that fits an open gap',
    man: 'SS',
    first: [tell('outside-call', 'path', 'rush B-call')],
    coverage: THREE_DEEP,
    run: 'D-right force',
    pass: { kind: 'zone', zone: 'seam', side: 'right' },
  },
  {
    name: 'a drop with nothing left to fit',
    man: 'SS',
    first: [tell('outside-call', 'path', 'contain edge-call')],
    coverage: THREE_DEEP,
    run: 'force',
    pass: { kind: 'zone', zone: 'seam', side: 'right' },
  },
  {
    name: 'a drop to the middle',
    man: 'FS',
    first: [],
    coverage: THREE_DEEP,
    run: '',
    pass: { kind: 'zone', zone: 'middle', side: 'middle' },
  },
  {
    name: 'man with a gap of his own',
    man: 'SS',
    first: [tell('safety-call', 'path', 'man #2-call own D-call force')],
    run: 'D-right force',
    pass: { kind: 'man', receiver: asPlayerId('Y') },
  },
  {
    name: 'spy',
    man: 'M',
    first: [tell('inside-call', 'path', 'spy alley')],
    run: 'alley',
    pass: { kind: 'spy' },
  },
  {
    name: 'in conflict he shows the job that stands for now, the first one',
    man: 'N',
    first: [tell('@N', 'movement', 'rush A-call slant')],
    second: [tell('@N', 'consequence', 'rush A-away slant')],
    run: 'A-right',
    pass: { kind: 'rush' },
  },
  {
    name: 'in conflict between two gaps and one he shows the two of the first',
    man: 'N',
    first: [tell('@N', 'movement', 'rush A-call+A-away two-gap')],
    second: [tell('@N', 'movement', 'rush A-away slant')],
    run: 'A-left A-right',
    pass: { kind: 'rush' },
  },
  {
    name: 'in conflict between a drop and a rush, the drop first: no gap of the rush',
    man: 'S',
    first: [tell('outside-call', 'path', 'drop curl-flat-call')],
    second: [tell('outside-call', 'path', 'rush B-call')],
    run: '',
    pass: { kind: 'zone', zone: 'curl-flat', side: 'right' },
  },
  {
    name: 'in conflict between a drop that may fit and a rush, the drop first: no gap of the rush either',
    man: 'S',
    first: [tell('outside-call', 'path', 'drop curl-flat-call may D-call force')],
    second: [tell('outside-call', 'path', 'rush B-call')],
    run: 'force',
    pass: { kind: 'zone', zone: 'curl-flat', side: 'right' },
  },
  {
    name: 'in conflict, the rush first',
    man: 'S',
    first: [tell('outside-call', 'path', 'rush B-call spill')],
    second: [tell('outside-call', 'path', 'drop curl-flat-call force')],
    run: 'B-right spill',
    pass: { kind: 'rush' },
  },
];

function runText({ run }: Assignment): string {
  return [...run.gaps.map(gapText), run.twoGaps ? 'two' : '', run.edge ?? '', run.support ?? '']
    .filter((word) => word !== '')
    .join(' ');
}

describe('the two columns of a job', () => {
  it.each(ROWS)('$name', ({ man, first, second, coverage, run, pass }) => {
    const { assignments } = analyse(
      frozen(
        setup({
          look: LOOKS['11 tight end'],
          first: pressure('p', first, RIGHT),
          second: second === undefined ? null : pressure('q', second, RIGHT),
          coverage: coverage ?? NOTHING,
        }),
      ),
    );
    const found = assignments.find(({ aligned }) => aligned.role.letter === man);
    expect(found === undefined ? `no ${man}` : runText(found)).toBe(run);
    expect(found?.pass).toEqual(pass);
  });
});

describe('contain told without a gap', () => {
  it('has no side to contain on: a plain rush', () => {
    const noGap = tell('end-call', 'movement', 'contain C-call');
    const first = pressure(
      'p',
      [
        {
          ...noGap,
          cases: noGap.cases.map((each) =>
            each.job.kind === 'contain' ? { ...each, job: { ...each.job, gaps: [] } } : each,
          ),
        },
      ],
      RIGHT,
    );
    const { assignments } = analyse(frozen(setup({ look: LOOKS['11 tight end'], first, coverage: NOTHING })));
    const end = assignments.find(({ aligned }) => aligned.role.letter === 'RE');
    expect(end?.pass).toEqual({ kind: 'rush' });
    expect(end?.run.gaps).toEqual([]);
  });
});
