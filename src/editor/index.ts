/** Where pixels and pointers exist: the field as a picture, the players as a list, and the tools that move them. */
export { FieldPicture } from './FieldPicture.tsx';
export type { Moving } from './FieldLayers.tsx';
export { FieldStage } from './FieldStage.tsx';
export type { Live } from './live.ts';
export { pickGround, type PickGround } from './hitPlaces.ts';
export { PickLayer } from './PickLayer.tsx';
export { PlayerList, type ManRow } from './PlayerList.tsx';
export { SpotFields } from './SpotFields.tsx';
export { MOST_ZOOM, shoved, viewportOf, ZOOM_STEP, zoomedInMiddle, type Camera, type Sight } from './camera.ts';
export { nearestLine, unsnapped, type Snapped, type SnapLine } from './snap.ts';
export {
  ARRANGEMENTS,
  arranged,
  NUDGE,
  BIG_NUDGE,
  nudge,
  pickChoices,
  pickStep,
  type Arrangement,
  type EditorCommand,
  type PickChoice,
  type PickEvent,
} from './tools/index.ts';
export { fitViewport, type Area, type Pixel, type Size, type Viewport } from './viewport.ts';
