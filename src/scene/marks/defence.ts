import { assertNever } from '../../base/index.ts';
import type { Assignment, CombinedStatus, Point, Telling, Yards } from '../../engine/index.ts';
import { distance, distanceToPath } from '../geometry.ts';
import { manRadius, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import { ellipse, label, part, polygon, regular, type Tag } from './shape.ts';

/** The tag of everything that stands for one defender. */
export function manTag(picture: Picture, { aligned }: Assignment): Tag {
  const { id } = aligned.role;
  return { key: `man/${id}`, layer: 'mark', target: { kind: 'defender', role: id }, faint: picture.faint(id) };
}

/** A defender: his letters on a clear ground, no outline, so that nobody takes him for an offensive circle. */
export function manShapes(picture: Picture, assignment: Assignment): readonly Shape[] {
  const { aligned } = assignment;
  const tag = manTag(picture, assignment);
  const { letter } = aligned.role;
  const count = [...letter].length;
  const size = count <= 1 ? 1.05 : count === 2 ? 0.86 : 1.7 / count;
  const radius = manRadius(letter);
  const at = { x: aligned.x, y: aligned.y };
  const lit = picture.options.lit.roles.includes(aligned.role.id);
  return [
    ellipse(part(tag, 'ground'), { at, rx: radius, ry: 0.52, fill: 'ground', line: null, width: 0 }),
    label(tag, at, letter, { size, ink: 'defence-text', bold: !tag.faint }),
    ...(lit ? [litRing(part(tag, 'lit'), at, radius)] : []),
  ];
}

function litRing(tag: Tag, at: Point, radius: Yards): Shape {
  const reach = radius + 0.22;
  return ellipse(
    { ...tag, layer: 'sign' },
    { at, rx: reach, ry: reach, fill: null, line: 'highlight', stroke: 'double', width: 0.11 },
  );
}

/** Where a sign may stand about a man, the first choice first: -1 is left, or toward the line. */
const CORNERS: readonly Point[] = [
  { x: 1, y: 1 },
  { x: -1, y: 1 },
  { x: -1, y: -1 },
  { x: 1, y: -1 },
  { x: 1, y: 0 },
  { x: -1, y: 0 },
];

/** What signs keep clear of: men and paths. */
export interface Crowd {
  readonly men: readonly Point[];
  readonly paths: readonly (readonly Point[])[];
}

/**
 * The small signs about a man: that something is wrong with him, which pressure tells him, that he is the force. Each takes
 * the place with the most room, in steps of a third of a yard, so that equally good ones stay in order.
 */
export function signShapes(picture: Picture, assignment: Assignment, crowd: Crowd): readonly Shape[] {
  const { aligned, combined, run } = assignment;
  const tag: Tag = { ...manTag(picture, assignment), layer: 'sign' };
  const reach = manRadius(aligned.role.letter);
  const at = (corner: Point, wide: Yards) => ({
    x: aligned.x + corner.x * (reach + wide),
    y: aligned.y + corner.y * 0.46,
  });
  const free = [...CORNERS];
  const next = (halfWidth: Yards): Point => {
    const places = free.map((corner) => at(corner, halfWidth + 0.04));
    const rooms = places.map((place) => Math.round(Math.min(0.9, roomAt(place, halfWidth, crowd)) * 3));
    const best = rooms.indexOf(Math.max(...rooms));
    free.splice(best, 1);
    return places[best] ?? aligned;
  };
  const told = picture.analysis.setup.second === null ? '' : toldBy(combined.first, combined.second);
  return [
    ...warning(part(tag, 'warning'), next, combined.status),
    ...(told === '' ? [] : [small(part(tag, 'told'), next(told.length * 0.15), told)]),
    ...(run.support === 'force' ? [small(part(tag, 'force'), next(0.16), 'F')] : []),
  ];
}

/** How far the nearest man or path is from a sign; men count from the rim of their letters. */
function roomAt(place: Point, halfWidth: Yards, { men, paths }: Crowd): Yards {
  const sign = [-halfWidth, 0, halfWidth].map((x) => ({ x: place.x + x, y: place.y }));
  return Math.min(
    ...sign.flatMap((point) => [
      ...men.map((man) => distance(man, point) - 0.4),
      ...paths.map((points) => distanceToPath(point, points)),
    ]),
  );
}

function small(tag: Tag, at: Point, text: string): Shape {
  return label(tag, at, text, { size: 0.56, ink: 'muted', bold: true, halo: true });
}

/** "1", "2" or "1+2": which pressure says something to him. The shell behind the rush does not count. */
function toldBy(first: Telling | null, second: Telling | null): string {
  return [speaks(first) ? '1' : '', speaks(second) ? '2' : ''].filter((number) => number !== '').join('+');
}

function speaks(telling: Telling | null): boolean {
  return telling !== null && (telling.kind === 'unresolved' || telling.basis !== 'coverage');
}

/** An octagon for what stops the call, a triangle for what the coach must decide. */
function warning(tag: Tag, next: (halfWidth: Yards) => Point, status: CombinedStatus): readonly Shape[] {
  switch (status) {
    case 'conflict':
      return sign(tag, next(0.4), 8, 'stop', '!');
    case 'unresolved':
      return sign(tag, next(0.4), 8, 'stop', '?');
    case 'two-manners':
      return sign(tag, next(0.4), 3, 'check', '!');
    case 'untold':
    case 'one':
    case 'same':
    case 'yields':
      return [];
    default:
      return assertNever(status);
  }
}

function sign(tag: Tag, at: Point, corners: number, ink: 'stop' | 'check', text: string): readonly Shape[] {
  const radius = corners === 3 ? 0.5 : 0.42;
  return [
    polygon(tag, { points: regular(at, radius, corners), fill: ink, line: 'ground', width: 0.06 }),
    label(part(tag, 'text'), at, text, { size: 0.62, ink: 'ground', bold: true }),
  ];
}
