import { describe, expect, it } from 'vitest';
import {
  asLookId,
  formationClasses,
  lineUp,
  PERSONNEL,
  PLACES,
  readLook,
  RULE_LEVELS,
  SHAPES,
  shapesFor,
  SIDES,
  type Look,
  type OffencePlayer,
  type Personnel,
  type Shape,
  type Side,
} from '../../../src/engine/index.ts';

const lookOf = (players: readonly OffencePlayer[]): Look => ({
  id: asLookId('new'),
  name: 'new',
  players,
  motion: null,
  runs: [],
  protections: [],
});

/** Every code of five men, met or not, in every shape, suited or not, to both sides. */
const EVERY: readonly Personnel[] = [0, 1, 2, 3].flatMap((backs) =>
  [0, 1, 2, 3]
    .filter((tightEnds) => backs + tightEnds <= 5)
    .map((tightEnds) => ({ code: `${backs}${tightEnds}`, backs, tightEnds })),
);
const CASES = EVERY.flatMap((who) =>
  SHAPES.flatMap((shape) => SIDES.map((side) => [`${who.code} ${shape.name} ${side}`, who, shape, side] as const)),
);

describe.each(CASES)('%s', (_name, who: Personnel, shape: Shape, side: Side) => {
  const players = lineUp(who, shape, side);
  const look = lookOf(players);

  it('is legal at every level and from every spot', () => {
    // NFHS 2-14-1, 7-2-5; NCAA 7-1-4; NFL 7-5-1, as the engine's own check reads them.
    for (const level of RULE_LEVELS) {
      for (const spot of PLACES) expect(readLook(look, level, spot).faults).toEqual([]);
    }
  });

  it('has eleven of that code, seven on the line, five who may catch', () => {
    const facts = readLook(look, 'professional', 'middle');
    expect(new Set(players.map(({ id }) => id)).size).toBe(11);
    expect(facts.personnel).toBe(who.code);
    expect(facts.onLine).toHaveLength(7);
    const eligible = facts.receivers.filter((receiver) => receiver.eligible).length + facts.backs.length;
    expect(eligible).toBe(5);
    expect(facts.receivers.filter((receiver) => !receiver.eligible)).toEqual([]);
  });

  it('has nobody on the toes of another', () => {
    for (const a of players) {
      for (const b of players) {
        if (a !== b) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThan(0.85);
      }
    }
  });
});

describe('what is offered', () => {
  it('gives every code a shape', () => {
    for (const who of PERSONNEL) expect(shapesFor(who)).not.toEqual([]);
  });

  const offered = PERSONNEL.flatMap((who) =>
    shapesFor(who).map((shape) => [`${who.code} ${shape.name}`, who, shape] as const),
  );
  it.each(offered)('%s is what its name says', (_name, who: Personnel, shape: Shape) => {
    const facts = readLook(lookOf(lineUp(who, shape, 'right')), 'high-school', 'middle');
    const classes = formationClasses(facts);
    if (shape.formation !== null) expect(classes).toContain(shape.formation);
    else expect(facts.backs).toHaveLength(1);
  });
});

// Common practice, no source: who stands where in the looks every coach draws first. + is the defence's right.
describe('the looks a coach draws first', () => {
  it.each<[string, Shape['id'], Side, string]>([
    ['11', 'doubles', 'right', 'X-13.5 on, H-7.5 off, Y4 on, Z13.5 off'],
    ['11', 'trips', 'right', 'X-13.5 on, Y4 on, H7.5 off, Z13.5 off'],
    ['11', 'trips', 'left', 'Z-13.5 off, H-7.5 off, Y-4 on, X13.5 on'],
    ['10', 'trips', 'right', 'X-13.5 on, A7.5 off, H10.5 off, Z13.5 on'],
    ['11', 'bunch', 'right', 'X-13.5 on, H6.2 off, Y7.6 on, Z9 off'],
    ['11', 'wing', 'right', 'X-13.5 on, Y4 on, H5.2 off, Z13.5 off'],
    ['12', 'wing', 'left', 'Z-13.5 off, U-5.2 off, Y-4 on, X13.5 on'],
    ['21', 'i', 'right', 'X-13.5 on, Y4 on, Z13.5 off'],
    ['22', 'i', 'right', 'X-13.5 off, U-4 on, Y4 on'],
    ['10', 'empty', 'right', 'X-13.5 on, A-7.5 off, B7.5 off, H10.5 off, Z13.5 on'],
  ])('%s %s %s', (code, id, side, men) => {
    const who = PERSONNEL.find((each) => each.code === code);
    const shape = SHAPES.find((each) => each.id === id);
    if (who === undefined || shape === undefined) throw new Error('Nobody offers that');
    const split = lineUp(who, shape, side)
      .filter(({ x, kind }) => Math.abs(x) > 3 && kind !== 'lineman')
      .toSorted((a, b) => a.x - b.x)
      .map(({ letter, x, y }) => `${letter}${x} ${y >= -1 ? 'on' : 'off'}`);
    expect(split.join(', ')).toBe(men);
  });
});
