/**
 * Three fronts on the same roles. Depths are yards off the ball: linemen 1 (the middle of a man whose hand is a foot off
 * it), backers on the edge 1 to 4, inside backers 4.5, safeties 10 to 12, corners 7 (common practice, no source).
 */
import {
  asFrontId,
  asLookId,
  asRoleId,
  type AlignRule,
  type BaseJob,
  type ByHand,
  type Front,
  type FrontRole,
  type GapRef,
} from '../../src/engine/index.ts';
import { apex, bodies, edgeGap, gap, offBall, offEdge, onBody, onReceiver, receivers } from './words.ts';

const FIRST_LEVEL = 1;
const EDGE_DEPTH = 1.5;
const SECOND_LEVEL = 4.5;
const CORNER_DEPTH = 7;
const DEEP = 11;

const hasTightEnd = bodies('mine', 'at-least', 3);
const hasWing = bodies('mine', 'at-least', 4);
const hasSlot = receivers('mine', 'at-least', 2);
const hasTrips = receivers('mine', 'at-least', 3);

/** He is a rusher of the base four, or not; his gaps, the most natural first. */
const plays = (rushes: boolean, ...gaps: GapRef[]): BaseJob => ({ gaps, style: 'one-gap', rushes });
const TWO_GAPS: BaseJob = { gaps: [gap('A', 'left'), gap('A', 'right')], style: 'two-gap', rushes: true };
const NO_GAP: BaseJob = { gaps: [], style: 'one-gap', rushes: false };

const place = (role: string, base: BaseJob, ...rules: AlignRule[]): FrontRole => ({
  role: asRoleId(role),
  rules,
  base,
});

const nose = place('nose', TWO_GAPS, onBody('snapper', 'head', FIRST_LEVEL));

/** On the tight end or the wing outside him; halfway to a slot; else on the edge. */
const onTheEdge: readonly AlignRule[] = [
  onBody('last', 'outside-foot', FIRST_LEVEL, hasWing),
  onBody('end', 'outside-foot', FIRST_LEVEL, hasTightEnd),
  apex(2, 4, hasSlot),
  offEdge(1.5, EDGE_DEPTH),
];

/** Over the guard; a step to the tackle where three receivers pull him out. */
const insideBacker: readonly AlignRule[] = [
  onBody('tackle', 'head', SECOND_LEVEL, hasTrips),
  onBody('guard', 'outside-foot', SECOND_LEVEL),
];

/** Against tackles over, the tight end stands where the tackle would; no rule sees that, so a hand sets the edge there. */
const TIGHT_END_AT_TACKLE: readonly ByHand[] = [
  { look: asLookId('unbalanced-11'), role: asRoleId('weak-edge'), x: -4.2, y: EDGE_DEPTH },
];

const safety: readonly AlignRule[] = [onReceiver(2, 'inside', 10, hasTrips), offBall(5, DEEP)];

/** Over the outside receiver; where that is a tight end, an edge man behind the backer. */
const corner: readonly AlignRule[] = [
  offEdge(2.5, 5, hasTightEnd, receivers('mine', 'exactly', 1)),
  offEdge(2.5, 5, hasWing, receivers('mine', 'at-most', 2)),
  onReceiver(1, 'outside', CORNER_DEPTH),
  offEdge(4, 6),
];

const safeties: readonly FrontRole[] = [
  place('strong-safety', plays(false, edgeGap('mine'), gap('D', 'mine')), ...safety),
  place('free-safety', plays(false, edgeGap('mine'), gap('D', 'mine')), ...safety),
];
const corners: readonly FrontRole[] = [
  place('left-corner', NO_GAP, ...corner),
  place('right-corner', NO_GAP, ...corner),
];

const edgeBacker = plays(false, edgeGap('mine'), gap('D', 'mine'), gap('C', 'mine'));

/** Ends outside the tackles with the C gaps, inside backers with the B gaps, the nose both A gaps. */
const oddEnd = [onBody('tackle', 'outside-foot', FIRST_LEVEL)];
const oddEndPlays = plays(true, gap('C', 'mine'), gap('B', 'mine'));
const oddInside = plays(false, gap('B', 'mine'), gap('A', 'mine'), gap('A', 'other'), gap('C', 'mine'));

const odd: Front = {
  id: asFrontId('odd'),
  name: 'Odd, ends outside',
  roles: [
    nose,
    place('left-end', oddEndPlays, ...oddEnd),
    place('right-end', oddEndPlays, ...oddEnd),
    place('strong-edge', edgeBacker, ...onTheEdge),
    place('weak-edge', edgeBacker, ...onTheEdge),
    place('strong-inside', oddInside, ...insideBacker),
    place('weak-inside', oddInside, ...insideBacker),
    ...safeties,
    ...corners,
  ],
  byHand: TIGHT_END_AT_TACKLE,
};

/** Ends inside the tackles with the B gaps; head up where a tight end makes a gap more. */
const titeEnd = [onBody('tackle', 'head', FIRST_LEVEL, hasTightEnd), onBody('tackle', 'inside-foot', FIRST_LEVEL)];
const titeEndPlays = plays(true, gap('B', 'mine'), gap('C', 'mine'));
const titeInside = plays(false, gap('A', 'mine'), gap('C', 'mine'), gap('A', 'other'), gap('B', 'mine'));

const tite: Front = {
  id: asFrontId('tite'),
  name: 'Odd, ends inside',
  roles: [
    nose,
    place('left-end', titeEndPlays, ...titeEnd),
    place('right-end', titeEndPlays, ...titeEnd),
    place('strong-edge', edgeBacker, ...onTheEdge),
    place('weak-edge', edgeBacker, ...onTheEdge),
    place('strong-inside', titeInside, ...insideBacker),
    place('weak-inside', titeInside, ...insideBacker),
    ...safeties,
    ...corners,
  ],
  byHand: TIGHT_END_AT_TACKLE,
};

/** Over the slot; where his side has a tight end, only for the second of three receivers. */
const overTheSlot = [
  onReceiver(2, 'inside', 5, hasTrips),
  onReceiver(2, 'inside', 5, hasSlot, bodies('mine', 'at-most', 2)),
];

/** The fifth back for the strong outside backer: the same front, lighter and wider on the strong side. */
const nickel: Front = {
  id: asFrontId('odd-fifth-back'),
  name: 'Odd, fifth back',
  roles: [
    nose,
    place('left-end', oddEndPlays, ...oddEnd),
    place('right-end', oddEndPlays, ...oddEnd),
    place('fifth-back', edgeBacker, ...overTheSlot, ...onTheEdge),
    place('weak-edge', edgeBacker, ...onTheEdge),
    place('strong-inside', oddInside, ...insideBacker),
    place('weak-inside', oddInside, ...insideBacker),
    ...safeties,
    ...corners,
  ],
  byHand: TIGHT_END_AT_TACKLE,
};

export const fronts: readonly Front[] = [odd, tite, nickel];
