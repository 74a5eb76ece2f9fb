/** Pressures for the fronts with other men or another line: each goes with the one front it is made for. */
import type { Pressure } from '../../../src/engine/index.ts';
import {
  atDepth,
  awayMan,
  callMan,
  drop,
  gap,
  on,
  receivers,
  rush,
  tell,
  tellBy,
  trips,
  AWAY_EDGE,
  AWAY_END,
  AWAY_INSIDE,
  awayEndBySlot,
  awayEndOut,
  CALL_EDGE,
  CALL_END,
  CALL_INSIDE,
  callEndInside,
  callEndOut,
  noseOpposite,
  offTheAwayEdge,
  offTheCallEdge,
  pressure,
  TO_BACK,
  TO_BOUNDARY,
  TO_FIELD,
} from '../../../src/starter/index.ts';

/**
 * Four on the line: an inside backer through B, both tackles into the A gaps, the ends out. Against three receivers on the
 * call side he is the one under the third of them, and his mate comes instead.
 */
const carr = pressure(
  {
    id: 'carr',
    name: 'Carr',
    tags: ['inside backer', 'four on the line'],
    callSide: TO_FIELD,
    coverage: 'three-deep-fifth-back',
    rushers: 5,
    day: 9,
  },
  tellBy(CALL_INSIDE, on([receivers('call', 'at-most', 2)], 'path', rush(gap('B', 'call'), 'penetrate'))),
  tellBy(AWAY_INSIDE, on([trips('call')], 'path', rush(gap('B', 'away'), 'penetrate'))),
  tell(callMan('tackles'), 'movement', rush(gap('A', 'call'), 'slant')),
  tell(awayMan('tackles'), 'movement', rush(gap('A', 'away'), 'slant')),
  callEndOut,
  awayEndOut,
);

/** Five on the line and nobody else: the edges spill and go with the back, the ends up through their own gaps. */
const staithe = pressure(
  {
    id: 'staithe',
    name: 'Staithe',
    tags: ['five on the line'],
    callSide: TO_BACK,
    coverage: 'man-nobody-free',
    rushers: 5,
    day: 9,
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tell(AWAY_EDGE, 'path', offTheAwayEdge),
  tell(CALL_END, 'movement', rush(gap('B', 'call'), 'penetrate')),
  tell(AWAY_END, 'movement', rush(gap('B', 'away'), 'penetrate')),
);

/** Three safeties: the outside backer off the short edge, the end there stays inside him. */
const leat = pressure(
  {
    id: 'leat',
    name: 'Leat',
    tags: ['edge', 'short side', 'rill'],
    callSide: TO_BOUNDARY,
    coverage: 'two-deep-five-under',
    rushers: 4,
    day: 10,
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  callEndInside,
  awayEndBySlot,
);

/**
 * Six backs: an edge and an inside backer come, the end on their side hits the tackle and drops. Against three receivers
 * there he stays in the rush and the inside backer, already out over the tackle, drops.
 */
const eyot = pressure(
  {
    id: 'eyot',
    name: 'Eyot',
    tags: ['shown', 'one edge'],
    callSide: TO_FIELD,
    coverage: 'three-deep-four-under',
    rushers: 4,
    day: 10,
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tellBy(
    CALL_INSIDE,
    on(
      [trips('call')],
      'path',
      drop('hook', 'middle', {
        fits: [gap('A', 'call'), gap('C', 'call'), gap('D', 'call')],
        firm: false,
        support: 'cutback',
      }),
      atDepth(2),
    ),
    on([], 'path', rush(gap('A', 'call'), 'penetrate'), atDepth(2)),
  ),
  tellBy(
    CALL_END,
    on([trips('call')], 'movement', rush(gap('B', 'call'), 'slant')),
    on([], 'movement', drop('hook', 'call', { fits: [gap('B', 'call')], firm: true, support: null })),
  ),
  noseOpposite,
  awayEndOut,
);

export const otherPressures: readonly Pressure[] = [carr, staithe, leat, eyot];
