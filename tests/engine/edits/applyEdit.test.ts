/** Every kind of edit applied, refused where it does not reach, and the same thing in the engine as in the playbook. */
import { describe, expect, it } from 'vitest';
import {
  asCallId,
  asCoverageId,
  asLookId,
  asPressureId,
  asRoleId,
  type CheckOutRow,
  type Pressure,
  type Setup,
  type TellCase,
} from '../../../src/engine/index.ts';
import { applyEdit, editCoverage, editFront, editPressure, type Edit } from '../../../src/engine/edits/index.ts';
import { frozen, LOOKS, ODD, pressure, ruleJob, say, setup, shell, tell, THREE_DEEP, who } from '../book.ts';

const noseToCall = tell('@N', 'movement', 'rush A-call slant');
const byCase: Pressure = {
  ...pressure('p', []),
  tells: [
    noseToCall,
    {
      who: who('end-call'),
      cases: [
        {
          when: [{ kind: 'bodies', side: 'mine', compare: 'at-least', count: 3 }],
          basis: 'movement',
          job: ruleJob('rush C-call'),
          preSnap: null,
        },
        { when: [], basis: 'movement', job: ruleJob('contain edge-call'), preSnap: null },
      ],
    },
  ],
};
const q = pressure('q', [tell('inside-call', 'path', 'rush B-call')]);
const OTHER = shell('Other', [['safety-call', 'drop middle']]);
const THIRD = shell('Third', []);
const look = { id: asLookId('look'), name: 'a look' };

const call = (parts: Partial<Setup> = {}): Setup =>
  frozen({
    ...setup({ look: LOOKS['11 tight end'], first: byCase, second: q, coverage: THREE_DEEP, secondCoverage: OTHER }),
    ...parts,
  });

function applied(edit: Edit, parts: Partial<Setup> = {}): Setup {
  const result = applyEdit(call(parts), frozen(edit));
  if (!result.ok) throw new Error(say(result.problem));
  return result.value;
}

function refusal(edit: Edit, parts: Partial<Setup> = {}): string {
  const result = applyEdit(call(parts), frozen(edit));
  if (result.ok) throw new Error('It was not refused');
  return say(result.problem);
}

const inP = { which: 'first', pressure: asPressureId('p') } as const;
const told = (job: string): Omit<TellCase, 'when'> => ({ basis: 'movement', job: ruleJob(job), preSnap: null });

describe('what each edit changes, and nothing else', () => {
  it('turn', () => {
    expect(applied({ kind: 'turn', turn: 'opposite' })).toEqual({ ...call(), turn: 'opposite' });
  });

  it('swap: the shell in force is the other one’s', () => {
    expect(applied({ kind: 'swap' })).toEqual({
      ...call(),
      first: q,
      second: byCase,
      coverage: OTHER,
      secondCoverage: THREE_DEEP,
    });
    expect(applyEdit(applied({ kind: 'swap' }), { kind: 'swap' })).toEqual({ ok: true, value: call() });
  });

  it('coverage: behind both halves, and behind one alone', () => {
    const edit: Edit = { kind: 'coverage', coverage: THIRD };
    expect(applied(edit)).toEqual({ ...call(), coverage: THIRD, secondCoverage: THIRD });
    const alone = { second: null, secondCoverage: null };
    expect(applied(edit, alone)).toEqual({ ...call(alone), coverage: THIRD });
  });

  it('rushers', () => {
    expect(applied({ kind: 'rushers', count: 5 })).toEqual({ ...call(), rushers: 5 });
  });

  it('job: in every look, in one case, as the other tells him, and for a man who was told nothing', () => {
    const end = who('end-call');
    const cases = (edit: Edit) => applied(edit).first.tells.map((each) => each.cases);
    const [nose, both] = byCase.tells.map((each) => each.cases);
    const [first, second] = both ?? [];
    const job = { kind: 'job', ...inP, who: end } as const;
    expect(cases({ ...job, to: { kind: 'given', at: null, told: told('rush B-call') } })).toEqual([
      nose,
      [{ when: [], ...told('rush B-call') }],
    ]);
    expect(cases({ ...job, to: { kind: 'given', at: 0, told: told('rush B-call') } })).toEqual([
      nose,
      [{ when: first?.when, ...told('rush B-call') }, second],
    ]);
    const other: TellCase = { when: [], ...told('rush A-away') };
    expect(cases({ ...job, to: { kind: 'other', cases: [other] } })).toEqual([nose, [other]]);
    expect(cases({ ...job, who: who('@M'), to: { kind: 'given', at: null, told: told('rush A-call') } })).toEqual([
      nose,
      both,
      [{ when: [], ...told('rush A-call') }],
    ]);
  });

  it('untell', () => {
    expect(applied({ kind: 'untell', ...inP, who: who('end-call') }).first.tells).toEqual([noseToCall]);
  });

  it('surface: a case in front, or every case only elsewhere', () => {
    const edit = { kind: 'surface', ...inP, who: who('end-call') } as const;
    const [, end] = byCase.tells;
    const [first, second] = end?.cases ?? [];
    expect(
      applied({ ...edit, surface: { side: 'mine', compare: 'at-most', count: 2 }, told: told('rush B-call') }).first
        .tells[1]?.cases,
    ).toEqual([
      { when: [{ kind: 'bodies', side: 'mine', compare: 'at-most', count: 2 }], ...told('rush B-call') },
      first,
      second,
    ]);
    const elsewhere = (compare: 'at-least' | 'at-most', count: number) => ({
      kind: 'bodies',
      side: 'call',
      compare,
      count,
    });
    expect(
      applied({ ...edit, surface: { side: 'call', compare: 'at-least', count: 4 }, told: null }).first.tells[1]?.cases,
    ).toEqual([
      { ...first, when: [...(first?.when ?? []), elsewhere('at-most', 3)] },
      { ...second, when: [elsewhere('at-most', 3)] },
    ]);
    expect(
      applied({ ...edit, surface: { side: 'call', compare: 'at-most', count: 2 }, told: null }).first.tells[1]
        ?.cases[1],
    ).toEqual({ ...second, when: [elsewhere('at-least', 3)] });
  });

  it('leave-out and tie-break', () => {
    expect(applied({ kind: 'leave-out', ...inP, look }).first).toEqual({ ...byCase, notAgainst: [look.id] });
    const step = { kind: 'fixed', side: 'right' } as const;
    expect(applied({ kind: 'tie-break', ...inP, step }).first.callSide).toEqual([...byCase.callSide, step]);
  });

  it('duty: in front of what the shell tells him, in every half that plays the shell', () => {
    const coverage = { id: THREE_DEEP.id, name: THREE_DEEP.name };
    const edit: Edit = { kind: 'duty', coverage, who: who('safety-away'), job: ruleJob('drop half-away') };
    const after = applied(edit, { secondCoverage: THREE_DEEP });
    expect(after.coverage.tells[0]).toEqual({
      who: who('safety-away'),
      cases: [{ when: [], job: ruleJob('drop half-away') }],
    });
    expect(after.coverage.tells).toHaveLength(THREE_DEEP.tells.length);
    expect(after.secondCoverage).toEqual(after.coverage);
    expect(applied(edit).secondCoverage).toBe(OTHER);
  });

  it('stand: he stands there against that look, whatever hand put him elsewhere before', () => {
    const edit: Edit = { kind: 'stand', look, role: asRoleId('RE'), x: 2, y: 1 };
    expect(applied(edit).front).toEqual({ ...ODD, byHand: [{ look: look.id, role: 'RE', x: 2, y: 1 }] });
    const elsewhere = { look: asLookId('other'), role: asRoleId('RE'), x: 9, y: 9 };
    const before = { ...ODD, byHand: [{ look: look.id, role: asRoleId('RE'), x: 4, y: 4 }, elsewhere] };
    expect(applied(edit, { front: before }).front.byHand).toEqual([
      elsewhere,
      { look: look.id, role: 'RE', x: 2, y: 1 },
    ]);
  });

  it('a pressure that is both halves changes in both', () => {
    const after = applied({ kind: 'untell', ...inP, who: who('@N') }, { second: byCase });
    expect(after.first).toEqual(after.second);
    expect(after.first.tells).toHaveLength(1);
  });

  it('a man a pressure names twice by one name keeps one list of cases', () => {
    const twice = { ...byCase, tells: [noseToCall, ...byCase.tells] };
    const job = { kind: 'job', ...inP, who: who('@N') } as const;
    const edited = editPressure(twice, { ...job, to: { kind: 'given', at: 1, told: told('rush A-away') } });
    expect(edited.ok && edited.value.tells.map((each) => each.cases.length)).toEqual([2, 2]);
  });
});

const row = (action: CheckOutRow['action']): Partial<Setup> => ({ checkOut: { formation: 'doubles', action } });

describe('where an edit does not reach it is refused, in words', () => {
  const alone = { second: null, secondCoverage: null };
  const given = (at: number | null, job: string) => ({ kind: 'given', at, told: told(job) }) as const;
  const rows: readonly (readonly [name: string, edit: Edit, parts: Partial<Setup>, says: string])[] = [
    ['turned so already', { kind: 'turn', turn: 'own' }, {}, 'it is so already'],
    ['no second to turn', { kind: 'turn', turn: 'same' }, alone, 'the call has no second pressure'],
    ['no second to swap with', { kind: 'swap' }, alone, 'the call has no second pressure'],
    ['that shell already', { kind: 'coverage', coverage: THREE_DEEP }, alone, 'it is so already'],
    ['as many already', { kind: 'rushers', count: 4 }, { rushers: 4 }, 'it is so already'],
    [
      'the pressure is not called',
      { kind: 'untell', which: 'first', pressure: asPressureId('x'), who: who('@N') },
      {},
      'that pressure is not part of the call here',
    ],
    ['he is told nothing', { kind: 'untell', ...inP, who: who('@M') }, {}, 'first does not tell @M that'],
    [
      'he has no such case',
      { kind: 'job', ...inP, who: who('@N'), to: given(1, 'rush A-away') },
      {},
      'first does not tell @N that',
    ],
    [
      'no case to keep off a surface',
      { kind: 'surface', ...inP, who: who('@M'), surface: { side: 'mine', compare: 'at-most', count: 2 }, told: null },
      {},
      'first does not tell @M that',
    ],
    [
      'told that already',
      { kind: 'job', ...inP, who: who('@N'), to: given(null, 'rush A-call slant') },
      {},
      'it is so already',
    ],
    [
      'left out already',
      { kind: 'leave-out', ...inP, look },
      { first: { ...byCase, notAgainst: [look.id] } },
      'it is so already',
    ],
    [
      'another shell is played',
      { kind: 'duty', coverage: { id: THIRD.id, name: 'Third' }, who: who('@N'), job: ruleJob('drop middle') },
      {},
      'that shell is not played here',
    ],
    [
      'the shell says so already',
      {
        kind: 'duty',
        coverage: { id: THREE_DEEP.id, name: 'Three deep' },
        who: who('safety-call'),
        job: ruleJob('drop seam-call may edge-call force'),
      },
      {},
      'it is so already',
    ],
    [
      'nobody of that name in the front',
      { kind: 'stand', look, role: asRoleId('Q'), x: 0, y: 1 },
      {},
      'Q is not in this front',
    ],
    [
      'the table turns it',
      { kind: 'turn', turn: 'same' },
      row({ kind: 'turn' }),
      'the check-out table turns it against this look',
    ],
    [
      'the table picks the shell',
      { kind: 'coverage', coverage: THIRD },
      row({ kind: 'coverage', coverage: asCoverageId('three-deep') }),
      'the check-out table picks the shell against this look',
    ],
    [
      'another call is run',
      { kind: 'rushers', count: 5 },
      row({ kind: 'check-to', call: asCallId('c') }),
      'against this look the call is checked to another one',
    ],
  ];

  it.each(rows)('%s', (_, edit, parts, says) => {
    expect(refusal(edit, parts)).toBe(says);
  });

  it('a row of the table leaves the rest of the call open', () => {
    expect(applied({ kind: 'turn', turn: 'same' }, row({ kind: 'run' })).turn).toBe('same');
    expect(applied({ kind: 'swap' }, row({ kind: 'turn' })).first).toBe(q);
    expect(applied({ kind: 'coverage', coverage: THIRD }, row({ kind: 'swap' })).coverage).toBe(THIRD);
  });
});

describe('the parts alone', () => {
  it('a shell and a front are edited as in a setup', () => {
    const duty = {
      kind: 'duty',
      coverage: { id: OTHER.id, name: OTHER.name },
      who: who('@N'),
      job: ruleJob('drop hole'),
    } as const;
    const edited = editCoverage(OTHER, duty);
    expect(edited.ok && edited.value.tells.map((each) => each.who)).toEqual([who('@N'), who('safety-call')]);
    const stand = { kind: 'stand', look, role: asRoleId('N'), x: 1, y: 1 } as const;
    const front = editFront(ODD, stand);
    expect(front.ok && front.value.byHand).toEqual([{ look: look.id, role: 'N', x: 1, y: 1 }]);
  });
});
