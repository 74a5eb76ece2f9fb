import { landmarkOf, ZONES, type FieldMarks, type Place, type Point, type Yards, type Zone } from '../engine/index.ts';
import { ZONE_NAMES, ZONE_REACH } from './marks/zones.ts';

/** A zone where a man would drop to it, before anything else is in its way. */
export interface ZoneRing {
  readonly zone: Zone;
  readonly side: Place;
  readonly at: Point;
  /** How far its ring reaches from its middle. */
  readonly rx: Yards;
  readonly ry: Yards;
  /** As it stands in the ring, without its side. */
  readonly name: string;
}

/** The zones that lie over the ball; all others are one on each side. */
const IN_THE_MIDDLE: readonly Zone[] = ['hole', 'middle'];

/** Every zone that man could drop to, at its landmark on this field. Both quarters of a side are one zone with two rings. */
export function zoneRings(field: FieldMarks, man: Point): readonly ZoneRing[] {
  return ZONES.flatMap((zone) => {
    const sides: readonly Place[] = IN_THE_MIDDLE.includes(zone) ? ['middle'] : ['left', 'right'];
    const ranks = zone === 'quarter' ? [0, 1] : [0];
    return sides.flatMap((side) => ranks.map((rank) => ring(field, man, zone, side, rank)));
  });
}

function ring(field: FieldMarks, man: Point, zone: Zone, side: Place, rank: number): ZoneRing {
  const run = { fits: [], firm: false, support: null };
  const at = landmarkOf(field, man, { kind: 'drop', zone, side, run }, rank);
  const [rx, ry] = ZONE_REACH[zone];
  return { zone, side, at, rx, ry, name: ZONE_NAMES[zone] };
}
