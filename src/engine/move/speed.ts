import type { Yards } from '../types/index.ts';
import type { Room, RuleLevel } from '../vocabulary.ts';

/** How a man picks up speed: v(t) = top (1 - e^(-t / rise)). `top` in yards per second, `rise` in seconds. */
export interface Pace {
  readonly top: number;
  readonly rise: number;
}

/** A get-off model: how long men take to react to the snap, and how they run. Estimates, all of them. */
export interface SpeedModel {
  /** Seconds from the snap to the first step. */
  readonly reaction: number;
  readonly rooms: Readonly<Record<Room, Pace>>;
}

/**
 * Seconds for 10 and 40 yd that the paces below are fitted to. Professional: linebackers 1.62 and 4.65 (from memory; the
 * combine's mean is 4.68 outside, 4.75 inside). Linemen and secondary, 40 yd: mean of ends (4.829, 503 men) and tackles
 * (5.099, 477), of corners (4.493, 735) and safeties (4.560, 523), weighted by their number (combine 2000 to 2022,
 * github.com/nflverse/nflverse-pfr, data/combine.csv). 10 yd: the 30 best of each position (edge 1.63, interior 1.73; corner
 * 1.57, safety 1.58), thesportsdaily.com after The Athletic, second-hand. High school: linebackers 1.80 and 5.00 (from
 * memory); the other rooms by the same ratios, 1.80 / 1.62 and 5.00 / 4.65.
 */
export const SPRINTS = {
  professional: {
    line: { ten: 1.68, forty: 4.96 },
    linebackers: { ten: 1.62, forty: 4.65 },
    secondary: { ten: 1.575, forty: 4.521 },
  },
  'high-school': {
    line: { ten: 1.867, forty: 5.334 },
    linebackers: { ten: 1.8, forty: 5 },
    secondary: { ten: 1.75, forty: 4.861 },
  },
} as const satisfies Record<
  Exclude<RuleLevel, 'college'>,
  Record<Room, { readonly ten: number; readonly forty: number }>
>;

/** The visual reaction time is about 0.2 to 0.25 s (psychology texts, from memory); high school a tenth more (estimate). */
const PROFESSIONAL: SpeedModel = {
  reaction: 0.2,
  rooms: {
    line: { top: 9.29, rise: 0.653 },
    linebackers: { top: 10.13, rise: 0.703 },
    secondary: { top: 10.42, rise: 0.684 },
  },
};

const HIGH_SCHOOL: SpeedModel = {
  reaction: 0.3,
  rooms: {
    line: { top: 8.87, rise: 0.825 },
    linebackers: { top: 9.72, rise: 0.888 },
    secondary: { top: 10, rise: 0.864 },
  },
};

/** The get-off model of each rule level. College: halfway between high school and professional in every number (a guess). */
export const SPEED_MODELS: Readonly<Record<RuleLevel, SpeedModel>> = {
  'high-school': HIGH_SCHOOL,
  college: {
    reaction: (HIGH_SCHOOL.reaction + PROFESSIONAL.reaction) / 2,
    rooms: {
      line: halfway(HIGH_SCHOOL.rooms.line, PROFESSIONAL.rooms.line),
      linebackers: halfway(HIGH_SCHOOL.rooms.linebackers, PROFESSIONAL.rooms.linebackers),
      secondary: halfway(HIGH_SCHOOL.rooms.secondary, PROFESSIONAL.rooms.secondary),
    },
  },
  professional: PROFESSIONAL,
};

function halfway(a: Pace, b: Pace): Pace {
  return { top: (a.top + b.top) / 2, rise: (a.rise + b.rise) / 2 };
}

/**
 * A drop is run partly backward, partly turned: this share of the top speed. Running backward reaches about 0.7 of forward
 * speed (Uthoff et al., Strength and Conditioning Journal 2019;41(5):48-56: the figure from memory); the 0.8 is an estimate.
 */
export const DROP_SHARE = 0.8;

/** Seconds a man who fits a run gap reads before he goes. An estimate, from memory: about two steps. */
export const READ_TIME = 0.4;

/** The pace of a man who drops. */
export function dropping(pace: Pace): Pace {
  return { ...pace, top: pace.top * DROP_SHARE };
}

/** Yards run after `seconds` of running. */
export function runIn({ top, rise }: Pace, seconds: number): Yards {
  return seconds <= 0 ? 0 : top * (seconds - rise * (1 - Math.exp(-seconds / rise)));
}

/** Seconds it takes to run so far: the inverse of `runIn`, to a thousandth of a millisecond. */
export function timeToRun(pace: Pace, yards: Yards): number {
  if (yards <= 0) return 0;
  const { top, rise } = pace;
  // Never too early: from here the steps of Newton's method only come down, because the distance grows ever faster.
  let seconds = yards / top + rise;
  for (let step = 0; step < 50; step += 1) {
    const over = runIn(pace, seconds) - yards;
    if (over < 1e-6) break;
    seconds -= over / (top * (1 - Math.exp(-seconds / rise)));
  }
  return seconds;
}
