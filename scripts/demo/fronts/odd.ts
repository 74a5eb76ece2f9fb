/** Odd fronts: three on the line, and who stands behind them. */
import { asFrontId, type Front } from '../../../src/engine/index.ts';
import {
  atTheTackle,
  corners,
  edgePlays,
  endsOutside,
  FIRST_LEVEL,
  gap,
  insideBacker,
  middleSafety,
  nose,
  odd,
  onBody,
  onTheEdge,
  overTheSlot,
  place,
  plays,
  safeties,
  SECOND_LEVEL,
  tightEnd,
} from '../../../src/starter/index.ts';

/** Ends inside the tackles with the B gaps; head up where a tight end makes a gap more. */
const titeEnd = [onBody('tackle', 'head', FIRST_LEVEL, tightEnd('mine')), onBody('tackle', 'inside-foot', FIRST_LEVEL)];
const titeEndPlays = plays('contain', gap('B', 'mine'), gap('C', 'mine'));
const titeInside = plays('none', gap('A', 'mine'), gap('C', 'mine'), gap('A', 'other'), gap('B', 'mine'));
const endsInside = [place('left-end', titeEndPlays, ...titeEnd), place('right-end', titeEndPlays, ...titeEnd)];

const tite: Front = {
  id: asFrontId('tite'),
  name: 'Odd, ends inside',
  roles: [
    nose,
    ...endsInside,
    place('strong-inside', titeInside, ...insideBacker),
    place('weak-inside', titeInside, ...insideBacker),
    place('strong-edge', edgePlays, ...onTheEdge),
    place('weak-edge', edgePlays, ...onTheEdge),
    ...safeties,
    ...corners,
  ],
  byHand: [atTheTackle('weak-edge')],
};

/** The fifth back for the strong outside backer: the same front, lighter and wider on the strong side. */
const nickel: Front = {
  id: asFrontId('odd-fifth-back'),
  name: 'Odd, fifth back',
  roles: [
    ...endsOutside,
    place('fifth-back', edgePlays, ...overTheSlot, ...onTheEdge),
    place('weak-edge', edgePlays, ...onTheEdge),
    ...safeties,
    ...corners,
  ],
  byHand: [atTheTackle('weak-edge')],
};

/** Backs for both outside backers: for passing downs. */
const dime: Front = {
  id: asFrontId('odd-sixth-back'),
  name: 'Odd, six backs',
  roles: [
    ...endsOutside,
    place('fifth-back', edgePlays, ...overTheSlot, ...onTheEdge),
    place('sixth-back', edgePlays, ...overTheSlot, ...onTheEdge),
    ...safeties,
    ...corners,
  ],
  byHand: [atTheTackle('sixth-back')],
};

/** The one backer behind the nose: C where a tight end makes it inside, else he is spare. */
const middleBacker = place(
  'middle-backer',
  plays('none', gap('C', 'left'), gap('C', 'right'), gap('B', 'left'), gap('B', 'right')),
  onBody('snapper', 'head', SECOND_LEVEL),
);

/** A third safety for an inside backer, in the middle behind the other one. */
const threeSafeties: Front = {
  id: asFrontId('odd-three-safeties'),
  name: 'Odd, three safeties',
  roles: [
    nose,
    ...endsInside,
    middleBacker,
    place('strong-edge', edgePlays, ...onTheEdge),
    place('weak-edge', edgePlays, ...onTheEdge),
    ...safeties,
    middleSafety,
    ...corners,
  ],
  byHand: [atTheTackle('weak-edge')],
};

export const oddFronts: readonly Front[] = [odd, tite, nickel, threeSafeties, dime];
