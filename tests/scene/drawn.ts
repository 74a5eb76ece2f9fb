import { asRoleId, type Analysis, type RoleId } from '../../src/engine/index.ts';
import {
  buildScene,
  WHOLE_PICTURE,
  type EllipseShape,
  type LabelShape,
  type PathShape,
  type Scene,
  type SceneOptions,
} from '../../src/scene/index.ts';
import { ELEVEN } from './board.ts';

/** An analysis drawn, with some options other than the whole picture has. */
export const draw = (analysis: Analysis, options: Partial<SceneOptions> = {}): Scene =>
  buildScene(analysis, { ...WHOLE_PICTURE, ...options });
/** Paths, rings and words of a scene, by how their keys begin (words: by a part of it). */
export const paths = ({ shapes }: Scene, start: string): readonly PathShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' && shape.key.startsWith(start) ? [shape] : []));
export const rings = ({ shapes }: Scene, start: string): readonly EllipseShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'ellipse' && shape.key.startsWith(start) ? [shape] : []));
export const labels = ({ shapes }: Scene, part: string): readonly LabelShape[] =>
  shapes.flatMap((shape) => (shape.kind === 'label' && shape.key.includes(part) ? [shape] : []));
/** The role of a man of `ELEVEN`. */
export const roleAt = (letter: string): RoleId =>
  asRoleId(`${letter}-${ELEVEN.findIndex((man) => man.letter === letter)}`);
