/** The picture of one call in one look: shapes in yards, for the screen, for paper and for SVG alike. */
export * from './shapes.ts';
export { boundsOf } from './bounds.ts';
export { buildLookScene, buildScene, buildStanceScene } from './buildScene.ts';
export { buildDragScene, draggedShapes, type DraggedMan, type DragScene } from './dragScene.ts';
export { flipScene, flipShape, turned } from './flip.ts';
export { dashesOf, pathData, polygonData, tipOf, type ToUnits } from './geometry.ts';
export { LEGEND, legendOf, type LegendEntry } from './legend.ts';
export { VIEWS, WHOLE_PICTURE, type Lit, type SceneOptions, type View } from './options.ts';
export { zoneRings, type ZoneRing } from './zoneRings.ts';
export {
  DARK_THEME,
  letterSize,
  LIGHT_THEME,
  lineWidth,
  markColour,
  PAPER_THEME,
  PROJECTOR_THEME,
  roleOfInk,
  SCREEN_THEMES,
  textColour,
  type Theme,
} from './theme.ts';
export { DOUBLE, toSvg, type SvgOptions } from './toSvg.ts';
export { buildWalkScene, shapesAt, type WalkScene } from './walkScene.ts';
