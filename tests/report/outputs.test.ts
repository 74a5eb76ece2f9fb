import { describe, expect, test } from 'vitest';
import { analyse, asCallId, asLookId, fact, type Analysis, type Setup } from '../../src/engine/index.ts';
import { buildReport, COMMON_WORDS, reportJson, toText, type ReportEntry } from '../../src/report/index.ts';
import { ACROSS, ANVIL, CALL, ID_MARK, KNOWN, NOSE, setupOf, SPREAD, TIGHT } from './fixtures.ts';
import { readTexts } from './walk.ts';

const made = (analysis: Analysis, call: ReportEntry['call'] = CALL): ReportEntry => ({
  call,
  analysis,
  report: buildReport(analysis, COMMON_WORDS),
});
const entry = (setup: Setup, call?: ReportEntry['call']): ReportEntry => made(analyse(setup), call);

/** An analysis with the findings of two rules only, the second of them waived, and one thing that cannot be told. */
function chosen(setup: Setup): Analysis {
  const analysis = analyse(setup);
  return {
    ...analysis,
    findings: analysis.findings
      .filter(({ rule }) => rule === 'line.two-jobs' || rule === 'gap.open')
      .map((finding) => ({ ...finding, waived: finding.rule === 'gap.open' ? 'we live with it\u0007' : null })),
    undetermined: [
      {
        rules: ['gap.open', 'force.missing'],
        because: fact('nobody can say who has the edge', fact('he is told two things')),
        who: [NOSE],
        gaps: [],
        players: [],
        where: [],
      },
    ],
  };
}

const OTHER = { id: asCallId('zq-a-call'), name: 'Anvil' };
const ENTRIES = [
  entry(setupOf()),
  entry(setupOf({ spot: 'right' })),
  entry(setupOf({ spot: 'left' })),
  entry(setupOf({ look: SPREAD })),
  entry(setupOf({ second: null }), OTHER),
];

describe('the report as JSON', () => {
  const json = reportJson(ENTRIES);

  test('has the agreed shape', () => {
    expect(Object.keys(json)).toEqual(['format', 'version', 'calls']);
    expect(json).toMatchObject({ format: 'gapwright-report', version: 1 });
    const look = json.calls[1]?.looks[1];
    expect(look).toMatchObject({
      id: TIGHT.id,
      spot: 'left',
      verdict: 'stop',
      callSide: 'right',
      secondCallSide: 'right',
    });
    expect(look?.jobs[1]).toEqual({
      role: NOSE,
      letter: 'N',
      aligns: '0',
      run: 'A gap left',
      pass: 'rush lane',
      toldBy: 'first',
    });
    expect(look?.findings.find((finding) => finding.rule === 'line.two-jobs')).toEqual({
      rule: 'line.two-jobs',
      severity: 'stop',
      who: [NOSE],
      gap: ['A left', 'A right'],
      players: [],
      because: {
        text: 'N is told two things: Anvil says slant to the A gap left, Tongs says rush the A gap right',
        because: [expect.objectContaining({ text: 'A lineman is told two things' })],
      },
      waived: null,
    });
    expect(json.calls[0]?.looks[0]?.secondCallSide).toBeNull();
  });

  test('is in an order of its own, so the order of checking does not show', () => {
    expect(json.calls.map((call) => [call.id, call.looks.map((look) => `${look.id} ${look.spot}`)])).toEqual([
      [OTHER.id, [`${TIGHT.id} middle`]],
      [CALL.id, [`${SPREAD.id} middle`, `${TIGHT.id} left`, `${TIGHT.id} middle`, `${TIGHT.id} right`]],
    ]);
    expect(JSON.stringify(reportJson([...ENTRIES].reverse()))).toBe(JSON.stringify(json));
    const rules = json.calls[1]?.looks[1]?.findings
      .filter(({ severity }) => severity === 'stop')
      .map(({ rule }) => rule);
    expect(rules).toContain('gap.open');
    expect(rules).toEqual(rules?.toSorted());
  });

  test('holds nothing that JSON drops, and ids only where programs look for them', () => {
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    for (const text of readTexts(json)) expect(text).not.toContain(ID_MARK);
  });

  test('says a tie and a look left out', () => {
    const tie = entry(setupOf({ first: { ...ANVIL, callSide: [] }, second: null }));
    expect(reportJson([tie]).calls[0]?.looks[0]?.callSide).toBe('tie');
    const out = entry(setupOf({ first: { ...ANVIL, notAgainst: [TIGHT.id] } }));
    expect(reportJson([out]).calls[0]?.looks[0]).toMatchObject({ verdict: 'left-out', findings: [] });
  });

  test('waived findings are there with their reason, and what cannot be told beside them', () => {
    const look = reportJson([made(chosen(setupOf()))]).calls[0]?.looks[0];
    expect(look?.findings.map(({ rule, waived }) => [rule, waived])).toEqual([
      ['gap.open', 'we live with it\u0007'],
      ['line.two-jobs', null],
    ]);
    expect(look?.cannotTell).toEqual([
      {
        rules: ['gap.open', 'force.missing'],
        who: [NOSE],
        gap: [],
        players: [],
        because: {
          text: 'Nobody can say who has the edge',
          because: [{ text: 'He is told two things', because: [] }],
        },
      },
    ]);
  });

  test('the sections of the report are in it as they are', () => {
    const one = entry(setupOf({ look: { ...TIGHT, ...KNOWN, motion: ACROSS } }));
    const look = reportJson([one]).calls[0]?.looks[0];
    const { checkOut, choice, motion, coverage, runs, protections } = one.report;
    expect(look).toMatchObject({ checkOut, choice, motion, coverage, runs, protections });
    expect(look?.runs).toHaveLength(KNOWN.runs.length);
  });

  test('refuses to say one thing twice', () => {
    expect(() => reportJson([entry(setupOf()), entry(setupOf())])).toThrow('reported twice');
    expect(reportJson([])).toEqual({ format: 'gapwright-report', version: 1, calls: [] });
  });
});

describe('the report as text', () => {
  test('a line for each look, its findings below it, a count at the end', () => {
    const out = entry(setupOf({ look: SPREAD, first: { ...ANVIL, notAgainst: [SPREAD.id] } }));
    expect(toText([made(chosen(setupOf({ spot: 'left' }))), out])).toBe(
      [
        'Call         Look             Spot       Verdict',
        '-----------  ---------------  ---------  -------------------------',
        'Anvil Tongs  Tight end right  left hash  Stop: do not install',
        '  Stop   line.two-jobs: N is told two things: Anvil says slant to the A gap left, Tongs says rush the A gap right',
        '  ?      gap.open, force.missing: Nobody can say who has the edge',
        '         1 waived',
        'Anvil Tongs  Two by two       middle     Not run against this look',
        '',
        'Checked: 2 (1 stop: do not install; 1 not run against this look)',
        '',
      ].join('\n'),
    );
  });

  test('nothing checked is said to be nothing', () => {
    expect(toText([])).toBe('Call  Look  Spot  Verdict\n----  ----  ----  -------\n\nChecked: 0\n');
  });

  test('names from a file cannot steer the terminal', () => {
    const look = { ...TIGHT, id: asLookId('zq-odd'), name: 'Tight\u001b[31m\nred\u202e' };
    const text = toText([entry(setupOf({ look }), { ...CALL, name: 'An\rvil' })]);
    expect(text).toContain('An vil  Tight [31m red ');
    expect(text.replaceAll('\n', '')).not.toMatch(/\p{Cc}|\p{Cf}/u);
  });
});
