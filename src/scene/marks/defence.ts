import type { Assignment } from '../../engine/index.ts';
import { manRadius, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import { litRing } from './litRing.ts';
import { ellipse, label, part, type Tag } from './shape.ts';

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
  const count = letter.length;
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
