import {
  fieldAt,
  gapKey,
  type Analysis,
  type Gap,
  type PlayerId,
  type Point,
  type RoleId,
  type Yards,
} from '../engine/index.ts';
import { zoneRings, type Scene, type ZoneRing } from '../scene/index.ts';
import type { Picking, PickPlace } from '../store/index.ts';
import type { PickEvent } from './tools/index.ts';
import { toPixels, toYards, type Pixel, type Viewport } from './viewport.ts';

/** A gap as something to point at: its slot, and the ground in front of it up to the line. */
export interface GapArea {
  readonly gap: Gap;
  readonly left: Yards;
  readonly right: Yards;
  readonly top: Yards;
  readonly bottom: Yards;
}

/** Everything on the field that a job can be picked by. */
export interface PickGround {
  readonly defenders: readonly { readonly role: RoleId; readonly at: Point }[];
  readonly gaps: readonly GapArea[];
  /** Whoever may catch a pass. */
  readonly receivers: readonly { readonly player: PlayerId; readonly at: Point }[];
  readonly passer: Point | null;
  /** The zones of the man who is being told. */
  readonly zones: readonly ZoneRing[];
}

/** What is picked so far: the man, and then the place. */
export type Picked = Pick<Picking, 'man' | 'place'>;

/** Half the width of a man's mark. */
export const MARK: Yards = 0.6;

/** How far in front of the line the ground of a gap still counts; defenders stand beyond it. */
const IN_FRONT: Yards = 0.3;

/** The ground of an analysis as it is drawn: the slots are the picture's own. Zones are those of the man, if there is one. */
export function pickGround(analysis: Analysis, scene: Scene, man: RoleId | null): PickGround {
  const { facts, assignments, setup } = analysis;
  const passer = facts.passer === null ? undefined : facts.players.get(facts.passer);
  const ids = [...facts.receivers.filter(({ eligible }) => eligible), ...facts.backs].map(({ player }) => player);
  const his = assignments.find(({ aligned }) => aligned.role.id === man)?.aligned;
  return {
    defenders: assignments.map(({ aligned }) => ({ role: aligned.role.id, at: { x: aligned.x, y: aligned.y } })),
    gaps: gapAreas(scene),
    receivers: ids.flatMap((player) => {
      const at = facts.players.get(player);
      return at === undefined ? [] : [{ player, at: { x: at.x, y: at.y } }];
    }),
    passer: passer === undefined ? null : { x: passer.x, y: passer.y },
    zones: his === undefined ? [] : zoneRings(fieldAt(setup.level, setup.spot), his),
  };
}

/** The slots of a picture: the boxes that fill with the letters of those who have the gap. */
function gapAreas(scene: Scene): readonly GapArea[] {
  const areas = new Map<string, GapArea>();
  for (const shape of scene.shapes) {
    if (shape.kind !== 'polygon' || shape.target?.kind !== 'gap') continue;
    const { gap } = shape.target;
    if (areas.has(gapKey(gap))) continue;
    const xs = shape.points.map(({ x }) => x);
    const ys = shape.points.map(({ y }) => y);
    areas.set(gapKey(gap), {
      gap,
      left: Math.min(...xs),
      right: Math.max(...xs),
      top: Math.min(...ys),
      bottom: IN_FRONT,
    });
  }
  return [...areas.values()];
}

/**
 * What a pointer is on while a job is picked; null: on nothing that counts. Before a man is picked only defenders do.
 * `radius` is half the smallest target, in pixels. Men come before gaps, and gaps before grass; grass is its nearest zone.
 */
export function pickAt(
  ground: PickGround,
  picking: Picked,
  pixel: Pixel,
  viewport: Viewport,
  radius: number,
): Exclude<PickEvent, { kind: 'back' }> | null {
  const reach = Math.max(radius, viewport.scale * MARK);
  const far = (at: Point): number => {
    const middle = toPixels(viewport, at);
    return Math.hypot(middle.px - pixel.px, middle.py - pixel.py);
  };
  const defender = nearest(ground.defenders, ({ at }) => far(at), reach);
  if (picking.man === null) return defender === null ? null : { kind: 'man', role: defender.role };
  const point = toYards(viewport, pixel);
  const onMark = viewport.scale * MARK;
  const gap = nearest(ground.gaps, (area) => outside(area, point) * viewport.scale, radius);
  const place = (of: PickPlace) => ({ kind: 'place', place: of }) as const;
  // A finger may be on a back and on the passer beside him: it means the nearer one.
  const theirs = nearest(offenceOf(ground), ({ at }) => far(at), gap === null ? reach : onMark);
  if (theirs !== null) return place(theirs.of);
  if (gap !== null && (outside(gap, point) === 0 || defender === null)) return place({ kind: 'gap', gap: gap.gap });
  if (defender !== null) return { kind: 'man', role: defender.role };
  if (gap !== null) return place({ kind: 'gap', gap: gap.gap });
  if (point.y < GRASS_FROM) return null;
  const zone = nearest(
    ground.zones,
    ({ at, rx, ry }) => Math.hypot((point.x - at.x) / rx, (point.y - at.y) / ry),
    Infinity,
  );
  return zone === null ? null : place({ kind: 'zone', zone: zone.zone, side: zone.side });
}

/** Everybody of the offence a job can be picked by. */
function offenceOf({ receivers, passer }: PickGround): readonly { readonly of: PickPlace; readonly at: Point }[] {
  const catchers = receivers.map(({ player, at }) => ({ of: { kind: 'receiver', player } as const, at }));
  return passer === null ? catchers : [...catchers, { of: { kind: 'passer' }, at: passer }];
}

/** Nearer to the line than this nobody drops. */
const GRASS_FROM: Yards = 2;

/** How far a point is from a gap's ground; 0 inside. */
function outside(area: GapArea, { x, y }: Point): Yards {
  return Math.hypot(Math.max(area.left - x, 0, x - area.right), Math.max(area.top - y, 0, y - area.bottom));
}

function nearest<Item>(items: readonly Item[], far: (item: Item) => number, most: number): Item | null {
  let best = most;
  let found: Item | null = null;
  for (const item of items) {
    const distance = far(item);
    if (distance <= best && (found === null || distance < best)) {
      best = distance;
      found = item;
    }
  }
  return found;
}
