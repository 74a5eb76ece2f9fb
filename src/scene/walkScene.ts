import { gapKey, positionAt, type Point, type WalkThrough, type Yards } from '../engine/index.ts';
import { litRing } from './marks/litRing.ts';
import { label, type Tag } from './marks/shape.ts';
import { OFFENCE_RADIUS } from './picture.ts';
import type { Scene, Shape } from './shapes.ts';
import { shifted } from './shift.ts';

/** A picture taken apart for the walk-through: what holds still, and what moves or comes with time. */
export interface WalkScene {
  /** To be painted once. Its bounds hold everything that moves. */
  readonly still: Scene;
  readonly parts: readonly Part[];
}

type Path = WalkThrough['defence'][number]['path'];

/** A shape that goes with a man, or is there from some time on; null: it stays, or it is there from the snap. */
interface Part {
  readonly shape: Shape;
  readonly path: Path | null;
  readonly from: number | null;
}

/** Free space behind the deepest man of the offence. */
const MARGIN: Yards = 1.1;

/** How far the name of a zone is from the man in the middle of it. */
const ROOM_FOR_HIM: Yards = 0.72;

/** How far beside the passer the word stands. */
const ASIDE: Yards = 3.1;

/**
 * The picture of an analysis as the walk-through needs it. A slot is empty until its owner is there; the bars of the blocks are
 * left out, because the blockers themselves go.
 */
export function buildWalkScene(scene: Scene, walk: WalkThrough): WalkScene {
  const still: Shape[] = [];
  const parts: Part[] = [];
  for (const shape of scene.shapes) {
    if (shape.key.startsWith('block/')) continue;
    const part = partOf(shape, walk);
    if (part === null) still.push(cleared(shape));
    else parts.push(part);
  }
  return { still: { shapes: still, bounds: boundsWith(scene, walk) }, parts: [...parts, ...passerParts(walk)] };
}

/** Everything that moves or comes with time as it is `t` seconds after the snap, from back to front. */
export function shapesAt({ parts }: WalkScene, t: number): readonly Shape[] {
  const by = new Map<Path, Point>();
  const shiftOf = (path: Path): Point => {
    const known = by.get(path);
    if (known !== undefined) return known;
    const [start] = path;
    const now = positionAt({ path }, t);
    const shift = { x: now.x - (start?.x ?? now.x), y: now.y - (start?.y ?? now.y) };
    by.set(path, shift);
    return shift;
  };
  return parts.flatMap(({ shape, path, from }) => {
    if (from !== null && from > t) return [];
    return [path === null ? shape : shifted(shape, shiftOf(path))];
  });
}

/** The name of a zone stands in its middle, where the man comes: it makes room for him. */
function cleared(shape: Shape): Shape {
  return shape.key.endsWith('/zone/name') ? shifted(shape, { x: 0, y: ROOM_FOR_HIM }) : shape;
}

/** What moves, and with whom; null: it holds still. */
function partOf(shape: Shape, walk: WalkThrough): Part | null {
  const { key } = shape;
  const letter = letterFrom(key, walk);
  if (letter !== undefined) return { shape, path: null, from: letter };
  const goesWith = (name: string): boolean => key === name || key.startsWith(`${name}/`);
  const track =
    walk.defence.find(({ role }) => goesWith(`man/${role}`)) ??
    walk.offence.find(({ player }) => goesWith(`offence/${player}`));
  return track === undefined ? null : { shape, path: track.path, from: null };
}

/** When the letter of an owner is to be seen in a slot: never is Infinity. Undefined: the key is not that of such a letter. */
function letterFrom(key: string, { fills, moments }: WalkThrough): number | undefined {
  if (!/^(gap|run\/opens)\/.*\/owner(\/|$)/.test(key)) return undefined;
  const fill = fills.find(({ gap, role }) => key === `gap/${gapKey(gap)}/owner/${role}`);
  if (fill !== undefined) return fill.t;
  const opened = moments.find(
    (moment) => moment.kind === 'fits-opened' && key === `run/opens/${moment.player}/${gapKey(moment.near)}/owner`,
  );
  return opened?.t ?? Infinity;
}

/** A ring about the passer once a free rusher is there, and a word beside him when the ball is gone. */
function passerParts({ throwsFrom: at, moments }: WalkThrough): readonly Part[] {
  if (at === null) return [];
  return moments.flatMap((moment): readonly Part[] => {
    const tag: Tag = { key: `walk/${moment.kind}/${moment.t}`, layer: 'sign', target: null, faint: false };
    if (moment.kind === 'at-passer' && moment.free) {
      return [{ shape: litRing(tag, at, OFFENCE_RADIUS + 0.2), path: null, from: moment.t }];
    }
    if (moment.kind !== 'thrown') return [];
    const beside = { x: at.x + (moment.hot === 'left' ? -ASIDE : ASIDE), y: at.y };
    const text = moment.hot === null ? 'thrown' : `hot ${moment.hot}`;
    const shape = label(tag, beside, text, { size: 0.78, ink: 'muted', bold: true, halo: true });
    return [{ shape, path: null, from: moment.t }];
  });
}

function boundsWith({ bounds }: Scene, { defence, offence }: WalkThrough): Scene['bounds'] {
  const ends = [...defence, ...offence].flatMap(({ path }) => path.at(-1)?.y ?? []);
  return { ...bounds, top: Math.min(bounds.top, ...ends.map((y) => y - MARGIN)) };
}
