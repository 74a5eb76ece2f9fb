/** What the pressures are written with: the bases of the call side, the men, and the line movements they share. */
import {
  asCoverageId,
  asLookId,
  asPressureId,
  type LookId,
  type Pressure,
  type SideStep,
  type Tell,
} from '../../engine/index.ts';
import {
  always,
  awayFrom,
  awayMan,
  callMan,
  contain,
  edgeGap,
  gap,
  man,
  on,
  rush,
  single,
  slotOn,
  tell,
  tellBy,
  tightEnd,
  toward,
  type CallSide,
} from '../words.ts';

interface Menu {
  readonly id: string;
  readonly name: string;
  readonly tags: readonly string[];
  readonly callSide: readonly SideStep[];
  readonly coverage: string;
  readonly rushers: number | null;
  readonly notAgainst?: readonly LookId[];
  /** The day of camp it is put in. */
  readonly day: number | null;
}

export const pressure = (menu: Menu, ...tells: Tell[]): Pressure => ({
  id: asPressureId(menu.id),
  name: menu.name,
  tags: menu.tags,
  callSide: menu.callSide,
  tells,
  coverage: asCoverageId(menu.coverage),
  rushers: menu.rushers,
  notAgainst: menu.notAgainst ?? [],
  installDay: menu.day,
});

export const NOSE = man('nose');
export const CALL_END = callMan('ends');
export const AWAY_END = awayMan('ends');
export const CALL_EDGE = callMan('outside-backers');
export const AWAY_EDGE = awayMan('outside-backers');
export const CALL_INSIDE = callMan('inside-backers');
export const AWAY_INSIDE = awayMan('inside-backers');
export const CALL_SAFETY = callMan('safeties');
export const CALL_CORNER = callMan('corners');

/** The bases of the call side, each with its tie-breaks; the last step always decides. */
export const TO_TIGHT_END = [toward('tight-end'), toward('receivers'), toward('field'), always('right')];
export const AWAY_FROM_TIGHT_END = [awayFrom('tight-end'), awayFrom('receivers'), awayFrom('field'), always('left')];
export const TO_FIELD = [toward('field'), toward('receivers'), always('right')];
export const TO_BOUNDARY = [awayFrom('field'), awayFrom('receivers'), always('left')];
export const TO_BACK = [toward('back'), toward('tight-end'), toward('receivers'), always('right')];
export const AWAY_FROM_BACK = [awayFrom('back'), awayFrom('tight-end'), awayFrom('receivers'), always('left')];
export const TO_RECEIVERS = [toward('receivers'), toward('tight-end'), toward('field'), always('right')];

export const EMPTY = [asLookId('empty-00'), asLookId('empty-11'), asLookId('back-out-11')];

/** Nose: slants to the call; goes opposite the inside backer. */
export const toCall = rush(gap('A', 'call'), 'slant');
export const noseToCall = tell(NOSE, 'movement', toCall);
/** Only where the end away from the call stays inside; where he works out for a slot the nose keeps both his gaps. */
export const noseToCallUnlessSlotAway = tellBy(
  NOSE,
  on([tightEnd('away')], 'movement', toCall),
  on([single('away')], 'movement', toCall),
);
export const noseOpposite = tell(NOSE, 'consequence', rush(gap('A', 'away'), 'slant'));

/** The end steps out and keeps the passer in; or he slants in against the run and still keeps the passer in. */
const out = (side: CallSide) => contain(gap('C', side), 'loop');
const slantIn = (side: CallSide) => contain(gap('B', side), 'slant');
export const callEndOut = tell(CALL_END, 'movement', out('call'));
export const awayEndOut = tell(AWAY_END, 'movement', out('away'));
export const callEndIn = tell(CALL_END, 'movement', slantIn('call'));
/** In behind somebody who comes off the edge and contains there. */
export const callEndInside = tell(CALL_END, 'movement', rush(gap('B', 'call'), 'slant'));
export const awayEndIn = tell(AWAY_END, 'movement', slantIn('away'));
/** In, but out where a slot on his side leaves nobody for the edge. */
export const awayEndBySlot = tellBy(
  AWAY_END,
  on(slotOn('away'), 'movement', out('away')),
  on([], 'movement', slantIn('away')),
);

/** Off the edge, flat at the heels of the last man: he spills, the force is outside him. */
export const offTheCallEdge = contain(edgeGap('call'), 'penetrate', 'spill');
export const offTheAwayEdge = contain(edgeGap('away'), 'penetrate', 'spill');
