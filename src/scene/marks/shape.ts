import type { Point, Yards } from '../../engine/index.ts';
import type { EllipseShape, Ink, LabelShape, Layer, PathShape, PolygonShape, Target } from '../shapes.ts';

/** What every shape of one mark shares. */
export interface Tag {
  readonly key: string;
  readonly layer: Layer;
  readonly target: Target | null;
  readonly faint: boolean;
}

/** A tag with a longer key, for one of several shapes of a mark. */
export function part(tag: Tag, name: string): Tag {
  return { ...tag, key: `${tag.key}/${name}` };
}

/** A mark that means nothing to a pointer. */
export function decoration(key: string, layer: Layer): Tag {
  return { key, layer, target: null, faint: false };
}

type Rest<Kind> = Omit<Kind, 'kind' | keyof Tag>;

/** A straight unbroken line without a tip, unless told otherwise. */
export function path(
  tag: Tag,
  shape: Pick<PathShape, 'points' | 'width' | 'ink'> & Partial<Pick<PathShape, 'curved' | 'stroke' | 'tip'>>,
): PathShape {
  return { kind: 'path', curved: false, stroke: 'solid', tip: 'none', ...tag, ...shape };
}

/** An ellipse with an unbroken line, unless told otherwise. */
export function ellipse(
  tag: Tag,
  shape: Omit<Rest<EllipseShape>, 'stroke'> & { stroke?: EllipseShape['stroke'] },
): EllipseShape {
  return { kind: 'ellipse', stroke: 'solid', ...tag, ...shape };
}

/** A polygon with an unbroken line, unless told otherwise. */
export function polygon(
  tag: Tag,
  shape: Omit<Rest<PolygonShape>, 'stroke'> & { stroke?: PolygonShape['stroke'] },
): PolygonShape {
  return { kind: 'polygon', stroke: 'solid', ...tag, ...shape };
}

/** Words centred on a point. */
export function label(
  tag: Tag,
  at: Point,
  text: string,
  shape: { readonly size: Yards; readonly ink: Ink; readonly bold?: boolean; readonly halo?: boolean },
): LabelShape {
  return { kind: 'label', bold: false, halo: false, ...tag, ...shape, at: { x: at.x, y: at.y }, text };
}

/** The corners of a box about a point. */
export function box(at: Point, halfWidth: Yards, halfHeight: Yards): readonly Point[] {
  return [
    { x: at.x - halfWidth, y: at.y - halfHeight },
    { x: at.x + halfWidth, y: at.y - halfHeight },
    { x: at.x + halfWidth, y: at.y + halfHeight },
    { x: at.x - halfWidth, y: at.y + halfHeight },
  ];
}

/** A regular polygon, flat side down for an even count and a corner toward the defence for an odd one. */
export function regular(at: Point, radius: Yards, corners: number): readonly Point[] {
  const turn = corners % 2 === 0 ? Math.PI / corners : -Math.PI / 2;
  return Array.from({ length: corners }, (_, index) => {
    const angle = turn + (2 * Math.PI * index) / corners;
    return { x: at.x + radius * Math.cos(angle), y: at.y + radius * Math.sin(angle) };
  });
}
