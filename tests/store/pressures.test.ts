/** Making and changing a pressure: every change a small one, everything it does not touch the very same object. */
import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import {
  asCoverageId,
  asGroupId,
  asLookId,
  asPressureId,
  asRoleId,
  sameWho,
  type Pressure,
  type SideStep,
  type TellCase,
  type Who,
} from '../../src/engine/index.ts';
import {
  giveJob,
  newPressure,
  nextIds,
  retell,
  setCallSide,
  setCases,
  setPressureParts,
  tellMan,
  untell,
  type CommandProblem,
  type PressureParts,
} from '../../src/store/index.ts';
import { demo, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const id = nextIds.pressure(playbook);
const blank = valueOf(newPressure(playbook, { id, name: 'Reed', coverage: null }));
const missing = asPressureId('nothing');

const in_ = (book: Playbook): Pressure => {
  const found = book.pressures.find((each) => each.id === id);
  if (found === undefined) throw new Error('It is gone');
  return found;
};
const problemOf = (result: { ok: true } | { ok: false; problem: CommandProblem }): CommandProblem | null =>
  result.ok ? null : result.problem;

const NOSE: Who = { kind: 'role', role: asRoleId('nose') };
const CALL_END: Who = { kind: 'group', group: asGroupId('ends'), side: 'call' };
const AWAY_END: Who = { kind: 'group', group: asGroupId('ends'), side: 'away' };

const slantTo = (letter: 'A' | 'B' | 'C', side: 'call' | 'away' = 'call'): TellCase => ({
  when: [],
  basis: 'movement',
  preSnap: null,
  job: {
    kind: 'rush',
    gaps: [{ kind: 'letter', side, letter }],
    manner: 'slant',
    track: { kind: 'straight' },
    edge: null,
    peel: false,
    order: null,
  },
});

describe('a new pressure', () => {
  it('tells nobody anything, has a call side that always decides, and can be saved', () => {
    expect(in_(blank)).toStrictEqual({
      id,
      name: 'Reed',
      tags: [],
      callSide: [
        { kind: 'strength', by: 'tight-end', toward: 'to' },
        { kind: 'fixed', side: 'right' },
      ],
      tells: [],
      coverage: firstOf(playbook.coverages).id,
      rushers: null,
      notAgainst: [],
      installDay: null,
    });
    expect(checkPlaybook(blank).ok).toBe(true);
    expect(blank.pressures.slice(0, -1)).toStrictEqual(playbook.pressures);
  });

  it('has the shell it is asked to have', () => {
    const { id: coverage } = playbook.coverages[2] ?? firstOf(playbook.coverages);
    expect(in_(valueOf(newPressure(playbook, { id, name: 'Reed', coverage }))).coverage).toBe(coverage);
  });

  it.each<[string, Playbook, string, CommandProblem]>([
    ['without a name', playbook, '  ', { kind: 'name-empty' }],
    [
      'with the name of another',
      playbook,
      firstOf(playbook.pressures).name,
      { kind: 'name-taken', what: 'pressure', name: firstOf(playbook.pressures).name },
    ],
    ['where there is no shell', { ...playbook, coverages: [] }, 'Reed', { kind: 'not-there', what: 'coverage' }],
  ])('is not made %s', (_, book, name, problem) => {
    expect(problemOf(newPressure(book, { id, name, coverage: null }))).toStrictEqual(problem);
  });
});

describe('the call side', () => {
  const end: SideStep = { kind: 'strength', by: 'tight-end', toward: 'to' };
  const right: SideStep = { kind: 'fixed', side: 'right' };
  const field: SideStep = { kind: 'strength', by: 'field', toward: 'away' };

  it.each<[string, readonly SideStep[]]>([
    ['one step more', [end, right, field]],
    ['another order', [right, end]],
    ['one step', [right]],
  ])('is said anew: %s', (_, steps) => {
    const after = valueOf(setCallSide(blank, { pressure: id, steps }));
    expect(in_(after)).toStrictEqual({ ...in_(blank), callSide: steps });
    expect(in_(after).tells).toBe(in_(blank).tells);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it('keeps a step', () => {
    expect(problemOf(setCallSide(blank, { pressure: id, steps: [] }))).toStrictEqual({ kind: 'last-step' });
  });
});

describe('what stands beside the rush', () => {
  const other = playbook.coverages[1] ?? firstOf(playbook.coverages);
  const look = firstOf(playbook.looks);
  it.each<[string, Partial<PressureParts>, Partial<PressureParts>]>([
    ['another shell', { coverage: other.id }, { coverage: other.id }],
    ['how many come', { rushers: 5 }, { rushers: 5 }],
    ['not said how many', { rushers: null }, { rushers: null }],
    ['a day of camp', { installDay: 4 }, { installDay: 4 }],
    ['looks it is not run against', { notAgainst: [look.id] }, { notAgainst: [look.id] }],
    [
      'tags, each once and without blanks',
      { tags: [' edge', 'edge ', '', 'third down'] },
      { tags: ['edge', 'third down'] },
    ],
  ])('changes, and the rush does not: %s', (_, parts, kept) => {
    const after = valueOf(setPressureParts(blank, { pressure: id, parts }));
    expect(in_(after)).toStrictEqual({ ...in_(blank), ...kept });
    expect(in_(after).tells).toBe(in_(blank).tells);
    expect(after.pressures[0]).toBe(blank.pressures[0]);
  });

  it('is not changed to a shell that is not there, nor in a pressure that is not there', () => {
    const parts = { coverage: asCoverageId('nothing') };
    expect(problemOf(setPressureParts(blank, { pressure: id, parts }))).toStrictEqual({
      kind: 'not-there',
      what: 'coverage',
    });
    expect(problemOf(setPressureParts(blank, { pressure: missing, parts: {} }))).toStrictEqual({
      kind: 'not-there',
      what: 'pressure',
    });
  });

  it.each([0, 61, 2.5])('day %s of camp does not exist: a file of it would not open', (installDay) => {
    const wrong = valueOf(setPressureParts(blank, { pressure: id, parts: { installDay } }));
    expect(checkPlaybook(wrong).ok).toBe(false);
  });

  it('a look it is not run against must be one of the playbook', () => {
    const wrong = valueOf(setPressureParts(blank, { pressure: id, parts: { notAgainst: [asLookId('nothing')] } }));
    expect(checkPlaybook(wrong).ok).toBe(false);
  });
});

describe('what a man is told', () => {
  const told = valueOf(tellMan(blank, { pressure: id, who: NOSE, told: slantTo('A') }));
  const two = valueOf(tellMan(told, { pressure: id, who: CALL_END, told: slantTo('B') }));
  const detached: TellCase = {
    ...slantTo('C'),
    when: [{ kind: 'bodies', side: 'mine', compare: 'at-most', count: 2 }],
  };

  it('is added, in the order of telling', () => {
    expect(in_(two).tells).toStrictEqual([
      { who: NOSE, cases: [slantTo('A')] },
      { who: CALL_END, cases: [slantTo('B')] },
    ]);
    expect(checkPlaybook(two).ok).toBe(true);
    expect(in_(two).coverage).toBe(in_(blank).coverage);
  });

  it('the ends on the two sides are two men, and a man of the same group a third', () => {
    const three = valueOf(tellMan(two, { pressure: id, who: AWAY_END, told: slantTo('B', 'away') }));
    const him: Who = { kind: 'role', role: asRoleId('left-end') };
    expect(in_(valueOf(tellMan(three, { pressure: id, who: him, told: slantTo('B') }))).tells).toHaveLength(4);
  });

  it.each<[string, readonly TellCase[]]>([
    ['another job', [slantTo('C')]],
    ['a case for some looks before it', [detached, slantTo('B')]],
  ])('changes: %s', (_, cases) => {
    const after = valueOf(setCases(two, { pressure: id, who: CALL_END, cases }));
    expect(in_(after).tells).toStrictEqual([
      { who: NOSE, cases: [slantTo('A')] },
      { who: CALL_END, cases },
    ]);
    expect(in_(after).tells[0]).toBe(in_(two).tells[0]);
    expect(checkPlaybook(after).ok).toBe(true);
  });

  it.each<[string, Who, number | null, readonly TellCase[]]>([
    ['to a man who is told nothing', AWAY_END, null, [slantTo('C')]],
    ['in the place of the case that holds', CALL_END, 0, [slantTo('C')]],
    ['behind the cases of a man whom none of them meets', CALL_END, null, [slantTo('B'), slantTo('C')]],
  ])('a job is given %s', (_, who, at, cases) => {
    const after = valueOf(giveJob(two, { pressure: id, who, at, told: slantTo('C') }));
    expect(in_(after).tells.find((tell) => sameWho(tell.who, who))?.cases).toStrictEqual(cases);
  });

  it('with his last case he is told nothing', () => {
    const after = valueOf(setCases(two, { pressure: id, who: CALL_END, cases: [] }));
    expect(in_(after).tells).toStrictEqual(in_(told).tells);
    expect(in_(valueOf(untell(two, { pressure: id, who: CALL_END }))).tells).toStrictEqual(in_(told).tells);
  });

  it('goes to another man', () => {
    const after = valueOf(retell(two, { pressure: id, who: CALL_END, to: AWAY_END }));
    expect(in_(after).tells[1]).toStrictEqual({ who: AWAY_END, cases: [slantTo('B')] });
  });

  it.each<[string, ReturnType<typeof tellMan>]>([
    ['he is told something already', tellMan(two, { pressure: id, who: NOSE, told: slantTo('A') })],
    ['the other man is told something already', retell(two, { pressure: id, who: NOSE, to: CALL_END })],
    ['he is told nothing', untell(told, { pressure: id, who: CALL_END })],
    ['that case is not there', giveJob(two, { pressure: id, who: NOSE, at: 1, told: slantTo('C') })],
  ])('is refused: %s', (_, result) => {
    expect(problemOf(result)).toStrictEqual({ kind: 'no-longer' });
  });
});
