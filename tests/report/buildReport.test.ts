import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  analyse,
  fact,
  mirrorSetup,
  standardChecks,
  type Analysis,
  type Assignment,
  type Setup,
} from '../../src/engine/index.ts';
import { buildReport, COMMON_WORDS, type JobRow, type Report } from '../../src/report/index.ts';
import { anySetup } from './arbitrary.ts';
import {
  ANVIL,
  gapOn,
  ID_MARK,
  LEFT_END,
  man,
  NOSE,
  RIGHT_END,
  roleOf,
  rush,
  setupOf,
  SPREAD,
  tells,
  TIGHT,
  TONGS,
} from './fixtures.ts';
import { frozen, readTexts } from './walk.ts';

const reportOf = (setup: Setup): Report => buildReport(analyse(setup), COMMON_WORDS);

describe('the pair table', () => {
  test('a lineman told two things: what each says, and the verdict', () => {
    const [left, nose, right, ...others] = reportOf(setupOf()).linemen;
    expect(others).toEqual([]);
    expect(nose).toMatchObject({
      role: NOSE,
      letter: 'N',
      name: 'nose',
      first: 'Slant to the A gap left',
      second: 'Rush the A gap right',
      status: 'conflict',
      verdict: 'Two jobs',
    });
    expect(nose?.why.because.map((why) => why.text)).toEqual([
      'The first says: slant to the A gap left',
      'The second says: rush the A gap right',
    ]);
    expect(left).toMatchObject({ role: LEFT_END, first: 'Nothing', second: 'Nothing', verdict: 'Base job' });
    expect(right).toMatchObject({
      role: RIGHT_END,
      first: 'Slant to the A gap right',
      second: 'Nothing',
      verdict: 'Told once',
    });
  });

  test('one pressure alone leaves the second column empty', () => {
    const report = reportOf(setupOf({ second: null }));
    expect(report.linemen.map((row) => row.second)).toEqual(['—', '—', '—']);
    expect(report.sides.map((side) => side.pressure)).toEqual(['Anvil']);
  });

  test.each([
    ['Same', rush(gapOn('away', 'A'), 'slant')],
    ['Two ways', rush(gapOn('away', 'A'))],
    ['Two jobs', rush(gapOn('call', 'B'), 'slant')],
    ['Nobody there', rush({ kind: 'outside', side: 'call', body: 'wing' })],
  ])('the nose, told again: %s', (verdict, job) => {
    const second = { ...TONGS, tells: [tells(man('nose'), job, 'movement')] };
    const row = reportOf(setupOf({ second })).linemen.find((each) => each.role === NOSE);
    expect(row?.verdict).toBe(verdict);
  });

  test('a rule that points at nobody says so in the cell', () => {
    const job = rush({ kind: 'outside', side: 'call', body: 'wing' });
    const second = { ...TONGS, tells: [tells(man('nose'), job)] };
    const row = reportOf(setupOf({ second })).linemen.find((each) => each.role === NOSE);
    expect(row?.second).toBe('There is no wing on the right');
  });
});

describe('the job table', () => {
  test('the eleven of a pair: where, both columns, and who told him', () => {
    const rows = reportOf(setupOf()).jobs.map((row) =>
      [row.letter, row.room, row.aligns, row.run, row.pass, row.toldBy].join(' | '),
    );
    expect(rows).toEqual([
      'E | Line | 4i left | B gap left | rush lane | base',
      'N | Line | 0 | A gap left | rush lane | first',
      'E | Line | 4i right | A gap right | rush lane | first',
      'S | Linebackers | ghost 7 left | C gap left; force | man on #2 left | shell',
      'M | Linebackers | 30 left | A gap left | rush lane | second',
      'W | Linebackers | 30 right | B gap right | rush lane | first',
      'J | Linebackers | 8 right | D gap right, spill | contain right | first',
      'C | Secondary | on #1 left, inside, 7 yd | — | deep third left | shell',
      'F | Secondary | on #2 left, inside, 11 yd | — | deep middle | shell',
      'R | Secondary | on #2 right, outside, 11 yd | force; D gap right if nobody has it | seam right | shell',
      'C | Secondary | on #1 right, inside, 7 yd | — | deep third right | shell',
    ]);
  });

  const jobOf = (report: Report, key: string): JobRow | undefined =>
    report.jobs.find((row) => row.role === roleOf(key));

  test('a base job is said from both columns', () => {
    const quiet = { ...ANVIL, tells: [] };
    const report = reportOf(setupOf({ first: quiet, second: null, look: SPREAD }));
    expect(jobOf(report, 'end-l')?.job).toBe('Rush the B gap left');
    expect(jobOf(report, 'nose')?.job).toBe('Two-gap: A gap left and A gap right');
    expect(jobOf(report, 'nose')?.why.because.map((why) => why.text)).toContain('A gap left: N keeps his base gap');
    expect(jobOf(report, 'jet')?.job).toBe('Fit the C gap right');
    expect(jobOf(report, 'mike')?.job).toBe('No gap and no receiver of his own');
  });

  test('a gap the engine gives on top of what is told is added', () => {
    const first = { ...ANVIL, tells: ANVIL.tells.filter((tell) => tell.who !== ANVIL.tells[0]?.who) };
    const quiet = setupOf({ first, second: null });
    const front = {
      ...quiet.front,
      roles: quiet.front.roles.filter((entry) => entry.role !== roleOf('jet')),
    };
    const report = reportOf({ ...quiet, front });
    const rover = jobOf(report, 'rover');
    expect(rover?.run).toBe('D gap right; force');
    expect(rover?.job).toBe('Drop to the seam right; force; D gap right if nobody has it');
    expect(report.gaps.find((row) => row.name === 'D gap right')?.owners).toBe('R (filled in)');
  });

  test.each<[string, Partial<Assignment>]>([
    ['Rush the passer', { pass: { kind: 'rush' } }],
    ['Contain', { pass: { kind: 'contain', side: 'left' } }],
    ['Drop to the hook left', { pass: { kind: 'zone', zone: 'hook', side: 'left' } }],
    ['Spy the passer', { pass: { kind: 'spy' } }],
    ['Fit the run; alley', { run: { gaps: [], twoGaps: false, edge: null, support: 'alley' } }],
    [
      'Fit both, two-gap: B gap left and C gap left',
      {
        run: {
          gaps: [
            { side: 'left', letter: 'B' },
            { side: 'left', letter: 'C' },
          ],
          twoGaps: true,
          edge: null,
          support: null,
        },
      },
    ],
  ])('both columns of a man told nothing, by hand: %s', (sentence, columns) => {
    const analysis = analyse(setupOf({ first: { ...ANVIL, tells: [] }, second: null }));
    const assignments = analysis.assignments.map((each): Assignment =>
      each.aligned.role.id === LEFT_END
        ? { ...each, run: { gaps: [], twoGaps: false, edge: null, support: null }, pass: { kind: 'none' }, ...columns }
        : each,
    );
    expect(jobOf(buildReport({ ...analysis, assignments }, COMMON_WORDS), 'end-l')?.job).toBe(sentence);
  });
});

test('gaps say who has them, who may not come, and which are open', () => {
  const rows = reportOf(setupOf()).gaps;
  expect(rows.map((row) => `${row.name}: ${row.owners}`)).toEqual([
    'C gap left: S',
    'B gap left: E (left end)',
    'A gap left: N (if he comes), M',
    'A gap right: N (if he comes), E (right end)',
    'B gap right: W',
    'C gap right: nobody',
    'D gap right: J',
  ]);
  expect(rows.filter((row) => row.open).map((row) => row.name)).toEqual(['C gap right']);
});

describe('findings', () => {
  test('title and meaning come from the check, the sentence and its reasons from the finding', () => {
    const report = reportOf(setupOf());
    expect(report.verdictText).toBe('Stop: do not install');
    const [first] = report.findings;
    const check = standardChecks.find((each) => each.id === 'line.two-jobs');
    expect(first).toMatchObject({
      rule: 'line.two-jobs',
      severity: 'stop',
      title: check?.title,
      matters: check?.matters,
    });
    expect(first?.text).toBe(
      'N is told two things: Anvil says slant to the A gap left, Tongs says rush the A gap right',
    );
    expect(first?.who).toEqual([NOSE]);
    expect(first?.why.map((why) => why.text)).toEqual(['A lineman is told two things']);
    expect(report.checked).toEqual(standardChecks.map((each) => each.title));
  });

  test('one rule about the same people twice has two keys', () => {
    const analysis = analyse(setupOf());
    const [finding] = analysis.findings;
    const twice: Analysis = { ...analysis, findings: analysis.findings.flatMap((each) => [each, each]) };
    const keys = buildReport(twice, COMMON_WORDS).findings.map((row) => row.key);
    expect(finding).toBeDefined();
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('a finding of a check nobody knows is a broken promise', () => {
    const analysis = analyse(setupOf());
    const findings = analysis.findings.map((finding) => ({ ...finding, rule: 'nobody.knows' }));
    expect(() => buildReport({ ...analysis, findings }, COMMON_WORDS)).toThrow('No check is called nobody.knows');
  });

  test('a look that is left out is not judged', () => {
    const first = { ...ANVIL, notAgainst: [TIGHT.id] };
    const report = reportOf(setupOf({ first }));
    expect(report).toMatchObject({
      verdict: 'left-out',
      verdictText: 'Not run against this look',
      findings: [],
      checked: [],
    });
    expect(report.jobs).toHaveLength(11);
  });
});

describe('the call side', () => {
  test('is said for each pressure', () => {
    expect(reportOf(setupOf()).sides.map(({ pressure, text }) => [pressure, text])).toEqual([
      ['Anvil', 'Call side: right'],
      ['Tongs', 'Call side: right'],
    ]);
    expect(reportOf(setupOf({ turn: 'opposite' })).sides[1]?.text).toBe('Call side: left');
  });

  test('a tie is said to be one', () => {
    const first = { ...ANVIL, callSide: [] };
    expect(reportOf(setupOf({ first, second: null })).sides[0]).toEqual({
      pressure: 'Anvil',
      text: 'Call side: a tie',
      why: { text: fact('No step of the rule decides a side').template, because: [] },
    });
  });
});

describe('for any call in any look', () => {
  test('no text a reader sees holds an id or a hole, and the keys of findings are unique', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        const report = reportOf(setup);
        for (const text of readTexts(report)) {
          expect(text).not.toContain(ID_MARK);
          expect(text).not.toMatch(/[{}]|undefined|null|NaN|\[object/);
          expect(text.trim()).toBe(text);
          expect(text).not.toBe('');
        }
        expect(new Set(report.findings.map((row) => row.key)).size).toBe(report.findings.length);
      }),
    );
  });

  test('the same analysis gives the same bytes and stays as it was', () => {
    fc.assert(
      fc.property(anySetup, (setup) => {
        const analysis = frozen(analyse(setup));
        const bytes = JSON.stringify(buildReport(analysis, frozen(COMMON_WORDS)));
        expect(JSON.stringify(buildReport(structuredClone(analysis), COMMON_WORDS))).toBe(bytes);
      }),
    );
  });

  test('the mirrored call reads mirrored', () => {
    const cells = ({ role, aligns, run, pass }: JobRow): string => `${role}: ${aligns} | ${parts(run)} | ${pass}`;
    // Two gaps are listed from the outside in either way; the order is not part of the job.
    const parts = (run: string): string =>
      run
        .split(/ and |, /)
        .sort()
        .join();
    const swapped = (text: string): string =>
      text.replace(/\b(left|right)\b/g, (side) => (side === 'left' ? 'right' : 'left'));
    for (const setup of [setupOf(), setupOf({ look: SPREAD }), setupOf({ turn: 'opposite' })]) {
      const mirrored = reportOf(mirrorSetup(setup)).jobs.map((row) => cells({ ...row, run: swapped(row.run) }));
      const plain = reportOf(setup).jobs.map((row) =>
        cells({ ...row, aligns: swapped(row.aligns), pass: swapped(row.pass) }),
      );
      expect([...mirrored].sort()).toEqual([...plain].sort());
    }
  });
});
