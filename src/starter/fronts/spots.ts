/**
 * Where men stand, shared by the fronts. Depths are yards off the ball: linemen 1 (the middle of a man whose hand is a foot
 * off it), backers on the edge 1 to 4, inside backers 4.5, safeties 10 to 12, corners 7 (common practice, no source).
 */
import {
  asLookId,
  asRoleId,
  type AlignRule,
  type BaseJob,
  type ByHand,
  type FrontRole,
  type GapRef,
} from '../../engine/index.ts';
import {
  apex,
  edgeGap,
  gap,
  offBall,
  offEdge,
  onBody,
  onReceiver,
  openSide,
  receivers,
  tightEnd,
  tightEndAndWing,
  trips,
  two,
} from '../words.ts';

export const FIRST_LEVEL = 1;
export const EDGE_DEPTH = 1.5;
export const SECOND_LEVEL = 4.5;
const CORNER_DEPTH = 7;
const DEEP = 11;

/** What he does against the pass when nobody tells him; his gaps, the most natural first. */
export const plays = (pass: BaseJob['pass'], ...gaps: GapRef[]): BaseJob => ({ gaps, style: 'one-gap', pass });
const TWO_GAPS: BaseJob = { gaps: [gap('A', 'left'), gap('A', 'right')], style: 'two-gap', pass: 'rush' };
const NO_GAP: BaseJob = { gaps: [], style: 'one-gap', pass: 'none' };

export const place = (role: string, base: BaseJob, ...rules: AlignRule[]): FrontRole => ({
  role: asRoleId(role),
  rules,
  base,
});

export const nose = place('nose', TWO_GAPS, onBody('snapper', 'head', FIRST_LEVEL));

/** On the tight end or the wing outside him; halfway to a slot; else on the edge. */
export const onTheEdge: readonly AlignRule[] = [
  onBody('last', 'outside-foot', FIRST_LEVEL, tightEndAndWing('mine')),
  onBody('end', 'outside-foot', FIRST_LEVEL, tightEnd('mine')),
  apex(2, 4, two('mine')),
  offEdge(1.5, EDGE_DEPTH),
];

/** A back over the slot; where his side has a tight end, only for the second of three receivers. */
export const overTheSlot: readonly AlignRule[] = [
  onReceiver(2, 'inside', 5, trips('mine')),
  onReceiver(2, 'inside', 5, two('mine'), openSide('mine')),
];

export const edgePlays = plays('none', edgeGap('mine'), gap('D', 'mine'), gap('C', 'mine'));

/** Over the guard; out to the tackle where three receivers pull him out, and in to the ball where they pull his mate out. */
export const insideBacker: readonly AlignRule[] = [
  onBody('tackle', 'head', SECOND_LEVEL, trips('mine')),
  onBody('guard', 'inside', SECOND_LEVEL, trips('other')),
  onBody('guard', 'outside-foot', SECOND_LEVEL),
];

/** Against tackles over, the tight end stands where the tackle would; no rule sees that, so a hand sets the edge there. */
export const atTheTackle = (role: string): ByHand => ({
  look: asLookId('unbalanced-11'),
  role: asRoleId(role),
  x: -4.2,
  y: EDGE_DEPTH,
});

const safety: readonly AlignRule[] = [onReceiver(2, 'inside', 10, trips('mine')), offBall(5, DEEP)];

/** Over the outside receiver; where that is a tight end, an edge man behind the backer. */
const corner: readonly AlignRule[] = [
  offEdge(2.5, 5, tightEnd('mine'), receivers('mine', 'exactly', 1)),
  offEdge(2.5, 5, tightEndAndWing('mine'), receivers('mine', 'at-most', 2)),
  onReceiver(1, 'outside', CORNER_DEPTH),
  offEdge(4, 6),
];

const safetyPlays = plays('none', edgeGap('mine'), gap('D', 'mine'));
export const safeties: readonly FrontRole[] = [
  place('strong-safety', safetyPlays, ...safety),
  place('free-safety', safetyPlays, ...safety),
];
export const corners: readonly FrontRole[] = [
  place('left-corner', NO_GAP, ...corner),
  place('right-corner', NO_GAP, ...corner),
];

/** The third safety stands over the ball and is nobody's first answer to a gap. */
export const middleSafety = place(
  'middle-safety',
  plays('none', gap('C', 'left'), gap('C', 'right')),
  offBall(0, DEEP + 1),
);
