import type { Point } from '../engine/index.ts';
import type { Scene, Shape, Target } from './shapes.ts';
import { shifted } from './shift.ts';

/** One of the 22, as a shape's target tells him. */
export type DraggedMan = Exclude<Target, { readonly kind: 'gap' }>;

/** A picture taken apart for the men a hand drags: what holds still, and what goes along. */
export interface DragScene {
  /** To be painted once for as long as they are held. */
  readonly still: readonly Shape[];
  readonly parts: readonly Part[];
}

/** A shape that goes with a man: all of it, or only the end of his way that is at his feet. */
interface Part {
  readonly man: DraggedMan;
  readonly shape: Shape;
  readonly whole: boolean;
}

/**
 * The picture as it is drawn while those men are dragged: their letters and signs go with them, and the ways of a defender
 * stretch from where he is held. Everything else stands until the picture is built again.
 */
export function buildDragScene(scene: Scene, men: readonly DraggedMan[]): DragScene {
  const still: Shape[] = [];
  const parts: Part[] = [];
  for (const shape of scene.shapes) {
    const man = men.find((each) => goesWith(shape, each));
    const runner = men.find((each) => isWayOf(shape, each));
    if (man !== undefined) parts.push({ man, shape, whole: true });
    else if (runner !== undefined) parts.push({ man: runner, shape, whole: false });
    else still.push(shape);
  }
  return { still, parts };
}

/** What goes along, from back to front; `moved` says how far each man is from where the picture has him, in yards. */
export function draggedShapes({ parts }: DragScene, moved: (man: DraggedMan) => Point): readonly Shape[] {
  return parts.map(({ man, shape, whole }) => (whole ? shifted(shape, moved(man)) : stretched(shape, moved(man))));
}

function goesWith({ key }: Shape, man: DraggedMan): boolean {
  const name = man.kind === 'defender' ? `man/${man.role}` : `offence/${man.player}`;
  return key === name || key.startsWith(`${name}/`);
}

function isWayOf(shape: Shape, man: DraggedMan): boolean {
  return man.kind === 'defender' && shape.kind === 'path' && shape.key.startsWith(`job/${man.role}/`);
}

/** Its first point goes, its end stays. */
function stretched(shape: Shape, by: Point): Shape {
  if (shape.kind !== 'path') return shape;
  const points = shape.points.map(({ x, y }, index) => (index === 0 ? { x: x + by.x, y: y + by.y } : { x, y }));
  return { ...shape, points };
}
