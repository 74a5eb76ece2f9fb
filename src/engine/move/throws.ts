import { depthOf } from '../facts/surface.ts';
import type { LookFacts, OffencePlayer, Point, Yards } from '../types/index.ts';
import type { RuleLevel } from '../vocabulary.ts';

/**
 * How deep the passer stands when he throws, in yards behind the ball. Five steps: 7 yd ("5-Step Drop", thequarterbackblog.com,
 * 2010). Three and seven steps: two yards less and more (from memory). Shotgun: he stands 5 to 7 yd deep ("The Shotgun and the
 * Pistol", liveabout.com) and drops a little: 6.5, the depth the published arrival times are for.
 */
export const PASSER_DEPTHS = {
  'three-step': 5,
  'five-step': 7,
  'seven-step': 9,
  shotgun: 6.5,
} as const satisfies Record<string, Yards>;
export type PasserDepth = keyof typeof PASSER_DEPTHS;

/**
 * When the ball is gone, in seconds after the snap. Quick game 1.5 to 1.8, five steps (three from the shotgun) about 2.4, seven
 * steps and play action 2.8 to 3.2: from memory. Beside them: median time to throw 2.5 s against four rushers, 2.2 against six
 * (professional, 2022 to 2025, FTN data).
 */
export const THROW_TIMES = { quick: 1.8, 'five-step': 2.4, 'seven-step': 2.8 } as const;
export type ThrowTime = keyof typeof THROW_TIMES;

/**
 * How fast a pass flies, in yards per second. Professional: 53.7 mph, mean of 111 passers measured ("Does Ball Velocity Tell Us
 * Anything About QB Success?", rotoviz.com, 2016). High school: 45 mph (from memory). College: halfway.
 */
export const BALL_SPEEDS: Readonly<Record<RuleLevel, number>> = {
  'high-school': 22,
  college: 24.1,
  professional: 26.3,
};

/** A passer nearer than this has his hands under the snapper; a pistol stands 3 to 4 yd deep (liveabout.com). */
const UNDER_CENTRE: Yards = 2;

/** Where a passer who drops so deep throws from: straight behind where he stands. Null: nobody passes, or two men might. */
export function throwsFrom(facts: LookFacts, depth: PasserDepth): Point | null {
  const passer = onlyPasser(facts);
  return passer === null ? null : { x: passer.x, y: -Math.max(PASSER_DEPTHS[depth], depthOf(passer)) };
}

/** Where he most likely throws from: five steps from under the snapper, else a little deeper than he stands. */
export function likelySpot(facts: LookFacts): Point | null {
  const passer = onlyPasser(facts);
  return passer === null ? null : throwsFrom(facts, depthOf(passer) < UNDER_CENTRE ? 'five-step' : 'shotgun');
}

/** The man who passes, if there is one and no other; a look may be drawn with two. */
function onlyPasser({ players }: LookFacts): OffencePlayer | null {
  const [passer, ...more] = [...players.values()].filter(({ kind }) => kind === 'passer');
  return passer === undefined || more.length > 0 ? null : passer;
}
