import { describe, expect, it } from 'vitest';
import { checkPlaybook, type Playbook } from '../../src/document/index.ts';
import {
  asLookId,
  asPlayerId,
  asRoleId,
  PERSONNEL,
  readLook,
  SHAPES,
  type KnownProtection,
  type KnownRun,
  type Look,
  type OffenceKind,
} from '../../src/engine/index.ts';
import { lookFaultTexts } from '../../src/report/index.ts';
import {
  copyMirrored,
  mirroredName,
  mirrorInPlace,
  newLook,
  setMotion,
  setPlayerKind,
  setPlayerLetter,
  setPlayerSpot,
  setProtections,
  setRuns,
  type CommandProblem,
} from '../../src/store/index.ts';
import { demo, firstOf, valueOf } from './demo.ts';

const playbook = demo();
const look = firstOf(playbook.looks);
const id = look.id;
const nowhere = asLookId('nowhere');
const manOf = (kind: OffenceKind): Look['players'][number] =>
  firstOf(look.players.filter((each) => each.kind === kind));
const lookIn = (book: Playbook): Look => firstOf(book.looks.filter((each) => each.id === id));
const refusalOf = (result: { ok: true } | { ok: false; problem: CommandProblem }): CommandProblem | null =>
  result.ok ? null : result.problem;

describe('a new look', () => {
  const args = { name: '12 wing left', who: firstOf(PERSONNEL), shape: firstOf(SHAPES), strong: 'left' } as const;

  it.each(
    PERSONNEL.flatMap((who) =>
      SHAPES.filter((shape) => shape.suits(who)).map((shape) => [`${who.code} ${shape.name}`, who, shape] as const),
    ),
  )('of %s is the last of the list, legal, and can be saved', (name, who, shape) => {
    const after = valueOf(newLook(playbook, { ...args, name: `new ${name}`, who, shape }));
    const made = after.looks.at(-1);
    if (made === undefined) throw new Error('Nothing was made');
    expect(made.name).toBe(`new ${name}`);
    expect(made.players).toHaveLength(11);
    expect(readLook(made, playbook.team.level, 'left').faults).toEqual([]);
    expect(checkPlaybook(after).ok).toBe(true);
    expect(after.looks.slice(0, -1)).toStrictEqual(playbook.looks);
  });

  it.each([
    ['', { kind: 'name-empty' }],
    [look.name, { kind: 'name-taken', what: 'look', name: look.name }],
  ])('is refused the name "%s"', (name, problem) => {
    expect(refusalOf(newLook(playbook, { ...args, name }))).toStrictEqual(problem);
  });
});

describe('a man of a look', () => {
  const end = manOf('tight-end');

  it.each([
    ['T', 'T'],
    [' Z1 ', 'Z1'],
    ['', null],
    ['ABC', null],
  ])('given the letter "%s" has %s', (letter, kept) => {
    const result = setPlayerLetter(playbook, { look: id, player: end.id, letter });
    if (kept === null) expect(refusalOf(result)).toStrictEqual({ kind: 'letter-length' });
    else expect(lookIn(valueOf(result)).players.find((man) => man.id === end.id)?.letter).toBe(kept);
  });

  it('stands where it is typed, to the nearest twentieth, motion or not', () => {
    const moving = { ...look, motion: { player: end.id, to: { x: 0, y: -3 } } };
    const book = { ...playbook, looks: [moving, ...playbook.looks.slice(1)] };
    const after = lookIn(valueOf(setPlayerSpot(book, { look: id, player: end.id, at: { x: 4.333, y: -0.61 } })));
    expect(after.players.find((man) => man.id === end.id)).toMatchObject({ x: 4.35, y: -0.6 });
    expect(after.motion?.to).toStrictEqual({ x: 0, y: -3 });
  });

  it('becomes another kind, and the code of the personnel with it', () => {
    const after = lookIn(valueOf(setPlayerKind(playbook, { look: id, player: end.id, kind: 'back' })));
    expect(readLook(look, 'college', 'middle').personnel).toBe('11');
    expect(readLook(after, 'college', 'middle').personnel).toBe('20');
  });

  it.each(['snapper', 'passer'] as const)('who becomes the %s changes with him', (kind) => {
    const after = lookIn(valueOf(setPlayerKind(playbook, { look: id, player: end.id, kind })));
    expect(after.players.filter((man) => man.kind === kind).map((man) => man.id)).toStrictEqual([end.id]);
    expect(after.players.find((man) => man.id === manOf(kind).id)?.kind).toBe('tight-end');
  });

  it.each(['snapper', 'passer'] as const)('who is the only %s cannot become another', (kind) => {
    const result = setPlayerKind(playbook, { look: id, player: manOf(kind).id, kind: 'receiver' });
    expect(refusalOf(result)).toStrictEqual({ kind: 'one-needed', what: kind });
  });
});

describe('the other side of the ball', () => {
  it('is there and back', () => {
    const there = valueOf(mirrorInPlace(playbook, { look: id }));
    expect(lookIn(there).players.map(({ x }) => x)).toStrictEqual(look.players.map(({ x }) => (x === 0 ? 0 : -x)));
    expect(valueOf(mirrorInPlace(there, { look: id }))).toStrictEqual(playbook);
  });

  // Common practice, no source: against a formation turned over, the right man stands as the left one stood.
  it.each<[string, string, number, string, number]>([
    ['the left end stood by hand is the right end now', 'left-end', -4.2, 'right-end', 4.2],
    ['a right corner is the left one', 'right-corner', 9, 'left-corner', -9],
    ['the nose goes over', 'nose', 0.5, 'nose', -0.5],
    ['who is on the ball stays on it', 'nose', 0, 'nose', 0],
    ['the strong outside backer goes with the strength', 'strong-edge', 6, 'strong-edge', -6],
  ])('takes the defenders set by hand along: %s', (_what, role, x, mirroredRole, mirroredX) => {
    const elsewhere = { look: firstOf(playbook.looks.slice(1)).id, role: asRoleId(role), x, y: 2 };
    const [front, ...others] = playbook.fronts;
    if (front === undefined) throw new Error('The demo playbook needs a front');
    const here = { look: id, role: asRoleId(role), x, y: 2 };
    const book: Playbook = { ...playbook, fronts: [{ ...front, byHand: [here, elsewhere] }, ...others] };
    const there = valueOf(mirrorInPlace(book, { look: id }));
    expect(there.fronts[0]?.byHand).toStrictEqual([
      { look: id, role: asRoleId(mirroredRole), x: mirroredX, y: 2 },
      elsewhere,
    ]);
    expect(there.fronts[1]).toBe(playbook.fronts[1]);
    expect(checkPlaybook(there).ok).toBe(true);
    expect(valueOf(mirrorInPlace(there, { look: id }))).toStrictEqual(book);
  });

  it('may be a copy, behind the look, with a name of its own', () => {
    const after = valueOf(copyMirrored(playbook, { look: id, name: 'the other way' }));
    expect(after.looks).toHaveLength(playbook.looks.length + 1);
    expect(after.looks[0]).toBe(look);
    expect(after.looks[1]).toMatchObject({ name: 'the other way' });
    expect(checkPlaybook(after).ok).toBe(true);
    expect(refusalOf(copyMirrored(playbook, { look: id, name: look.name }))?.kind).toBe('name-taken');
    expect(refusalOf(copyMirrored(playbook, { look: nowhere, name: 'new' }))?.kind).toBe('not-there');
  });

  it.each([
    ['11 trips right', '11 trips left'],
    ['Left wing, receivers right', 'Right wing, receivers left'],
    ['bright lights', 'bright lights'],
  ])('"%s" is called "%s" there', (name, mirrored) => {
    expect(mirroredName(name)).toBe(mirrored);
  });
});

describe('what a look is known for', () => {
  const runs: readonly KnownRun[] = [
    { concept: 'power', side: 'left', passOption: false },
    { concept: 'power', side: 'right', passOption: false },
  ];
  const protections: readonly KnownProtection[] = [{ protection: 'max', slideSide: 'left' }];

  it('is what was put there', () => {
    const after = valueOf(setProtections(valueOf(setRuns(playbook, { look: id, runs })), { look: id, protections }));
    expect(lookIn(after)).toMatchObject({ runs, protections });
    expect(after.looks[1]).toBe(playbook.looks[1]);
  });

  it('is nothing twice', () => {
    expect(refusalOf(setRuns(playbook, { look: id, runs: [...runs, ...runs] }))).toStrictEqual({ kind: 'twice' });
    const twice = [...protections, ...protections];
    expect(refusalOf(setProtections(playbook, { look: id, protections: twice }))).toStrictEqual({ kind: 'twice' });
  });
});

describe('motion', () => {
  const back = manOf('back');
  it('is set, and taken away', () => {
    const motion = { player: back.id, to: { x: 5.02, y: -3 } };
    const after = valueOf(setMotion(playbook, { look: id, motion }));
    expect(lookIn(after).motion).toStrictEqual({ player: back.id, to: { x: 5, y: -3 } });
    expect(valueOf(setMotion(after, { look: id, motion: null }))).toStrictEqual(playbook);
  });

  it('is of one of the eleven', () => {
    const motion = { player: asPlayerId('stranger'), to: { x: 0, y: -3 } };
    expect(refusalOf(setMotion(playbook, { look: id, motion }))).toStrictEqual({ kind: 'not-there', what: 'player' });
  });
});

describe('an illegal look', () => {
  // NFHS 2-14-1 and 7-2-5, NCAA 7-1-4: no more than four backs; NFL 7-5-1: seven on the line.
  it.each([
    ['high-school', '5 men are off the line, no more than four may be'],
    ['professional', '6 men are on the line, seven are needed'],
  ] as const)('is told in words: %s', (level, words) => {
    const outside = firstOf(look.players.filter(({ kind, y }) => kind === 'receiver' && y > -1));
    const after = lookIn(
      valueOf(setPlayerSpot(playbook, { look: id, player: outside.id, at: { x: outside.x, y: -1.5 } })),
    );
    expect(lookFaultTexts(after, readLook(after, level, 'middle').faults)).toContain(words);
  });
});

describe('a look that is not there', () => {
  it.each<[string, CommandProblem | null]>([
    ['mirror', refusalOf(mirrorInPlace(playbook, { look: nowhere }))],
    ['runs', refusalOf(setRuns(playbook, { look: nowhere, runs: [] }))],
    ['protections', refusalOf(setProtections(playbook, { look: nowhere, protections: [] }))],
    ['motion', refusalOf(setMotion(playbook, { look: nowhere, motion: null }))],
    ['kind', refusalOf(setPlayerKind(playbook, { look: nowhere, player: asPlayerId('y'), kind: 'back' }))],
  ])('has no %s', (_what, problem) => {
    expect(problem).toStrictEqual({ kind: 'not-there', what: 'look' });
  });
});
