import { assertNever } from '../../base/index.ts';
import type { Assignment, CombinedStatus, Telling, Yards } from '../../engine/index.ts';
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

function litRing(tag: Tag, at: { readonly x: Yards; readonly y: Yards }, radius: Yards): Shape {
  const reach = radius + 0.22;
  return ellipse(
    { ...tag, layer: 'sign' },
    { at, rx: reach, ry: reach, fill: null, line: 'highlight', stroke: 'double', width: 0.11 },
  );
}

/** The small signs about a man: which pressure tells him, that he is the force, and that something is wrong with him. */
export function signShapes(picture: Picture, assignment: Assignment): readonly Shape[] {
  const { aligned, combined, run } = assignment;
  const tag: Tag = { ...manTag(picture, assignment), layer: 'sign' };
  const reach = manRadius(aligned.role.letter);
  const told = picture.analysis.setup.second === null ? '' : toldBy(combined.first, combined.second);
  const outward = aligned.x < 0 ? -1 : 1;
  return [
    ...small(part(tag, 'told'), aligned.x + reach + 0.12 + told.length * 0.09, aligned.y + 0.42, told),
    ...(run.support === 'force' ? small(part(tag, 'force'), aligned.x + outward * (reach + 0.2), aligned.y - 0.42, 'F') : []),
    ...warning(part(tag, 'warning'), aligned.x - reach - 0.18, aligned.y + 0.5, combined.status),
  ];
}

function small(tag: Tag, x: Yards, y: Yards, text: string): readonly Shape[] {
  return text === '' ? [] : [label(tag, { x, y }, text, { size: 0.56, ink: 'muted', bold: true, halo: true })];
}

/** "1", "2" or "1+2": which pressure says something to him. The shell behind the rush does not count. */
function toldBy(first: Telling | null, second: Telling | null): string {
  return [speaks(first) ? '1' : '', speaks(second) ? '2' : ''].filter((number) => number !== '').join('+');
}

function speaks(telling: Telling | null): boolean {
  return telling !== null && (telling.kind === 'unresolved' || telling.basis !== 'coverage');
}

/** An octagon for what stops the call, a triangle for what the coach must decide. */
function warning(tag: Tag, x: Yards, y: Yards, status: CombinedStatus): readonly Shape[] {
  const at = { x, y };
  switch (status) {
    case 'conflict':
      return sign(tag, at, 8, 'stop', '!');
    case 'unresolved':
      return sign(tag, at, 8, 'stop', '?');
    case 'two-manners':
      return sign(tag, at, 3, 'check', '!');
    case 'untold':
    case 'one':
    case 'same':
    case 'yields':
      return [];
    default:
      return assertNever(status);
  }
}

function sign(tag: Tag, at: { x: Yards; y: Yards }, corners: number, ink: 'stop' | 'check', text: string): readonly Shape[] {
  const radius = corners === 3 ? 0.5 : 0.42;
  return [
    polygon(tag, { points: regular(at, radius, corners), fill: ink, line: 'ground', width: 0.06 }),
    label(part(tag, 'text'), { x: at.x, y: at.y }, text, { size: 0.62, ink: 'ground', bold: true }),
  ];
}
