import { describe, expect, it } from 'vitest';
import { BALL_SPEEDS, likelySpot, PASSER_DEPTHS, throwsFrom, THROW_TIMES } from '../../../src/engine/move/index.ts';
import { factsOf, LOOKS } from '../book.ts';

const NOBODY_PASSES = 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 rb:Q@0,-5 rb:T@1.5,-5';

describe('where the passer throws from', () => {
  // "The QB needs to be at least 7 yards deep": "5-Step Drop", thequarterbackblog.com, 2010.
  it('five steps are seven yards', () => {
    expect(PASSER_DEPTHS['five-step']).toBe(7);
    expect(likelySpot(factsOf(LOOKS['21 pro I']))).toEqual({ x: 0, y: -7 });
  });

  // Shotgun: 5 to 7 yd deep: "The Shotgun and the Pistol", liveabout.com.
  it('a shotgun passer throws from where shotgun passers stand', () => {
    const spot = likelySpot(factsOf(LOOKS['10 doubles']));
    expect(-(spot?.y ?? 0)).toBeGreaterThanOrEqual(5);
    expect(-(spot?.y ?? 0)).toBeLessThanOrEqual(7);
  });

  it('never in front of where he stands', () => {
    expect(throwsFrom(factsOf(LOOKS['10 doubles']), 'three-step')).toEqual({ x: 0, y: -5 });
    const deep = 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@1,-8 rb:T@2,-8';
    expect(throwsFrom(factsOf(deep), 'five-step')).toEqual({ x: 1, y: -8 });
  });

  it.each([
    ['nobody passes', NOBODY_PASSES],
    ['two men might', 'line wr:X@-18 wr:H@-9,-1.5 wr:Y@9,-1.5 wr:Z@18 qb:Q@0,-5 qb:T@1.5,-5'],
  ])('nowhere when %s', (_name, look) => {
    expect(likelySpot(factsOf(look))).toBeNull();
    expect(throwsFrom(factsOf(look), 'five-step')).toBeNull();
  });
});

describe('when and how fast', () => {
  // Median time to throw 2.5 s against four rushers, 2.0 against seven (professional, 2022 to 2025, FTN data).
  it('a five-step throw is about the median, a quick one earlier, a deep one later', () => {
    expect(Math.abs(THROW_TIMES['five-step'] - 2.5)).toBeLessThan(0.2);
    expect(THROW_TIMES.quick).toBeLessThan(2);
    expect(THROW_TIMES['seven-step']).toBeGreaterThan(2.5);
  });

  // 53.7 mph: "Does Ball Velocity Tell Us Anything About QB Success?", rotoviz.com, 2016. A mile is 1760 yd.
  it('a professional pass flies at 53.7 miles an hour', () => {
    expect(BALL_SPEEDS.professional).toBeCloseTo((53.7 * 1760) / 3600, 1);
    expect(BALL_SPEEDS.college).toBeGreaterThan(BALL_SPEEDS['high-school']);
    expect(BALL_SPEEDS.college).toBeLessThan(BALL_SPEEDS.professional);
  });
});
