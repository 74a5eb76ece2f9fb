/**
 * Pressures that send three or four from the odd fronts. All names are words of our own, from wet country. A comment before
 * each says who comes and what the line does; the tells say it again in the engine's words.
 */
import type { Pressure } from '../../../src/engine/index.ts';
import {
  atDepth,
  drop,
  gap,
  inOrder,
  on,
  openSide,
  past,
  receivers,
  rush,
  tell,
  tellBy,
  tightEnd,
  trips,
  type CallSide,
  AWAY_EDGE,
  AWAY_END,
  AWAY_FROM_BACK,
  AWAY_FROM_TIGHT_END,
  AWAY_INSIDE,
  awayEndBySlot,
  awayEndIn,
  awayEndOut,
  CALL_CORNER,
  CALL_EDGE,
  CALL_END,
  callEndInside,
  CALL_INSIDE,
  CALL_SAFETY,
  callEndIn,
  callEndOut,
  EMPTY,
  NOSE,
  noseOpposite,
  noseToCallUnlessSlotAway,
  offTheAwayEdge,
  offTheCallEdge,
  pressure,
  TO_BACK,
  TO_BOUNDARY,
  TO_FIELD,
  TO_TIGHT_END,
  toCall,
} from '../../../src/starter/index.ts';

/** Two receivers there and nobody attached: half of a spread formation with two on each side. */
const twoByTwo = (side: CallSide) => [openSide(side), receivers(side, 'exactly', 2)];

/**
 * Outside backer through B, off the inside hip of the end who works out. With a tight end there the nose comes along, unless
 * three receivers on the other side hold him; and against two receivers on each side and nobody attached.
 */
const sluice = pressure(
  {
    id: 'sluice',
    name: 'Sluice',
    tags: ['outside backer', 'to the field'],
    callSide: TO_FIELD,
    coverage: 'three-deep-roll',
    rushers: 4,
    day: 1,
  },
  tell(
    CALL_EDGE,
    'path',
    inOrder(rush(gap('B', 'call'), 'penetrate', null, past('inside-hip', CALL_END)), 'second', CALL_END),
  ),
  callEndOut,
  tellBy(
    NOSE,
    on([tightEnd('call'), receivers('away', 'at-most', 2)], 'movement', toCall),
    on([...twoByTwo('call'), ...twoByTwo('away')], 'movement', toCall),
  ),
  awayEndBySlot,
);

/**
 * Inside backer through A on the call side; the nose takes the A away from him. Against three receivers there he is the one
 * under the third of them, so his mate comes instead, and the nose turns with them.
 */
const weir = pressure(
  {
    id: 'weir',
    name: 'Weir',
    tags: ['inside backer', 'to the field'],
    callSide: TO_FIELD,
    coverage: 'three-deep-hook',
    rushers: 4,
    day: 1,
  },
  tellBy(CALL_INSIDE, on([receivers('call', 'at-most', 2)], 'path', rush(gap('A', 'call'), 'penetrate'))),
  tellBy(AWAY_INSIDE, on([trips('call')], 'path', rush(gap('A', 'away'), 'penetrate'))),
  tellBy(NOSE, on([trips('call')], 'consequence', toCall), on([], 'consequence', rush(gap('A', 'away'), 'slant'))),
);

/** Outside backer off the edge, away from the tight end; the end there goes inside, the other one works out. */
const osier = pressure(
  {
    id: 'osier',
    name: 'Osier',
    tags: ['edge', 'open side'],
    callSide: AWAY_FROM_TIGHT_END,
    coverage: 'three-deep-roll',
    rushers: 4,
    day: 2,
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  callEndInside,
  awayEndOut,
);

/** Inside backer through B, away from the back; the end works out, the nose comes his way unless a slot is away. */
const teasel = pressure(
  {
    id: 'teasel',
    name: 'Teasel',
    tags: ['inside backer', 'away from the back'],
    callSide: AWAY_FROM_BACK,
    coverage: 'three-deep-hook',
    rushers: 4,
    day: 2,
  },
  tell(CALL_INSIDE, 'path', rush(gap('B', 'call'), 'penetrate')),
  callEndOut,
  noseToCallUnlessSlotAway,
  awayEndIn,
);

/**
 * Safety through B, walked up to 6½ yards, over the outside backer, who is in his zone before him; the end works out, the nose
 * goes opposite. Not against empty: he is too wide.
 */
const culvert = pressure(
  {
    id: 'culvert',
    name: 'Culvert',
    tags: ['safety', 'to the back'],
    callSide: TO_BACK,
    coverage: 'three-deep-hook',
    rushers: 4,
    day: 3,
    notAgainst: EMPTY,
  },
  tell(CALL_SAFETY, 'path', inOrder(rush(gap('B', 'call'), 'penetrate'), 'second', CALL_END), atDepth(6.5)),
  callEndOut,
  noseOpposite,
  awayEndBySlot,
);

/** Corner off the short edge; the end goes inside, the nose to the call, but to three receivers on the other side. */
const bittern = pressure(
  {
    id: 'bittern',
    name: 'Bittern',
    tags: ['corner', 'short side'],
    callSide: TO_BOUNDARY,
    coverage: 'three-deep-over',
    rushers: 4,
    day: 3,
  },
  tell(CALL_CORNER, 'path', offTheCallEdge, atDepth(2)),
  callEndInside,
  tellBy(NOSE, on([trips('away')], 'movement', rush(gap('A', 'away'), 'slant')), on([], 'movement', toCall)),
  awayEndBySlot,
);

/** Line movement only: the ends one gap to the call, the nose with them unless a slot is away. */
const marl = pressure(
  {
    id: 'marl',
    name: 'Marl',
    tags: ['line only', 'tight end side'],
    callSide: TO_TIGHT_END,
    coverage: 'three-deep-roll',
    rushers: 3,
    day: 4,
  },
  callEndOut,
  noseToCallUnlessSlotAway,
  awayEndIn,
);

/**
 * Four come, six are shown: both edges and an inside backer; the ends hit the tackle and drop. Against three receivers the
 * end on their side stays in the rush and the backer drops instead.
 */
const shown = atDepth(2);
const hitAndDrop = (side: 'call' | 'away') => drop('hook', side, { fits: [gap('B', side)], firm: true, support: null });
const staysIn = (side: 'call' | 'away') => rush(gap('B', side), 'penetrate');
const backerDrops = drop('hook', 'middle', {
  fits: [gap('A', 'away'), gap('A', 'call'), gap('C', 'call'), gap('D', 'call')],
  firm: false,
  support: 'cutback',
});
const withy = pressure(
  {
    id: 'withy',
    name: 'Withy',
    tags: ['shown', 'both edges'],
    callSide: AWAY_FROM_BACK,
    coverage: 'four-deep',
    rushers: 4,
    day: 4,
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tell(AWAY_EDGE, 'path', offTheAwayEdge),
  tellBy(
    CALL_INSIDE,
    on([trips('call')], 'path', backerDrops, shown),
    on([trips('away')], 'path', backerDrops, shown),
    on([], 'path', rush(gap('A', 'call'), 'penetrate'), shown),
  ),
  tellBy(NOSE, on([trips('call')], 'movement', toCall), on([], 'consequence', rush(gap('A', 'away'), 'slant'))),
  tellBy(CALL_END, on([trips('call')], 'movement', staysIn('call')), on([], 'movement', hitAndDrop('call'))),
  tellBy(AWAY_END, on([trips('away')], 'movement', staysIn('away')), on([], 'movement', hitAndDrop('away'))),
);

/**
 * A game inside: the away end first to A, the nose around him to B, the outside backer there contains. The nose is through, and
 * the outside backer is past, before an inside backer crosses to his man.
 */
const millrace = pressure(
  {
    id: 'millrace',
    name: 'Millrace',
    tags: ['line game', 'to the back'],
    callSide: TO_BACK,
    coverage: 'man-free',
    rushers: 4,
    day: 5,
  },
  tell(AWAY_END, 'movement', inOrder(rush(gap('A', 'away'), 'slant'), 'first', NOSE)),
  tell(NOSE, 'movement', inOrder(rush(gap('B', 'away'), 'loop', null, past('over', AWAY_END)), 'first', AWAY_INSIDE)),
  tell(AWAY_EDGE, 'path', inOrder(offTheAwayEdge, 'first', AWAY_INSIDE)),
  callEndIn,
);

export const fourManPressures: readonly Pressure[] = [
  sluice,
  weir,
  osier,
  teasel,
  culvert,
  bittern,
  marl,
  withy,
  millrace,
];
