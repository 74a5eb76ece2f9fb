/** Where pixels and pointers exist: the field as a picture, the players as a list, and the tools that move them. */
export { FieldStage, type Moving } from './FieldStage.tsx';
export { PlayerList, type ManRow } from './PlayerList.tsx';
export { SpotFields } from './SpotFields.tsx';
export type { EditorCommand } from './tools/index.ts';
export { fitViewport, type Area } from './viewport.ts';
