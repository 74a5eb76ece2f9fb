import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ROOMS, RULE_LEVELS } from '../../../src/engine/index.ts';
import { SPEED_MODELS, SPRINTS } from '../../../src/engine/move/index.ts';
import { dropping, runIn, timeToRun } from '../../../src/engine/move/speed.ts';

const LEVELS = ['professional', 'high-school'] as const;

/**
 * Sprint times: linebackers from memory; the combine's means of 2000 to 2022 (github.com/nflverse/nflverse-pfr,
 * data/combine.csv): DE 4.829 (503 men), DT 5.099 (477), CB 4.493 (735), S 4.560 (523).
 */
describe('sprints', () => {
  const mean = (...groups: readonly (readonly [seconds: number, men: number])[]): number =>
    groups.reduce((sum, [seconds, men]) => sum + seconds * men, 0) / groups.reduce((sum, [, men]) => sum + men, 0);

  it('are the published means', () => {
    expect(SPRINTS.professional.line.forty).toBeCloseTo(mean([4.829, 503], [5.099, 477]), 2);
    expect(SPRINTS.professional.secondary.forty).toBeCloseTo(mean([4.493, 735], [4.56, 523]), 2);
    expect(SPRINTS.professional.linebackers).toEqual({ ten: 1.62, forty: 4.65 });
    expect(SPRINTS['high-school'].linebackers).toEqual({ ten: 1.8, forty: 5 });
  });

  it('in high school all rooms are slower by the linebackers’ ratio', () => {
    for (const room of ROOMS) {
      expect(SPRINTS['high-school'][room].ten / SPRINTS.professional[room].ten).toBeCloseTo(1.8 / 1.62, 2);
      expect(SPRINTS['high-school'][room].forty / SPRINTS.professional[room].forty).toBeCloseTo(5 / 4.65, 2);
    }
  });

  it.each(LEVELS.flatMap((level) => ROOMS.map((room) => [level, room] as const)))(
    'the pace of %s %s runs 10 and 40 yd in them',
    (level, room) => {
      const pace = SPEED_MODELS[level].rooms[room];
      expect(timeToRun(pace, 10)).toBeCloseTo(SPRINTS[level][room].ten, 2);
      expect(timeToRun(pace, 40)).toBeCloseTo(SPRINTS[level][room].forty, 2);
    },
  );

  // "LB most high-speed efforts; linemen lowest": Sanchez et al., Appl Sci 2023;13(16):9278; DB above DL: Bayliff et al., JSCR 2019.
  it('linemen are the slowest and the secondary the fastest, at every level', () => {
    for (const level of RULE_LEVELS) {
      const { line, linebackers, secondary } = SPEED_MODELS[level].rooms;
      expect(line.top).toBeLessThan(linebackers.top);
      expect(linebackers.top).toBeLessThan(secondary.top);
    }
  });

  it('college lies between the two', () => {
    const { 'high-school': low, college, professional: high } = SPEED_MODELS;
    expect(college.reaction).toBeCloseTo(0.25, 9);
    for (const room of ROOMS) {
      expect(college.rooms[room].top).toBeGreaterThan(low.rooms[room].top);
      expect(college.rooms[room].top).toBeLessThan(high.rooms[room].top);
    }
  });
});

describe('running', () => {
  const PACE = SPEED_MODELS.college.rooms.linebackers;

  it('takes no time for no way, and gets nowhere in no time', () => {
    expect(timeToRun(PACE, 0)).toBe(0);
    expect(timeToRun(PACE, -1)).toBe(0);
    expect(runIn(PACE, 0)).toBe(0);
    expect(runIn(PACE, -1)).toBe(0);
  });

  it('time and way are each other’s inverse', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 100, noNaN: true }), (yards) => {
        expect(runIn(PACE, timeToRun(PACE, yards))).toBeCloseTo(yards, 5);
      }),
      { seed: 20261125 },
    );
  });

  it('is never faster than the top speed, and reaches it', () => {
    expect(runIn(PACE, 1)).toBeLessThan(PACE.top);
    expect(runIn(PACE, 11) - runIn(PACE, 10)).toBeCloseTo(PACE.top, 3);
  });

  it('a drop is slower than a rush', () => {
    expect(timeToRun(dropping(PACE), 8)).toBeGreaterThan(timeToRun(PACE, 8));
  });
});
