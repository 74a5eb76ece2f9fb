/**
 * The menu. All names are words of our own, from wet country. A comment before each says who comes and what the line does;
 * the tells say it again in the engine's words.
 */
import {
  asCoverageId,
  asLookId,
  asPressureId,
  type LookId,
  type Pressure,
  type SideStep,
  type Tell,
} from '../../src/engine/index.ts';
import {
  always,
  atDepth,
  awayFrom,
  awayMan,
  bodies,
  callMan,
  contain,
  drop,
  edgeGap,
  gap,
  heelsOf,
  man,
  on,
  past,
  rush,
  tell,
  tellBy,
  toward,
} from './words.ts';

interface Menu {
  readonly id: string;
  readonly name: string;
  readonly tags: readonly string[];
  readonly callSide: readonly SideStep[];
  readonly coverage: string;
  readonly notAgainst?: readonly LookId[];
}

const pressure = (menu: Menu, ...tells: Tell[]): Pressure => ({
  id: asPressureId(menu.id),
  name: menu.name,
  tags: menu.tags,
  callSide: menu.callSide,
  tells,
  coverage: asCoverageId(menu.coverage),
  notAgainst: menu.notAgainst ?? [],
});

const NOSE = man('nose');
const CALL_END = callMan('ends');
const AWAY_END = awayMan('ends');
const CALL_EDGE = callMan('outside-backers');
const AWAY_EDGE = awayMan('outside-backers');
const CALL_INSIDE = callMan('inside-backers');
const AWAY_INSIDE = awayMan('inside-backers');
const CALL_SAFETY = callMan('safeties');
const CALL_CORNER = callMan('corners');

/** The bases of the call side, each with its tie-breaks; the last step always decides. */
const TO_TIGHT_END = [toward('tight-end'), toward('receivers'), toward('field'), always('right')];
const AWAY_FROM_TIGHT_END = [awayFrom('tight-end'), awayFrom('receivers'), awayFrom('field'), always('left')];
const TO_FIELD = [toward('field'), toward('receivers'), toward('tight-end'), always('right')];
const TO_BOUNDARY = [awayFrom('field'), awayFrom('receivers'), toward('back'), always('left')];
const TO_BACK = [toward('back'), toward('tight-end'), toward('field'), always('right')];
const AWAY_FROM_BACK = [awayFrom('back'), toward('receivers'), toward('field'), always('left')];
const TO_RECEIVERS = [toward('receivers'), toward('tight-end'), toward('field'), always('right')];

const EMPTY = [asLookId('empty-00'), asLookId('empty-11')];

const tightEnd = [bodies('call', 'at-least', 3)];

/** Nose: slants to the call; goes opposite the inside backer. */
const noseToCall = tell(NOSE, 'movement', rush(gap('A', 'call'), 'slant'));
const noseOpposite = tell(NOSE, 'consequence', rush(gap('A', 'away'), 'slant'));

/** The end steps out and keeps the passer in; or he slants in against the run and still keeps the passer in. */
const callEndOut = tell(CALL_END, 'movement', contain(gap('C', 'call'), 'loop'));
const awayEndOut = tell(AWAY_END, 'movement', contain(gap('C', 'away'), 'loop'));
const callEndIn = tell(CALL_END, 'movement', contain(gap('B', 'call'), 'slant'));
const awayEndIn = tell(AWAY_END, 'movement', contain(gap('B', 'away'), 'slant'));

/** Off the edge, flat at the heels of the last man: he spills, the force is outside him. */
const offTheCallEdge = contain(edgeGap('call'), 'penetrate', 'spill');
const offTheAwayEdge = contain(edgeGap('away'), 'penetrate', 'spill');

/** Outside backer through B: off the end's inside hip. From the end's heels where a tight end stands on his side. */
const insideTheHip = rush(gap('B', 'call'), 'penetrate', null, past('inside-hip', CALL_END));
const sluice = pressure(
  {
    id: 'sluice',
    name: 'Sluice',
    tags: ['four', 'outside backer'],
    callSide: TO_TIGHT_END,
    coverage: 'three-deep-roll',
  },
  tellBy(CALL_EDGE, on(tightEnd, 'path', insideTheHip, heelsOf(CALL_END)), on([], 'path', insideTheHip)),
  callEndOut,
  noseToCall,
  awayEndIn,
);

/** Inside backer through A on the call side; the nose takes the A away from him. */
const weir = pressure(
  { id: 'weir', name: 'Weir', tags: ['four', 'inside backer'], callSide: TO_FIELD, coverage: 'three-deep-roll' },
  tell(CALL_INSIDE, 'path', rush(gap('A', 'call'), 'penetrate')),
  noseOpposite,
);

/** Outside backer off the edge, away from the tight end; the end on the other side works out. */
const osier = pressure(
  { id: 'osier', name: 'Osier', tags: ['four', 'edge'], callSide: AWAY_FROM_TIGHT_END, coverage: 'three-deep-roll' },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  awayEndOut,
);

/** Inside backer through B, away from the back; the end works out, the nose comes his way. */
const teasel = pressure(
  {
    id: 'teasel',
    name: 'Teasel',
    tags: ['four', 'inside backer'],
    callSide: AWAY_FROM_BACK,
    coverage: 'three-deep-hook',
  },
  tell(CALL_INSIDE, 'path', rush(gap('B', 'call'), 'penetrate')),
  callEndOut,
  noseToCall,
  awayEndIn,
);

/** Safety through B, walked up to 6 yards; the end works out, the nose goes opposite. Not against empty: he is too wide. */
const culvert = pressure(
  {
    id: 'culvert',
    name: 'Culvert',
    tags: ['four', 'safety'],
    callSide: TO_BACK,
    coverage: 'three-deep-hook',
    notAgainst: EMPTY,
  },
  tell(CALL_SAFETY, 'path', rush(gap('B', 'call'), 'penetrate'), atDepth(6)),
  callEndOut,
  noseOpposite,
  awayEndIn,
);

/** Corner off the short edge; the end goes inside, the nose to the call. */
const bittern = pressure(
  { id: 'bittern', name: 'Bittern', tags: ['four', 'corner'], callSide: TO_BOUNDARY, coverage: 'three-deep-over' },
  tell(CALL_CORNER, 'path', offTheCallEdge, atDepth(2)),
  tell(CALL_END, 'movement', rush(gap('B', 'call'), 'slant')),
  noseToCall,
  awayEndIn,
);

/** Line movement only: all three one gap to the call. */
const marl = pressure(
  { id: 'marl', name: 'Marl', tags: ['three', 'line only'], callSide: TO_TIGHT_END, coverage: 'three-deep-roll' },
  callEndOut,
  noseToCall,
  awayEndIn,
);

/** Four come, six are shown: both edges and an inside backer; the ends hit the tackle and drop. */
const withy = pressure(
  { id: 'withy', name: 'Withy', tags: ['four', 'simulated'], callSide: AWAY_FROM_BACK, coverage: 'four-deep' },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tell(AWAY_EDGE, 'path', offTheAwayEdge),
  tell(CALL_INSIDE, 'path', rush(gap('A', 'call'), 'penetrate'), atDepth(2)),
  noseOpposite,
  tell(CALL_END, 'movement', drop('hook', 'call', { fits: [gap('B', 'call')], firm: true, support: null })),
  tell(AWAY_END, 'movement', drop('hook', 'away', { fits: [gap('B', 'away')], firm: true, support: null })),
);

/** Both inside backers cross, the call one first; the nose loops to the B away and the end there works out. */
const coppice = pressure(
  {
    id: 'coppice',
    name: 'Coppice',
    tags: ['five', 'inside backers cross'],
    callSide: TO_RECEIVERS,
    coverage: 'three-deep-hook',
  },
  tell(CALL_INSIDE, 'path', rush(gap('A', 'away'), 'penetrate')),
  tell(AWAY_INSIDE, 'path', rush(gap('A', 'call'), 'penetrate', null, past('over', CALL_INSIDE))),
  tell(NOSE, 'movement', rush(gap('B', 'away'), 'loop')),
  awayEndOut,
  callEndIn,
);

/** Two off one edge: the outside backer on the edge, the inside backer in B behind the end's stick to A. */
const lapwing = pressure(
  {
    id: 'lapwing',
    name: 'Lapwing',
    tags: ['five', 'edge and inside'],
    callSide: AWAY_FROM_TIGHT_END,
    coverage: 'three-deep-roll',
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tell(CALL_INSIDE, 'path', rush(gap('B', 'call'), 'penetrate')),
  tell(CALL_END, 'movement', rush(gap('A', 'call'), 'slant')),
  noseOpposite,
  awayEndOut,
);

/** The same two change places: the outside backer flat into B, the inside backer over the top of him to contain. */
const sedge = pressure(
  { id: 'sedge', name: 'Sedge', tags: ['five', 'exchange'], callSide: TO_TIGHT_END, coverage: 'three-deep-roll' },
  tell(CALL_EDGE, 'path', rush(gap('B', 'call'), 'penetrate', 'spill', past('under', CALL_INSIDE))),
  tell(CALL_INSIDE, 'path', contain(edgeGap('call'), 'loop', null, past('over', CALL_EDGE))),
  tell(CALL_END, 'movement', rush(gap('A', 'call'), 'slant')),
  noseOpposite,
  awayEndOut,
);

/** Both edges with the ends pinched. */
const tussock = pressure(
  {
    id: 'tussock',
    name: 'Tussock',
    tags: ['five', 'both edges'],
    callSide: TO_RECEIVERS,
    coverage: 'three-deep-edges',
  },
  tell(CALL_EDGE, 'path', offTheCallEdge),
  tell(AWAY_EDGE, 'path', offTheAwayEdge),
  tell(CALL_END, 'movement', rush(gap('B', 'call'), 'slant')),
  tell(AWAY_END, 'movement', rush(gap('B', 'away'), 'slant')),
);

/** A game inside: the away end first to A, the nose around him to B, the outside backer there contains. */
const millrace = pressure(
  { id: 'millrace', name: 'Millrace', tags: ['four', 'line game'], callSide: TO_BACK, coverage: 'man-free' },
  tell(AWAY_END, 'movement', rush(gap('A', 'away'), 'slant')),
  tell(NOSE, 'movement', rush(gap('B', 'away'), 'loop', null, past('over', AWAY_END))),
  tell(AWAY_EDGE, 'path', offTheAwayEdge),
  callEndIn,
);

export const pressures: readonly Pressure[] = [
  sluice,
  weir,
  osier,
  teasel,
  culvert,
  bittern,
  marl,
  withy,
  coppice,
  lapwing,
  sedge,
  tussock,
  millrace,
];
