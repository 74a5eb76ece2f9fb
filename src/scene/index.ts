/** The picture of one call in one look: shapes in yards, for the screen, for paper and for SVG alike. */
export * from './shapes.ts';
export { VIEWS, WHOLE_PICTURE, type Lit, type SceneOptions, type View } from './options.ts';
