import { fieldAt, type Analysis, type LookFacts, type Place, type RuleLevel } from '../engine/index.ts';
import { boundsOf, surrounding } from './bounds.ts';
import { pointsAlong } from './geometry.ts';
import { manShapes } from './marks/defence.ts';
import { fieldShapes } from './marks/field.ts';
import { blankSlots, slotRow, slotShapes } from './marks/gaps.ts';
import { drawnJobs, type DrawnJob } from './marks/jobs.ts';
import { motionShapes } from './marks/motion.ts';
import { offenceShapes, smallOffence } from './marks/offence.ts';
import { jobShapes, lanesOf } from './marks/paths.ts';
import { blockShapes } from './marks/protection.ts';
import { receiverShapes } from './marks/receivers.ts';
import { runShapes } from './marks/runPlay.ts';
import type { Tag } from './marks/shape.ts';
import { signShapes } from './marks/signs.ts';
import { dropShapes, type Drop } from './marks/zones.ts';
import type { SceneOptions } from './options.ts';
import { pictureOf, type Picture } from './picture.ts';
import { LAYERS, type Scene, type Shape } from './shapes.ts';

/** The picture of one call in one look: the field, both teams, every job as a path and every gap as a slot. */
export function buildScene(analysis: Analysis, options: SceneOptions): Scene {
  const { setup, facts } = analysis;
  if (options.detail === 'mini') return buildLookScene(facts, setup.level, setup.spot);
  const picture = pictureOf(analysis, options);
  const drawn = playShapes(picture);
  const bounds = boundsOf(analysis, options.view, drawn);
  return { shapes: inOrder([...fieldShapes(picture.field, bounds), ...drawn]), bounds };
}

/** Where everybody stands, and every gap as an empty slot: nothing of what anybody does. */
export function buildStanceScene(analysis: Analysis, options: SceneOptions): Scene {
  const picture = pictureOf(analysis, options);
  const drawn = [
    ...motionShapes(analysis, false),
    ...blankSlots(picture, slotRow(picture)),
    ...offenceShapes(analysis, false, options.lit),
    ...analysis.assignments.flatMap((assignment) => manShapes(picture, assignment)),
  ];
  const bounds = boundsOf(analysis, options.view, drawn);
  return { shapes: inOrder([...fieldShapes(picture.field, bounds), ...drawn]), bounds };
}

/** A look alone, an inch wide: the line, the ball and the offence without letters. */
export function buildLookScene(facts: LookFacts, level: RuleLevel, spot: Place): Scene {
  const players = [...facts.players.values()].map(({ x, y }) => ({ x, y }));
  const around = surrounding(players, 1.2);
  const bounds = { ...around, bottom: 1.6 };
  const field = fieldShapes(fieldAt(level, spot), bounds).filter((shape) => !shape.key.startsWith('hash/'));
  return { shapes: inOrder([...field, ...smallOffence(facts)]), bounds };
}

/** Everything but the field. */
function playShapes(picture: Picture): readonly Shape[] {
  const { assignments } = picture.analysis;
  const faint = picture.options.room !== null;
  const row = slotRow(picture);
  const jobs = assignments.flatMap((assignment) =>
    drawnJobs(assignment).map((drawn, index) => ({ drawn, tag: jobTag(picture, drawn, index) })),
  );
  const lanes = lanesOf(
    jobs.map(({ drawn }) => drawn),
    row.bottom,
  );
  const paths = [
    ...dropShapes(
      picture,
      jobs.flatMap(({ drawn, tag }) => dropOf(drawn, tag)),
    ),
    ...jobs.flatMap(({ drawn, tag }) => jobShapes(picture, drawn, lanes, tag)),
  ];
  const ways = paths.filter((shape) => shape.kind === 'path');
  const offence = [...runShapes(picture, row, ways.map(pointsAlong)), ...blockShapes(picture, ways)];
  const lines = [...ways, ...offence.filter((shape) => shape.kind === 'path')].map(pointsAlong);
  return [
    ...motionShapes(picture.analysis, faint),
    ...paths,
    ...offence,
    ...slotShapes(picture, row),
    ...offenceShapes(picture.analysis, faint, picture.options.lit),
    ...receiverShapes(picture, row, lines),
    ...assignments.flatMap((assignment) => manShapes(picture, assignment)),
    ...signShapes(picture, lines),
  ];
}

function jobTag(picture: Picture, { aligned }: DrawnJob, index: number): Tag {
  const { id } = aligned.role;
  return { key: `job/${id}/${index}`, layer: 'job', target: { kind: 'defender', role: id }, faint: picture.faint(id) };
}

function dropOf(drawn: DrawnJob, tag: Tag): readonly Drop[] {
  return drawn.job.kind === 'drop' ? [{ drawn, job: drawn.job, tag }] : [];
}

/** From back to front, shapes of one layer in the order they were made; light ways and zones lie under heavy ones. */
function inOrder(shapes: readonly Shape[]): readonly Shape[] {
  return LAYERS.flatMap((layer) => {
    const ofLayer = shapes.filter((shape) => shape.layer === layer);
    if (layer !== 'job' && layer !== 'zone') return ofLayer;
    return [...ofLayer.filter((shape) => shape.faint), ...ofLayer.filter((shape) => !shape.faint)];
  });
}
