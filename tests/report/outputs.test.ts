import { describe, expect, test } from 'vitest';
import { analyse, asCallId, asLookId, type Setup } from '../../src/engine/index.ts';
import { buildReport, COMMON_WORDS, reportJson, toText, type ReportEntry } from '../../src/report/index.ts';
import { ANVIL, CALL, ID_MARK, NOSE, setupOf, SPREAD, TIGHT } from './fixtures.ts';
import { readTexts } from './walk.ts';

function entry(setup: Setup, call: ReportEntry['call'] = CALL): ReportEntry {
  const analysis = analyse(setup);
  return { call, analysis, report: buildReport(analysis, COMMON_WORDS) };
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
    expect(look?.findings[1]).toEqual({
      rule: 'line.two-jobs',
      severity: 'stop',
      who: [NOSE],
      gap: ['A left', 'A right'],
      players: [],
      because: {
        text: 'N is told two things: the first says slant to the A gap left, the second says rush the A gap right',
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
    expect(json.calls[1]?.looks[1]?.findings.map((finding) => finding.rule)).toEqual(['gap.open', 'line.two-jobs']);
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

  test('refuses to say one thing twice', () => {
    expect(() => reportJson([entry(setupOf()), entry(setupOf())])).toThrow('reported twice');
    expect(reportJson([])).toEqual({ format: 'gapwright-report', version: 1, calls: [] });
  });
});

describe('the report as text', () => {
  test('a line for each look, its findings below it, a count at the end', () => {
    const out = entry(setupOf({ look: SPREAD, first: { ...ANVIL, notAgainst: [SPREAD.id] } }));
    expect(toText([entry(setupOf({ spot: 'left' })), out])).toBe(
      [
        'Call         Look             Spot       Verdict',
        '-----------  ---------------  ---------  -------------------------',
        'Anvil Tongs  Tight end right  left hash  Stop: do not install',
        '  Stop   line.two-jobs: N is told two things: the first says slant to the A gap left, the second says rush the A gap right',
        '  Stop   gap.open: Nobody owns C gap right',
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
