import { distance, toward, type Block, type Point, type RoleId } from '../../engine/index.ts';
import { nearestOn, pointsAlong } from '../geometry.ts';
import { OFFENCE_RADIUS, type Picture } from '../picture.ts';
import type { PathShape, Shape } from '../shapes.ts';
import { path, type Tag } from './shape.ts';

/** A bar is at least this long, however near the two come. */
const SHORTEST = 0.3;

/** One protection over the picture: from each blocker a short bar to where his rusher comes past him. */
export function blockShapes(picture: Picture, ways: readonly PathShape[]): readonly Shape[] {
  return (picture.protection?.blocks ?? []).flatMap((block) => bar(picture, block, ways));
}

/** Whoever nobody blocks in the protection that is shown. */
export function freeRushers(picture: Picture): readonly RoleId[] {
  return (picture.protection?.unblocked ?? []).map((each) => each.rusher);
}

function bar(picture: Picture, { blocker, rusher }: Block, ways: readonly PathShape[]): readonly Shape[] {
  const from = picture.playerAt(blocker);
  const stands = picture.manAt(rusher);
  if (from === null || stands === null) return [];
  const mine = ways.filter((way) => way.target?.kind === 'defender' && way.target.role === rusher);
  const [meet = stands] = mine
    .flatMap((way) => nearestOn(pointsAlong(way), from) ?? [])
    .toSorted((a, b) => distance(a, from) - distance(b, from));
  const tag: Tag = {
    key: `block/${blocker}/${rusher}`,
    layer: 'gap',
    target: { kind: 'offence', player: blocker },
    faint: false,
  };
  return [path(tag, { points: barPoints(from, meet, stands), ink: 'offence', width: 0.16, tip: 'tee' })];
}

/** From the rim of the blocker's circle toward the meeting point; where that lies in his circle, toward the man himself. */
function barPoints(from: Point, meet: Point, stands: Point): readonly Point[] {
  const goal = distance(from, meet) < OFFENCE_RADIUS + SHORTEST ? stands : meet;
  const reach = goal === meet ? distance(from, meet) : OFFENCE_RADIUS + SHORTEST;
  return [toward(from, goal, OFFENCE_RADIUS), toward(from, goal, reach)];
}
