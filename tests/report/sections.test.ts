import { describe, expect, test } from 'vitest';
import { analyse, evidenceOf, fact, type Analysis, type Look, type Setup } from '../../src/engine/index.ts';
import { BY_RULE, buildReport, COMMON_WORDS, type Report, type Why } from '../../src/report/index.ts';
import { ACROSS, ANVIL, CALL, KNOWN, NEEDY_SHELL, NOSE, playerOf, setupOf, SPREAD, TIGHT, TONGS } from './fixtures.ts';
import { readTexts } from './walk.ts';

const reportOf = (setup: Setup): Report => buildReport(analyse(setup), COMMON_WORDS);
const inLook = (look: Partial<Look>, more: Partial<Setup> = {}): Report =>
  reportOf(setupOf({ ...more, look: { ...TIGHT, ...look } }));

describe('a call of two that does not have both run', () => {
  const attached = { kind: 'bodies', side: 'call', compare: 'at-least', count: 3 } as const;
  const either = (key: readonly (typeof attached)[], look = TIGHT): Report =>
    reportOf(setupOf({ combination: { kind: 'either-or', key }, look }));

  test('says which half is run, by what key, and who must hear it, linemen first', () => {
    expect(either([attached]).choice).toMatchObject({
      text: 'Anvil is run',
      key: 'Anvil if a man is attached outside the tackle on the call side, otherwise Tongs',
      hear: 'N, E (right end), M, W and J must hear the check',
      why: { text: 'The key holds, so Anvil is run' },
    });
    expect(either([attached], SPREAD).choice).toMatchObject({
      text: 'Tongs is run',
      why: { text: 'The key does not hold, so Tongs is run' },
    });
    expect(either([]).choice?.key).toBe('Anvil whatever the look');
  });

  test('the pair table has every man: both tellings, what stands, and that he goes by the key', () => {
    const { pair, jobs, linemen } = either([attached]);
    expect(pair.map((row) => row.role)).toEqual(jobs.map((row) => row.role));
    expect(pair.filter((row) => row.room === 'Line')).toEqual(linemen);
    expect(pair.find((row) => row.role === NOSE)).toMatchObject({
      first: 'Slant to the A gap left',
      second: 'Rush the A gap right',
      stands: 'Slant to the A gap left',
      verdict: 'By the key',
    });
  });

  test('halves that say the same need no check', () => {
    const same = { ...TONGS, tells: ANVIL.tells };
    const choice = reportOf(setupOf({ second: same, combination: { kind: 'either-or', key: [] } })).choice;
    expect(choice?.hear).toBe('Nobody: both halves tell everybody the same');
  });

  test('both run, or one alone: nothing to choose', () => {
    expect(reportOf(setupOf()).choice).toBeNull();
    expect(reportOf(setupOf({ second: null })).choice).toBeNull();
  });
});

describe('the check-out table', () => {
  test.each<[string, NonNullable<Setup['checkOut']>['action']]>([
    ['Trips: run it as called', { kind: 'run' }],
    ['Trips: Tongs is turned the other way', { kind: 'turn' }],
    ['Trips: the two change places, Anvil is now the first', { kind: 'swap' }],
    ['Trips: change the coverage to Three deep', { kind: 'coverage', coverage: NEEDY_SHELL.id }],
    ['Trips: check to Anvil and Tongs', { kind: 'check-to', call: CALL.id }],
  ])('%s', (text, action) => {
    const note = reportOf(setupOf({ checkOut: { formation: 'trips', action } })).checkOut;
    expect(note?.text).toBe(text);
    expect(note?.why.text).toBe("This look counts as trips, and the call's check-out table has a row for it");
  });

  test('without a row nothing is said', () => {
    expect(reportOf(setupOf()).checkOut).toBeNull();
  });
});

describe('the motion of a look', () => {
  test('says where he goes, what becomes of the call sides, and who moves for it', () => {
    const turned: Setup['first']['callSide'] = [{ kind: 'strength', by: 'receivers', toward: 'to' }];
    const report = inLook(
      { players: SPREAD.players, motion: ACROSS },
      { first: { ...ANVIL, callSide: [...turned, { kind: 'fixed', side: 'left' }] } },
    );
    expect(report.motion?.text).toBe('The receiver H goes 15 yd to the right, across the ball');
    expect(report.motion?.sides).toEqual([
      { text: 'Call side of Anvil: left before, right after', turns: true },
      { text: 'Call side of Tongs: right before and after', turns: false },
    ]);
    expect(report.motion?.moves).toMatch(/^Everybody but .* has another spot or job after it$/);
    expect(report.motion?.players).toEqual([playerOf('h')]);
  });

  test('a step that moves nobody', () => {
    const motion = inLook({ motion: { player: playerOf('z'), to: { x: 12.1, y: -1.5 } } }, { first: ANVIL }).motion;
    expect(motion?.text).toBe('The receiver Z goes 0.1 yd to the right');
  });

  test('where most of them move, it says who does not', () => {
    const analysis = analyse(setupOf({ look: { ...TIGHT, motion: ACROSS } }));
    const ids = analysis.assignments.map(({ aligned }) => aligned.role.id);
    const moves = (moved: typeof ids): string | undefined =>
      buildReport(
        { ...analysis, motion: { first: analysis.first.side, second: analysis.first.side, moved } },
        COMMON_WORDS,
      ).motion?.moves;
    expect(moves([])).toBe('No defender moves for it');
    expect(moves([NOSE])).toBe('N has another spot or job after it');
    expect(moves(ids.filter((id) => id !== NOSE))).toBe('Everybody but N has another spot or job after it');
    expect(moves(ids)).toBe('Everybody has another spot or job after it');
  });

  test('no motion, nothing said', () => {
    expect(reportOf(setupOf()).motion).toBeNull();
  });
});

describe('coverage', () => {
  test('every receiver with who answers him and how; every zone with who drops to it', () => {
    const { coverage } = inLook({}, { coverage: NEEDY_SHELL, second: null });
    expect(coverage.shell).toBe('Three deep, three under');
    expect(coverage.receivers.map((row) => row.text)).toEqual([
      'Number 1 left X: C (left corner), out of the deep third',
      'Number 2 left H: S, man to man',
      'Number 1 right Z: C (right corner), out of the deep third',
      'Number 2 right Y: R, out of the seam',
      'The back B: M, out of the middle hook',
    ]);
    expect(coverage.zones.map(({ zone, by, how }) => `${zone}: ${by}, ${String(how)}`)).toEqual([
      'deep third right: C (right corner), told',
      'deep third left: C (left corner), told',
      'deep middle: F, told',
      'seam right: R, told',
      'middle hook: M, filled in',
    ]);
    expect(coverage).toMatchObject({ headline: 'Every receiver has somebody', open: false });
  });

  test('what nobody has is said first', () => {
    const { coverage } = inLook({}, { coverage: NEEDY_SHELL });
    expect(coverage.open).toBe(true);
    expect(coverage.headline).toBe('Nobody has the back B; nobody drops to the middle hook');
    expect(coverage.receivers.find((row) => row.open)?.text).toBe('The back B: nobody');
  });

  test('counts who does what: rush + under + deep + man + free = 11 (arithmetic of eleven men)', () => {
    for (const look of [TIGHT, SPREAD]) {
      const { count } = reportOf(setupOf({ look })).coverage;
      const numbers = [...count.matchAll(/\d+/g)].map((match) => Number(match[0]));
      expect(numbers.reduce((sum, number) => sum + number, 0)).toBe(11);
      expect(count).toMatch(/^\d rush(, \d (under|deep|man|free))*$/);
    }
  });

  test('a man who drops where the shell asks nobody to is listed all the same', () => {
    const zones = reportOf(setupOf()).coverage.zones;
    expect(zones.map((row) => row.zone)).toContain('seam right');
    expect(zones.every((row) => row.how === 'told')).toBe(true);
  });

  test('a rusher who may leave with the back answers him', () => {
    const peeling = { ...ANVIL, tells: ANVIL.tells.map((tell) => ({ ...tell, cases: tell.cases.map(peel) })) };
    const report = inLook({ players: SPREAD.players }, { first: peeling, second: null });
    expect(report.coverage.receivers.find((row) => row.receiver === 'the back B')?.text).toBe(
      'The back B: J, leaves his rush with him',
    );
  });
});

function peel(told: (typeof ANVIL.tells)[number]['cases'][number]): typeof told {
  return told.job.kind === 'contain' ? { ...told, job: { ...told.job, peel: true } } : told;
}

describe('runs the look is known for', () => {
  const { runs } = inLook(KNOWN, { second: null });
  const [power, zoneRead, iso] = runs;

  test('one row each, in the order of the look', () => {
    expect(runs.map((row) => row.name)).toEqual([
      'power to the right',
      'zone read to the right',
      'iso to the left',
      'counter to the left',
    ]);
    expect(runs.map((row) => row.passOption)).toEqual([false, true, false, false]);
  });

  test('where it hits and who owns it, and each gap that opens with its fitter', () => {
    expect(power?.duties.map(({ what, by }) => `${what}: ${by}`)).toEqual([
      'Hits C gap right: nobody',
      'G left pulls to C gap right: M',
    ]);
    expect(power?.headline).toBe('Nobody for C gap right, where it hits');
    expect(power?.open).toBe(true);
  });

  test('an option: every phase it has, who is read, who is at the cutback', () => {
    expect(zoneRead?.duties.map(({ what }) => what)).toEqual([
      'Hits A gap right',
      'Winds back to A gap left',
      'Dive',
      'Quarterback',
    ]);
    expect(zoneRead?.notes[0]).toMatch(/^Read, not blocked: /);
    expect(zoneRead?.headline).toMatch(/^Hits A gap right: .*; cutback: .*; \d to spare$/);
  });

  test('a run this look cannot have says what it lacks', () => {
    expect(iso).toMatchObject({
      here: false,
      open: false,
      headline: 'Cannot be run from this look: there is no second back to lead',
      duties: [],
      notes: [],
    });
  });

  test('men to spare, none, or too few', () => {
    const analysis = analyse(setupOf({ second: null, look: { ...TIGHT, ...KNOWN } }));
    const spares = [-1, 0, 2].map((spare): Analysis => ({
      ...analysis,
      runs: analysis.runs.map((run) => (run.kind === 'answered' ? { ...run, spare } : run)),
    }));
    expect(spares.map((each) => buildReport(each, COMMON_WORDS).runs[0]?.notes.at(-1))).toEqual([
      '1 too few near the box',
      'Nobody to spare near the box',
      '2 to spare near the box',
    ]);
  });
});

describe('protections the look is known for', () => {
  const { protections } = inLook(KNOWN, { second: null });

  test('whom nobody has, through where, and where he must throw', () => {
    const free = protections.filter((row) => row.free.length > 0);
    expect(free.length).toBeGreaterThan(0);
    for (const row of free) {
      expect(row.headline).toMatch(/^Free: \w+( \([a-z ]+\))? through [A-E] gap (left|right)/);
      expect(row.headline.includes('hot to the')).toBe(row.hot !== null);
    }
  });

  test('every blocker is in it once: blocking or with nobody', () => {
    for (const row of protections.filter((each) => each.here)) {
      const men = [...row.blocks.flatMap((block) => block.players), ...row.idle.flatMap((idle) => idle.players)];
      expect(new Set(men).size).toBe(men.length);
      expect(men.length).toBeGreaterThanOrEqual(5);
    }
  });

  test('what this look has nobody to keep in for says so', () => {
    const two = protections.find((row) => row.name === 'half slide with two backs, to the right');
    expect(two?.here).toBe(false);
    expect(two?.headline).toMatch(/^Cannot be had from this look: /);
  });

  test('a man protection turns to no side', () => {
    expect(protections.map((row) => row.name)).toContain('man, free release');
  });
});

test('"by rule" is said once, above the rows, and never in them', () => {
  expect(BY_RULE).toMatch(/^By the textbook rule/);
  const withoutWhy = (value: unknown): unknown =>
    JSON.parse(JSON.stringify(value), (key, part: unknown) => (key === 'why' ? undefined : part));
  const { runs, protections } = inLook(KNOWN);
  for (const text of readTexts(withoutWhy({ runs, protections }))) expect(text).not.toMatch(/by rule/i);
});

describe('what the coach lives with, and what cannot be told', () => {
  const plain = analyse(setupOf());
  const nose = plain.findings.find((finding) => finding.rule === 'line.two-jobs');
  const waivers =
    nose === undefined ? [] : [{ rule: nose.rule, look: TIGHT.id, evidence: evidenceOf(nose), reason: 'N peeks' }];

  test('waived findings stand apart with their reason and do not count', () => {
    const report = reportOf(setupOf({ waivers }));
    expect(report.waived.map(({ rule, reason, decides }) => [rule, reason, decides])).toEqual([
      ['line.two-jobs', 'N peeks', false],
    ]);
    expect(report.findings.map((row) => row.rule)).not.toContain('line.two-jobs');
    expect(report.counts).toMatch(/; 1 waived$/);
  });

  test('what cannot be told is beside the findings, with its reasons', () => {
    const undetermined: Analysis['undetermined'] = [
      {
        rules: ['gap.open', 'force.missing'],
        because: fact('nobody can say who is force', fact('he is told two things')),
        who: [NOSE],
        gaps: [],
        players: [],
        where: [],
      },
    ];
    const report = buildReport({ ...plain, undetermined }, COMMON_WORDS);
    expect(report.cannotTell).toMatchObject([
      {
        text: 'Nobody can say who is force',
        titles: ['A run gap is open', expect.any(String)],
        why: [{ text: 'He is told two things', because: [] }] satisfies Why[],
        who: [NOSE],
      },
    ]);
    expect(report.counts).toMatch(/; 1 cannot be told$/);
  });

  test('the gravest findings come first, and those as grave as the verdict decide', () => {
    const { findings, verdict } = reportOf(setupOf({ rushers: 3 }));
    const order = ['stop', 'check', 'note'];
    const ranks = findings.map((row) => order.indexOf(row.severity));
    expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    expect(findings.some((row) => row.severity === 'check')).toBe(true);
    for (const row of findings) expect(row.decides).toBe(row.severity === verdict);
  });

  test('nothing found, and not judged, are two things', () => {
    const clean = buildReport({ ...plain, findings: [], undetermined: [], verdict: 'clean' }, COMMON_WORDS);
    expect(clean.counts).toBe('nothing found');
    expect(reportOf(setupOf({ first: { ...ANVIL, notAgainst: [TIGHT.id] } })).counts).toBe('not judged');
  });
});
