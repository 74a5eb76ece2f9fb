import { assertNever } from '../base/index.ts';
import type { Severity, Verdict } from '../engine/index.ts';
import type { Face, Pen } from './pen.ts';

const INK = '#000000';

/** Everything that has a shape of its own on a sheet. */
export type SignName = Verdict | Severity | 'cannot-tell';

/**
 * The shape of a verdict or severity, so that no colour is needed: octagon for stop, triangle for check, ring with "i" for
 * note, ring with a tick for clean, struck ring for left out, square with "?" for what cannot be told. `size` is its height in points.
 */
export function drawSign(pen: Pen, sign: SignName, x: number, y: number, size: number): void {
  const { doc } = pen;
  const [middle, center, radius] = [x + size / 2, y + size / 2, size / 2];
  const inside = (text: string, colour: string, lower: number) => {
    const face: Face = { cut: 'bold', size: size * 0.72, colour };
    pen.draw(text, face, middle - pen.width(text, face) / 2, center - size * 0.44 + lower);
  };
  const corners = (count: number, turn: number): [number, number][] =>
    Array.from({ length: count }, (_, index) => {
      const angle = turn + (2 * Math.PI * index) / count;
      return [middle + radius * Math.cos(angle), center + radius * Math.sin(angle)];
    });
  doc.lineWidth(Math.max(0.7, size * 0.08));
  switch (sign) {
    case 'stop':
      doc.polygon(...corners(8, Math.PI / 8)).fill(INK);
      {
        inside('!', '#ffffff', 0);
        return;
      }
    case 'check':
      doc.polygon(...corners(3, -Math.PI / 2)).fill(INK);
      {
        inside('!', '#ffffff', size * 0.06);
        return;
      }
    case 'note':
      doc.circle(middle, center, radius * 0.92).stroke(INK);
      {
        inside('i', INK, 0);
        return;
      }
    case 'clean':
      doc.circle(middle, center, radius * 0.92).stroke(INK);
      doc.moveTo(x + size * 0.28, y + size * 0.52).lineTo(x + size * 0.45, y + size * 0.7);
      doc.lineTo(x + size * 0.74, y + size * 0.32).stroke(INK);
      return;
    case 'cannot-tell':
      doc.rect(x + size * 0.06, y + size * 0.06, size * 0.88, size * 0.88).stroke(INK);
      {
        inside('?', INK, 0);
        return;
      }
    case 'left-out':
      doc.circle(middle, center, radius * 0.92).stroke(INK);
      doc
        .moveTo(x + size * 0.2, y + size * 0.8)
        .lineTo(x + size * 0.8, y + size * 0.2)
        .stroke(INK);
      return;
    default:
      return assertNever(sign);
  }
}
