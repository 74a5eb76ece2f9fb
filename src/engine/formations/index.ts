/** A new look from who is in and a base shape. */
export { lineUp } from './lineUp.ts';
export { PERSONNEL, SHAPES, shapesFor, type Personnel, type Shape, type ShapeId } from './shapes.ts';
