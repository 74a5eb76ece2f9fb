/** The search over many looks: what it finds, in which order, what it proves, and that brute force finds nothing smaller. */
import { describe, expect, it } from 'vitest';
import { analyse, asLookId, asPressureId, type Setup } from '../../../src/engine/index.ts';
import {
  applySet,
  mend,
  mendingEdits,
  type Edit,
  type MendBudget,
  type Mending,
} from '../../../src/engine/edits/index.ts';
import { setsOf } from '../../../src/engine/edits/editSets.ts';
import { frozen, LOOKS, pressure, setup, shell, tell, THREE_DEEP, who, type SetupParts } from '../book.ts';
import { bruteForce, isMended } from './bruteForce.ts';
import { printEdit } from './editNotation.ts';

const PLENTY: MendBudget = { analyses: 4000, edits: 2, sets: 100 };
const LIBRARY = frozen({ coverages: [THREE_DEEP, shell('None', [])] });

/** One call in several looks of the book, each by its name. */
function inLooks(names: readonly (keyof typeof LOOKS)[], parts: Omit<SetupParts, 'look'>): readonly Setup[] {
  return frozen(
    names.map((name) => {
      const made = setup({ ...parts, look: LOOKS[name] });
      return { ...made, look: { ...made.look, id: asLookId(name), name } };
    }),
  );
}

const noseToCall = tell('@N', 'movement', 'rush A-call slant');
const noseAway = tell('@N', 'movement', 'rush A-away slant');
const byBack = [{ kind: 'strength', by: 'back', toward: 'to' } as const];
const THREE: readonly (keyof typeof LOOKS)[] = ['11 tight end', '10 doubles', '10 trips'];
/** Both send the nose to their own side: wrong where the back is away from the strength, right where he is with it. */
const eachItsOwn = inLooks(THREE, {
  first: pressure('p', [noseToCall]),
  second: pressure('q', [noseToCall], byBack),
});
/** The nose sent to the call by both, and the second turned against the first: no one edit leaves a sound call. */
const noseAndEnd = inLooks(['10 doubles', '10 trips'], {
  first: pressure('p', [
    noseToCall,
    tell('end-call', 'movement', 'rush B-call'),
    tell('end-away', 'movement', 'contain C-away'),
  ]),
  second: pressure('q', [noseToCall, tell('end-call', 'movement', 'contain C-call')]),
  turn: 'opposite',
});

const poolOf = (setups: readonly Setup[]): readonly Edit[] => mendingEdits(setups.map(analyse), LIBRARY);
const setsIn = (mending: Mending): readonly (readonly string[])[] =>
  mending.kind === 'found' ? mending.sets.map((set) => set.map(printEdit)) : [];

function fail(): never {
  throw new Error('Out of the list');
}

describe('found', () => {
  it('one edit, the smallest first, all there are', () => {
    const mending = mend(eachItsOwn, poolOf(eachItsOwn), PLENTY);
    expect(mending.kind === 'found' && mending.complete).toBe(true);
    const sets = setsIn(mending);
    expect(sets[0]).toEqual(['turn same']);
    expect(sets.every((set) => set.length === 1)).toBe(true);
    expect(sets).not.toContainEqual(['turn opposite']);
  });

  it('nothing to mend: the empty set', () => {
    const clean = inLooks(THREE, { first: pressure('p', []) });
    expect(mend(clean, poolOf(clean), PLENTY)).toEqual({ kind: 'found', sets: [[]], complete: true, analyses: 3 });
  });

  it('what was found first stays when fewer are wanted', () => {
    const pool = poolOf(eachItsOwn);
    const all = mend(eachItsOwn, pool, PLENTY);
    const one = mend(eachItsOwn, pool, { ...PLENTY, sets: 1 });
    expect(all.kind === 'found' && one.kind === 'found' && one.sets).toEqual(
      all.kind === 'found' ? all.sets.slice(0, 1) : null,
    );
    expect(one.kind === 'found' && one.complete).toBe(false);
  });

  it('a look is left out where the rest can be mended without it', () => {
    const [tightEnd, doubles] = [eachItsOwn[0] ?? fail(), eachItsOwn[1] ?? fail()];
    const look = { id: doubles.look.id, name: doubles.look.name };
    const leave: Edit = { kind: 'leave-out', which: 'second', pressure: asPressureId('q'), look };
    const elsewhere: Edit = { ...leave, look: { id: tightEnd.look.id, name: tightEnd.look.name } };
    const wrong = eachItsOwn.filter((made) => analyse(made).verdict === 'stop').map((made) => made.look.id);
    expect(wrong).toEqual(['11 tight end', '10 trips']);
    const trips = { ...leave, look: { id: asLookId('10 trips'), name: '10 trips' } };
    expect(setsIn(mend(eachItsOwn, [leave, elsewhere, trips], PLENTY))).toEqual([
      ['leave q out against 11 tight end', 'leave q out against 10 trips'],
    ]);
  });
});

describe('never larger than brute force', () => {
  const calls: readonly (readonly [
    name: string,
    setups: readonly Setup[],
    pool: (all: readonly Edit[]) => readonly Edit[],
  ])[] = [
    ['one edit', eachItsOwn, (all) => all.slice(0, 12)],
    ['two edits', noseAndEnd, (all) => all.filter(({ kind }) => kind !== 'leave-out').slice(0, 14)],
    [
      'two edits, another order',
      noseAndEnd,
      (all) =>
        all
          .filter(({ kind }) => kind !== 'leave-out')
          .slice(0, 14)
          .toReversed(),
    ],
  ];

  it.each(calls)('%s: the same sets in the same order', (_, setups, some) => {
    const pool = some(poolOf(setups));
    const sizes = [0, 1, 2].map((size) => bruteForce(setups, pool, size));
    const expected = sizes.find((sets) => sets.length > 0) ?? [];
    const mending = mend(setups, pool, PLENTY);
    expect(setsIn(mending)).toEqual(expected.map((set) => set.map(printEdit)));
    expect(mending.kind).toBe(expected.length > 0 ? 'found' : 'none');
  });

  it('two are needed in one of them', () => {
    const mending = mend(noseAndEnd, calls[1]?.[2](poolOf(noseAndEnd)) ?? fail(), PLENTY);
    expect(setsIn(mending).map((set) => set.length)).toContain(2);
  });

  it('three, while there are analyses', () => {
    // Three men told two things each by pressures of one side; turning does not help, each man has to be told once.
    const three = inLooks(['10 doubles'], {
      first: pressure('p', [
        noseToCall,
        ...['end-call', 'end-away'].map((each) => tell(each, 'movement', 'contain C-call')),
      ]),
      second: pressure('q', [noseAway, ...['end-call', 'end-away'].map((each) => tell(each, 'path', 'rush B-call'))]),
      turn: 'same',
    });
    const untell = (name: string): Edit => ({
      kind: 'untell',
      which: 'second',
      pressure: asPressureId('q'),
      who: who(name),
    });
    const pool = ['@N', 'end-call', 'end-away'].map(untell);
    const expected = bruteForce(three, pool, 3);
    const mending = mend(three, pool, { ...PLENTY, edits: 3 });
    expect(setsIn(mending)).toEqual(expected.map((set) => set.map(printEdit)));
    expect(mend(three, pool, PLENTY)).toMatchObject({ kind: 'none', within: 2 });
    // One analysis for the call, three for one edit, three for two, one for all: with one fewer, up to two are told.
    expect(mending.analyses).toBe(8);
    expect(mend(three, pool, { ...PLENTY, edits: 3, analyses: 7 })).toMatchObject({ kind: 'none', within: 2 });
    expect(mend(three, pool, { ...PLENTY, edits: 3, analyses: 6 })).toEqual({
      kind: 'out-of-budget',
      within: 1,
      analyses: 6,
    });
  });
});

describe('none, and why', () => {
  it('one finding that no edit touches, in its look', () => {
    const turns: readonly Edit[] = [
      { kind: 'turn', turn: 'same' },
      { kind: 'turn', turn: 'opposite' },
      { kind: 'swap' },
    ];
    // Both tell the nose both things: in every look a stop, whichever way the second is turned.
    const both = inLooks(THREE, {
      first: pressure('p', [noseToCall, tell('end-call', 'movement', 'rush B-call')]),
      second: pressure('q', [
        noseAway,
        tell('end-call', 'movement', 'contain C-call'),
        tell('end-away', 'movement', 'contain C-away'),
      ]),
      turn: 'own',
    });
    const mending = mend(both, turns, PLENTY);
    if (mending.kind !== 'none') throw new Error(mending.kind);
    expect(mending.within).toBe(2);
    expect(mending.proof.map(({ look, spot, finding }) => `${look.name} ${spot} ${finding.rule}`)).toEqual([
      '11 tight end middle line.two-jobs',
    ]);
  });

  it('every set leaves one finding of the proof, in its look', () => {
    const pool = poolOf(noseAndEnd).filter(({ kind }) => kind === 'surface' || kind === 'swap');
    const mending = mend(noseAndEnd, pool, PLENTY);
    if (mending.kind !== 'none') throw new Error(mending.kind);
    expect(mending.proof.length).toBeGreaterThan(0);
    const before = noseAndEnd.map(analyse);
    for (const set of [0, 1, 2].flatMap((size) => [...setsOf(pool, size)])) {
      const edits = set.map((index) => pool[index] ?? fail());
      const stands = mending.proof.some(({ look, finding }) => {
        const at = noseAndEnd.findIndex((made) => made.look.id === look.id);
        const after = analyse(applySet(noseAndEnd[at] ?? fail(), edits));
        return !isMended(before[at] ?? fail(), after) && after.findings.some(({ rule }) => rule === finding.rule);
      });
      expect([edits.map(printEdit), stands]).toEqual([edits.map(printEdit), true]);
    }
  });

  it('an empty list of edits mends nothing', () => {
    const mending = mend(eachItsOwn, [], PLENTY);
    expect(mending.kind === 'none' && mending.proof.map(({ finding }) => finding.rule)).toEqual(['line.two-jobs']);
  });
});

describe('limits', () => {
  it('out of budget is an answer, and never a guess', () => {
    const pool = poolOf(noseAndEnd);
    const full = mend(noseAndEnd, pool, PLENTY);
    expect(full.kind).toBe('found');
    const answers = [0, 2, 3, 4, 10, 20, 40].map((analyses) => mend(noseAndEnd, pool, { ...PLENTY, analyses }));
    for (const [index, answer] of answers.entries()) {
      expect(answer.analyses).toBeLessThanOrEqual([0, 2, 3, 4, 10, 20, 40][index] ?? 0);
      if (answer.kind === 'found') {
        expect(setsIn(full)).toEqual(expect.arrayContaining([...setsIn(answer)]));
        expect(answer.complete).toBe(setsIn(answer).length === setsIn(full).length);
      } else expect(answer.kind).toBe('out-of-budget');
    }
    expect(answers[0]).toEqual({ kind: 'out-of-budget', within: -1, analyses: 0 });
    expect(answers[2]).toEqual({ kind: 'out-of-budget', within: 0, analyses: 3 });
  });

  it('the same input, the same bytes', () => {
    const pool = poolOf(eachItsOwn);
    expect(JSON.stringify(mend(eachItsOwn, pool, PLENTY))).toBe(JSON.stringify(mend(eachItsOwn, pool, PLENTY)));
    expect(JSON.stringify(poolOf(eachItsOwn))).toBe(JSON.stringify(pool));
  });

  it('the order of the looks changes neither the sets nor their order', () => {
    const pool = poolOf(noseAndEnd);
    expect(setsIn(mend(noseAndEnd.toReversed(), pool, PLENTY))).toEqual(setsIn(mend(noseAndEnd, pool, PLENTY)));
  });
});

describe('sets of edits', () => {
  const edits: readonly Edit[] = [
    { kind: 'rushers', count: 4 },
    { kind: 'turn', turn: 'same' },
    { kind: 'turn', turn: 'opposite' },
    { kind: 'swap' },
    { kind: 'coverage', coverage: THREE_DEEP },
  ];

  it('smaller changes first, then the order given, never two of one place', () => {
    expect([...setsOf(edits, 0)]).toEqual([[]]);
    expect([...setsOf(edits, 1)]).toEqual([[0], [1], [2], [3], [4]]);
    expect([...setsOf(edits, 2)]).toEqual([
      [0, 1],
      [0, 2],
      [0, 3],
      [1, 3],
      [2, 3],
      [0, 4],
      [1, 4],
      [2, 4],
      [3, 4],
    ]);
    // Counts of combinations: 10 of five by three, less the three with both turns.
    expect([...setsOf(edits, 3)]).toHaveLength(7);
    expect([...setsOf([], 2)]).toEqual([]);
  });

  it('what the others name is changed first: a duty in the shell that is put in with it', () => {
    const [made] = inLooks(['10 doubles'], { first: pressure('p', []), coverage: shell('Old', []) });
    const duty: Edit = {
      kind: 'duty',
      coverage: { id: THREE_DEEP.id, name: THREE_DEEP.name },
      who: who('safety-away'),
      job: { kind: 'spy', run: { fits: [], firm: false, support: null } },
    };
    const after = applySet(made ?? fail(), [duty, { kind: 'coverage', coverage: THREE_DEEP }]);
    expect(after.coverage.tells[0]?.who).toEqual(who('safety-away'));
    expect(applySet(made ?? fail(), [duty])).toEqual(made);
  });
});
