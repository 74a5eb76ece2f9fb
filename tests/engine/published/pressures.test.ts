import { describe, expect, it } from 'vitest';
import { analyse, asPlayerId, type RunConcept, type Setup } from '../../../src/engine/index.ts';
import { frozen } from '../book.ts';
import { BOUNDARY_CORNER, FIELD_CROSS } from './fourThree.ts';
import * as fireZones from './oddFireZones.ts';
import * as others from './oddOthers.ts';
import { other, waysOf, wayText, type Row, type Way } from './row.ts';
import { lookOf, setupOf } from './setup.ts';
import { SHORT_YARDAGE } from './threeThreeFive.ts';
import { containTold, coverTold, elevenTold, findingsTold, forceTold, gapsTold, receiverTold } from './told.ts';

/*
 * Pressures as they were published, man by man. Beside each in the tables stand its source and how much of it was published.
 * Cover is first responsibility as the formation stands: where a rule goes by who releases where, the tables say from which
 * alignment of the back they hold, and the other one is run below.
 */
const ROWS: readonly Row[] = [
  ...Object.values(fireZones),
  ...Object.values(others),
  FIELD_CROSS,
  BOUNDARY_CORNER,
  SHORT_YARDAGE,
];
const RIGHT: Way = { call: 'right', back: 'call', stand: 0 };

function testWay(row: Row, way: Way): void {
  const analysis = analyse(frozen(setupOf(row, way)));

  it('gives every man his gap, his run role and his pass job', () => {
    const expected = row.men.map(({ man, gap, run, pass }) => [man, gap, run, pass]);
    expect(elevenTold(analysis, row, way.call)).toEqual(expected);
  });

  it('counts rush, under, deep and man', () => {
    expect(analysis.passCount).toEqual({ ...row.counts, free: 0 });
  });

  it('names contain and force', () => {
    expect(containTold(analysis)).toBe(row.contain);
    expect(forceTold(analysis)).toBe(row.force);
  });

  it('has one owner for every gap', () => {
    for (const owners of Object.values(gapsTold(analysis, way.call))) expect(owners).toMatch(/^[A-Z]{2}$/);
  });

  it('says who answers every receiver', () => {
    expect(coverTold(analysis, way.call)).toEqual(row.cover);
  });

  it('fills every zone of the shell by the man told to', () => {
    expect(analysis.zones.map(({ how }) => how)).toEqual(row.needs.map(() => 'told'));
  });

  it('finds nothing but what the row says', () => {
    expect(findingsTold(analysis)).toEqual(row.finds[way.stand]);
  });
}

for (const row of ROWS) {
  describe(`${row.id}: ${row.does}`, () => {
    for (const way of waysOf(row)) describe(wayText(way), () => testWay(row, way));
  });
}

it('has fifteen pressures, each with its source and status', () => {
  expect(new Set(ROWS.map((row) => row.id)).size).toBe(15);
  expect(ROWS.filter((row) => row.source === '' || row.status === '')).toEqual([]);
});

/** The men whose row is another one in the second table, by job and result. */
const changed = (first: Row, second: Row): string =>
  first.men
    .filter((one) => {
      const same = second.men.find((each) => each.man === one.man);
      return same?.job !== one.job || same.gap !== one.gap || same.pass !== one.pass;
    })
    .map(({ man }) => man)
    .join(' ');

describe('what changes from one table to another', () => {
  it('the outside and the inside backer swap edge and B, and nobody else changes', () => {
    expect(changed(fireZones.EDGE_AND_B, fireZones.UNDERNEATH)).toBe('CO CI');
  });

  it('the same rush with four under and two deep: nobody who rushes changes', () => {
    expect(changed(fireZones.EDGE_AND_B, others.TWO_DEEP)).toBe('AI AO CS AS CC AC');
  });
});

/** A row as it stands with the back on the side the table does not have. */
const withBack = (row: Row, back: Way['back']): Readonly<Record<string, string>> =>
  coverTold(analyse(setupOf(row, { ...RIGHT, back })), 'right');

describe('the back on the other side', () => {
  it.each([
    ['the hook player of that side has him', others.BACKER_B, 'away', 'AI'],
    ['the edge rusher of that side leaves with him', others.SIX_HOT, 'away', 'AO'],
    ['the flat player of that side has him', others.TWO_DEEP, 'call', 'CC'],
  ] as const)('%s', (_name, row, back, who) => {
    expect(withBack(row, back)).toEqual({ ...row.cover, R: who });
  });
});

describe('the gap of the full back', () => {
  /** "5 Tips for Developing a Blitz", MatchQuarters (no gap may be left); that a lead back makes one: from memory. */
  it.each(['call', 'away'] as const)('led to the %s side, is for a man who has no gap of the line', (side) => {
    const row = fireZones.CRASH_AND_SCRAPE;
    const drawn = setupOf(row, RIGHT);
    const concept: RunConcept = 'iso';
    const known = { concept, side: side === 'call' ? 'right' : 'left', passOption: false } as const;
    const analysis = analyse({ ...drawn, look: { ...drawn.look, runs: [known] } });
    const [answer] = analysis.runs;
    if (answer?.kind !== 'answered') throw new Error('the look has no lead back');
    expect(answer.floating.map((each) => each.by)).toEqual(['AO']);
    expect(findingsTold(analysis)).toEqual([]);
  });
});

describe('the motion that calls it', () => {
  const row = others.MOTION_EDGE;

  /** Two receivers on each side; the away slot runs across to be the third of the call side. */
  function withMotion(call: Way['call']): Setup {
    const way: Way = { ...RIGHT, call, back: 'away' };
    const look = lookOf('doubles', way);
    const to = { x: call === 'right' ? 6 : -6, y: -1.5 };
    return { ...setupOf(row, way), look: { ...look, motion: { player: asPlayerId('H'), to } } };
  }

  it.each(['left', 'right'] as const)('to the %s: no side before it, that side after it', (call) => {
    const analysis = analyse(withMotion(call));
    expect(analysis.motion?.first.kind).toBe('tie');
    expect(analysis.first.side).toMatchObject({ kind: 'decided', side: call });
    expect(analysis.facts.receivers.map((each) => receiverTold(analysis, each.player, call)).sort()).toEqual([
      '#1-away',
      '#1-call',
      '#2-call',
      '#3-call',
    ]);
  });

  it.each(['left', 'right'] as const)('to the %s: the table holds after it', (call) => {
    const analysis = analyse(withMotion(call));
    const expected = row.men.map(({ man, gap, run, pass }) => [man, gap, run, pass]);
    expect(elevenTold(analysis, row, call)).toEqual(expected);
    expect(coverTold(analysis, call)).toEqual(row.cover);
    expect(coverTold(analysis, other(call))).not.toEqual(row.cover);
    expect(findingsTold(analysis)).toEqual([]);
  });
});
