import { describe, expect, it } from 'vitest';
import type { RuleLevel } from '../../../src/engine/index.ts';
import { arrival, PASSER_DEPTHS, THROW_TIMES } from '../../../src/engine/move/index.ts';
import { moveOf, movesIn, type Sent } from './men.ts';

/** The depth the times below were derived for. */
const PASSER = { x: 0, y: -PASSER_DEPTHS.shotgun };

const timeOf = (sent: Sent, level: RuleLevel): number => {
  const time = arrival(moveOf(sent.role, movesIn({ men: [sent], level })), PASSER);
  if (time === null) throw new Error(`${sent.role} does not rush`);
  return time;
};

/** An earliest and a latest time, in seconds. */
type Times = readonly [number, number];

/**
 * A free rusher to a passer 6.5 yd deep. Derived outside the project from sprint times (linebackers: professional 1.62 s for 10 yd
 * and 4.65 for 40, high school 1.80 and 5.00: both from memory), 0.2 and 0.3 s of reaction, and 8 % more way round the edge. That
 * a rush from depth is late: "5 Tips for Developing a Blitz", MatchQuarters.
 */
const ROWS: readonly (readonly [name: string, sent: Sent, professional: Times, highSchool: Times])[] = [
  ['mugged in A, 1 yd off', { role: 'M', at: [0.67, 1], job: 'rush A-right' }, [1.5, 1.5], [1.8, 1.8]],
  ['edge backer on the line', { role: 'S', at: [5, 1], job: 'rush C-right' }, [1.8, 1.8], [2.1, 2.1]],
  ['inside backer from 4.5 yd', { role: 'M', at: [1.67, 4.5], job: 'rush B-right' }, [1.9, 2.0], [2.2, 2.3]],
  ['overhang 9 wide, 5 deep', { role: 'S', at: [9, 5], job: 'rush C-right' }, [2.4, 2.4], [2.7, 2.8]],
  ['safety from 10 yd', { role: 'SS', at: [2, 10], job: 'rush B-right' }, [2.4, 2.5], [2.8, 2.8]],
  ['corner from 14 yd wide', { role: 'RC', at: [14, 1], job: 'rush C-right' }, [2.5, 2.5], [2.8, 2.9]],
  // The same derivation, for a safety who does not creep up before the snap.
  ['safety from 12 yd through B', { role: 'SS', at: [6, 12], job: 'rush B-right' }, [2.7, 2.7], [3.1, 3.1]],
];

describe('a free rusher is at the passer', () => {
  const near = (time: number, [from, to]: Times): void => {
    expect(time).toBeGreaterThan(from - 0.1);
    expect(time).toBeLessThan(to + 0.1);
  };

  it.each(ROWS)('professional: %s', (_name, sent, times) => near(timeOf(sent, 'professional'), times));

  it.each(ROWS)('high school: %s', (_name, sent, _professional, times) => near(timeOf(sent, 'high-school'), times));

  it.each(ROWS)('college: between the two: %s', (_name, sent) => {
    const college = timeOf(sent, 'college');
    expect(college).toBeGreaterThan(timeOf(sent, 'professional'));
    expect(college).toBeLessThan(timeOf(sent, 'high-school'));
  });

  it('beats a quick throw only from the line', () => {
    const [mugged, , inside] = ROWS.map(([, sent]) => timeOf(sent, 'professional'));
    expect(mugged).toBeLessThan(THROW_TIMES.quick);
    expect(inside).toBeGreaterThan(THROW_TIMES.quick);
  });
});

describe('arrival', () => {
  it('is later the deeper the passer drops', () => {
    const move = moveOf('M', movesIn({ men: [{ role: 'M', job: 'rush B-right' }] }));
    const times = (['three-step', 'five-step', 'seven-step'] as const).map((drop) =>
      arrival(move, { x: 0, y: -PASSER_DEPTHS[drop] }),
    );
    expect(times.every((time) => time !== null)).toBe(true);
    expect(times).toEqual([...times].sort());
    expect(new Set(times).size).toBe(3);
  });

  it('a lineman is later than a backer on the same way, whatever his level', () => {
    for (const level of ['high-school', 'college', 'professional'] as const) {
      const at = [1, 1] as const;
      const nose = timeOf({ role: 'N', at, job: 'rush A-right' }, level);
      expect(nose).toBeGreaterThan(timeOf({ role: 'M', at, job: 'rush A-right' }, level));
    }
  });

  it('is nothing for a man who does not rush', () => {
    const moves = movesIn({ men: [{ role: 'M', job: 'drop hook-right' }] });
    expect(arrival(moveOf('M', moves), PASSER)).toBeNull();
  });

  it('a man who plays two gaps goes on from the block', () => {
    const move = moveOf('N', movesIn({ men: [] }));
    expect(move.errand).toBe('rush');
    expect(move.gapAt).toBeNull();
    expect(arrival(move, PASSER)).toBeGreaterThan(1.5);
  });
});
