/** Pressures that send five or six from the odd fronts. */
import type { Pressure } from '../../../src/engine/index.ts';
import {
  contain,
  edgeGap,
  gap,
  inOrder,
  past,
  peeling,
  rush,
  tell,
  AWAY_EDGE,
  AWAY_FROM_TIGHT_END,
  AWAY_INSIDE,
  awayEndOut,
  CALL_EDGE,
  CALL_END,
  CALL_INSIDE,
  callEndIn,
  NOSE,
  noseOpposite,
  offTheAwayEdge,
  offTheCallEdge,
  pressure,
  TO_BACK,
  TO_FIELD,
  TO_TIGHT_END,
  AWAY_FROM_BACK,
} from '../../../src/starter/index.ts';

/** Both inside backers cross behind the nose, the call one first; the nose loops to the B away, the end there works out. */
const coppice = pressure(
  {
    id: 'coppice',
    name: 'Coppice',
    tags: ['inside backers cross', 'to the field'],
    callSide: TO_FIELD,
    coverage: 'three-deep-hook',
    rushers: 5,
    day: 6,
  },
  tell(CALL_INSIDE, 'path', inOrder(rush(gap('A', 'away'), 'penetrate'), 'first', AWAY_INSIDE)),
  tell(
    AWAY_INSIDE,
    'path',
    inOrder(rush(gap('A', 'call'), 'penetrate', null, past('over', CALL_INSIDE)), 'second', CALL_INSIDE),
  ),
  tell(NOSE, 'movement', inOrder(rush(gap('B', 'away'), 'loop'), 'first', CALL_INSIDE)),
  awayEndOut,
  callEndIn,
);

/** Two off one edge: the outside backer on the edge, the inside backer in B behind the end's stick to A. */
const lapwing = pressure(
  {
    id: 'lapwing',
    name: 'Lapwing',
    tags: ['edge and inside', 'open side'],
    callSide: AWAY_FROM_TIGHT_END,
    coverage: 'three-deep-roll',
    rushers: 5,
    day: 6,
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tell(CALL_INSIDE, 'path', inOrder(rush(gap('B', 'call'), 'penetrate'), 'second', CALL_END)),
  tell(CALL_END, 'movement', rush(gap('A', 'call'), 'slant')),
  noseOpposite,
  awayEndOut,
);

/** The same two change places: the outside backer flat into B, the inside backer over the top of him to contain. */
const sedge = pressure(
  {
    id: 'sedge',
    name: 'Sedge',
    tags: ['exchange', 'tight end side'],
    callSide: TO_TIGHT_END,
    coverage: 'three-deep-roll',
    rushers: 5,
    day: 7,
  },
  tell(
    CALL_EDGE,
    'path',
    inOrder(rush(gap('B', 'call'), 'penetrate', 'spill', past('under', CALL_INSIDE)), 'first', CALL_INSIDE),
  ),
  tell(
    CALL_INSIDE,
    'path',
    inOrder(contain(edgeGap('call'), 'loop', null, past('over', CALL_EDGE)), 'second', CALL_EDGE),
  ),
  tell(CALL_END, 'movement', rush(gap('A', 'call'), 'slant')),
  noseOpposite,
  awayEndOut,
);

/**
 * Both edges in front of the ends inside, who are told nothing: they have B, and contain when the edge outside them leaves
 * with the back.
 */
const tussock = pressure(
  {
    id: 'tussock',
    name: 'Tussock',
    tags: ['both edges'],
    callSide: AWAY_FROM_BACK,
    coverage: 'four-deep-two-under',
    rushers: 5,
    day: 7,
  },
  tell(CALL_EDGE, 'path', peeling(offTheCallEdge)),
  tell(AWAY_EDGE, 'path', peeling(offTheAwayEdge)),
);

/**
 * Six: the outside backer off the edge the back is set to, and both inside backers. He leaves with the back, and the end inside
 * him, who is told nothing, contains then; the other end works out.
 */
const spate = pressure(
  {
    id: 'spate',
    name: 'Spate',
    tags: ['six', 'to the back'],
    callSide: TO_BACK,
    coverage: 'three-deep-hot',
    rushers: 6,
    day: 8,
  },
  tell(CALL_EDGE, 'path', peeling(offTheCallEdge)),
  tell(CALL_INSIDE, 'path', rush(gap('A', 'call'), 'penetrate')),
  tell(AWAY_INSIDE, 'path', rush(gap('B', 'away'), 'penetrate')),
  noseOpposite,
  awayEndOut,
);

export const fiveManPressures: readonly Pressure[] = [coppice, lapwing, sedge, tussock, spate];
