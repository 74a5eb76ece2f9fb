import { assertNever } from '../../base/index.ts';
import type { Assignment, CombinedStatus, Point, Telling, Yards } from '../../engine/index.ts';
import { manRadius, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import { manTag } from './defence.ts';
import { drawnJobs } from './jobs.ts';
import { freestPlace } from './place.ts';
import { freeRushers } from './protection.ts';
import { label, part, polygon, regular, type Tag } from './shape.ts';

/** A sign that still needs a place beside its man. */
interface Sign {
  readonly assignment: Assignment;
  readonly halfWidth: Yards;
  readonly draw: (at: Point) => readonly Shape[];
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

/**
 * The small signs about the men: that something is wrong with one, that nobody blocks him, which pressure tells him, that he is
 * the force. Each takes the place about its man that is farthest from the other men, their paths and the signs before it.
 */
export function signShapes(picture: Picture, paths: readonly (readonly Point[])[]): readonly Shape[] {
  const { assignments } = picture.analysis;
  const signs = [warning, free, told, force].flatMap((kind) =>
    assignments.flatMap((each) => kind(picture, each) ?? []),
  );
  const taken: Point[] = [];
  return signs.flatMap((sign) => {
    const at = freest(picture, sign, paths, taken);
    taken.push(at);
    return sign.draw(at);
  });
}

/** The corner with the most room. */
function freest(picture: Picture, sign: Sign, paths: readonly (readonly Point[])[], taken: readonly Point[]): Point {
  const { aligned } = sign.assignment;
  const men = picture.analysis.assignments
    .map((other) => other.aligned)
    .filter((man) => man.role.id !== aligned.role.id)
    .map((man) => ({ at: man, radius: manRadius(man.role.letter) }));
  const out = manRadius(aligned.role.letter) + sign.halfWidth + 0.04;
  const places = CORNERS.map(({ x, y }) => ({ x: aligned.x + x * out, y: aligned.y + y * 0.46 }));
  const signs = taken.map((at) => ({ at, radius: 0.4 }));
  return freestPlace(places, sign.halfWidth, { paths, discs: [...men, ...signs] }) ?? aligned;
}

function tagOf(picture: Picture, assignment: Assignment, name: string): Tag {
  return { ...part(manTag(picture, assignment), name), layer: 'sign' };
}

function words(picture: Picture, assignment: Assignment, name: string, text: string, size: Yards = 0.56): Sign {
  const tag = tagOf(picture, assignment, name);
  const draw = (at: Point) => [label(tag, at, text, { size, ink: 'muted', bold: true, halo: true })];
  return { assignment, halfWidth: text.length * size * 0.29, draw };
}

/** "free": nobody blocks him in the protection that is shown. */
function free(picture: Picture, assignment: Assignment): Sign | null {
  return freeRushers(picture).includes(assignment.aligned.role.id)
    ? words(picture, assignment, 'free', 'free', 0.78)
    : null;
}

/**
 * Which pressure tells him, in a call of two. Where both are drawn, each path carries its own number; where only one of the two
 * is run, everybody would carry the same.
 */
function told(picture: Picture, assignment: Assignment): Sign | null {
  const { first, second } = assignment.combined;
  if (picture.analysis.choice !== null) return null;
  if (drawnJobs(assignment).some((drawn) => drawn.as !== 'only')) return null;
  const text = picture.analysis.setup.second === null ? '' : toldBy(first, second);
  return text === '' ? null : words(picture, assignment, 'told', text);
}

/** "F": he is the force on his side. */
function force(picture: Picture, assignment: Assignment): Sign | null {
  return assignment.run.support === 'force' ? words(picture, assignment, 'force', 'F') : null;
}

/** "1", "2" or "1+2": which pressure says something to him. The shell behind the rush does not count. */
function toldBy(first: Telling | null, second: Telling | null): string {
  return [speaks(first) ? '1' : '', speaks(second) ? '2' : ''].filter((number) => number !== '').join('+');
}

function speaks(telling: Telling | null): boolean {
  return telling !== null && (telling.kind === 'unresolved' || telling.basis !== 'coverage');
}

/** An octagon for what stops the call, a triangle for what the coach must decide. */
function warning(picture: Picture, assignment: Assignment): Sign | null {
  const look = warningOf(assignment.combined.status);
  if (look === null) return null;
  const { corners, ink, text } = look;
  const tag = tagOf(picture, assignment, 'warning');
  const draw = (at: Point) => [
    polygon(tag, { points: regular(at, corners === 3 ? 0.5 : 0.42, corners), fill: ink, line: 'ground', width: 0.06 }),
    label(part(tag, assignment.combined.status), at, text, { size: 0.62, ink: 'ground', bold: true }),
  ];
  return { assignment, halfWidth: 0.42, draw };
}

function warningOf(
  status: CombinedStatus,
): { readonly corners: number; readonly ink: 'stop' | 'check'; readonly text: string } | null {
  switch (status) {
    case 'conflict':
      return { corners: 8, ink: 'stop', text: '!' };
    case 'unresolved':
      return { corners: 8, ink: 'stop', text: '?' };
    case 'two-manners':
      return { corners: 3, ink: 'check', text: '!' };
    case 'untold':
    case 'one':
    case 'same':
    case 'yields':
    case 'either':
      return null;
    default:
      return assertNever(status);
  }
}
