import type { Leverage, Side } from '../vocabulary.ts';
import type { LookFacts, Point, Technique, Yards } from '../types/index.ts';
import { LEVERAGE_OFFSET } from './spots.ts';
import { signOf } from '../facts/surface.ts';

/** Half a foot: within it two alignments are the same one. */
const TOLERANCE: Yards = 1 / 6;

/** A tight end who is not there would stand 4 ft outside the tackle, centre to centre (2 ft bodies, 2 ft splits). */
const GHOST_SPLIT: Yards = 4 / 3;
/** Ghost men are counted up to the fifth body; farther out nobody speaks of techniques. */
const LAST_GHOST = 4;

/** Farther outside than this beyond the last body, or deeper than this, and a man has no technique on the surface. */
const TECHNIQUE_REACH: Yards = 2.5;
const BOX_DEPTH: Yards = 6.5;

/** Sides in the middle: this close to the snapper's middle a man is over the ball. */
export const MIDDLE: Yards = TOLERANCE;

interface BodyPlace {
  readonly index: number;
  readonly out: Yards;
  readonly ghost: boolean;
}

/** The bodies of a side as distances outward, with one ghost beyond a short surface so that a wide man has a number. */
function bodiesOutward(facts: LookFacts, side: Side): readonly BodyPlace[] {
  const sign = signOf(side);
  const bodies: BodyPlace[] = facts.surface[side].map((body) => ({
    index: body.index,
    out: body.x * sign,
    ghost: false,
  }));
  const last = bodies[bodies.length - 1];
  if (last !== undefined && last.index < LAST_GHOST && last.index === 2) {
    bodies.push({ index: last.index + 1, out: last.out + GHOST_SPLIT, ghost: true });
  }
  return bodies;
}

/** The leverage whose offset is nearest; a shoulder and a half is still the shoulder, half way to the next man is in the gap. */
function leverageOf(offset: Yards): Leverage {
  let best: Leverage = 'head';
  for (const [name, at] of LEVERAGE_ENTRIES) {
    if (Math.abs(offset - at) < Math.abs(offset - LEVERAGE_OFFSET[best]) - 1e-9) best = name;
  }
  return best;
}
const LEVERAGE_ENTRIES: readonly (readonly [Leverage, Yards])[] = [
  ['inside', LEVERAGE_OFFSET.inside],
  ['inside-foot', LEVERAGE_OFFSET['inside-foot']],
  ['head', LEVERAGE_OFFSET.head],
  ['outside-foot', LEVERAGE_OFFSET['outside-foot']],
  ['outside', LEVERAGE_OFFSET.outside],
];

/** Whether a spot is in the box: not deeper than a linebacker walks, not wider than a man outside the last body. */
export function inBox(at: Point, facts: LookFacts): boolean {
  const side: Side = at.x < 0 ? 'left' : 'right';
  const last = facts.surface[side][facts.surface[side].length - 1];
  return last !== undefined && at.y <= BOX_DEPTH && Math.abs(at.x) <= Math.abs(last.x) + TECHNIQUE_REACH;
}

/**
 * From a spot back to the technique: the nearest body and the leverage on it. Null outside the box.
 * On the snapper there is no inside: both shoulders are outside ones.
 */
export function techniqueAt(at: Point, facts: LookFacts): Technique | null {
  if (!inBox(at, facts)) return null;
  const side: Side = at.x < 0 ? 'left' : 'right';
  const out = Math.abs(at.x);
  let best: BodyPlace | null = null;
  for (const body of bodiesOutward(facts, side)) {
    // Exactly between two bodies belongs to the inner one: a man in the A gap at 2 ft is the snapper's.
    if (best === null || Math.abs(out - body.out) < Math.abs(out - best.out) - 1e-9) best = body;
  }
  if (best === null) return null;
  return {
    side: out <= MIDDLE ? 'middle' : side,
    index: best.index,
    leverage: leverageOf(out - best.out),
    ghost: best.ghost,
  };
}
