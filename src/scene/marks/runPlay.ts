import {
  distance,
  toward,
  gapKey,
  type FloatingFit,
  type Gap,
  type PlayerId,
  type Point,
  type Yards,
} from '../../engine/index.ts';
import { OFFENCE_RADIUS, type Picture } from '../picture.ts';
import type { PathShape, Shape } from '../shapes.ts';
import type { SlotRow } from './gaps.ts';
import { freestPlace, type Obstacles } from './place.ts';
import { ellipse, label, part, path, type Tag } from './shape.ts';

/** Half the width and height of the slot of a gap that opens at the snap. */
const PILL = { rx: 0.62, ry: 0.42 } as const;

/** How far outside its gap a pitch is drawn. */
const PITCH_WIDTH: Yards = 1.4;

/** The thin grey line of everything the offence does. */
const LINE: Pick<PathShape, 'ink' | 'width'> = { ink: 'offence', width: 0.06 };

type Answered = Extract<Picture['analysis']['runs'][number], { readonly kind: 'answered' }>;

/**
 * One run of the look over the picture, thin and grey: the carrier to where it hits, everybody who pulls or leads to the slot of
 * the gap he opens, and dotted a passer who may keep it and a man he may pitch it to.
 */
export function runShapes(picture: Picture, row: SlotRow, paths: Obstacles['paths']): readonly Shape[] {
  const { run } = picture.options;
  const answer = run === null ? undefined : picture.analysis.runs[run];
  if (answer?.kind !== 'answered') return [];
  return [
    ...ballWays(picture, answer, row),
    ...placePills(picture, answer, row, paths).flatMap((pill) => pillShapes(picture, pill, row)),
  ];
}

/** Where the ball goes: with whoever has it by rule unbroken, with whoever may have it dotted. */
function ballWays(picture: Picture, { picture: run }: Answered, row: SlotRow): readonly Shape[] {
  const { carrier, aim, keeper, pitch, side } = run;
  const to = (gap: Gap, beyond: Yards): Point | null => {
    const x = picture.gapX(gap);
    return x === null ? null : { x: x + (side === 'right' ? beyond : -beyond), y: row.bottom - 0.08 };
  };
  const pitched = pitch === null ? [] : way(picture, 'pitch', pitch.player, to(pitch.where, PITCH_WIDTH), 'dotted');
  // Where the carrier is the man he may be pitched to, the passer carries it first.
  if (keeper !== null && pitch?.player === carrier) {
    return [...way(picture, 'carrier', keeper.player, to(aim, 0), 'solid'), ...pitched];
  }
  const kept =
    keeper === null || keeper.player === carrier
      ? []
      : way(picture, 'keeper', keeper.player, to(keeper.where, 0), 'dotted');
  return [...way(picture, 'carrier', carrier, to(aim, 0), 'solid'), ...kept, ...pitched];
}

function tagOf(name: string, player: PlayerId): Tag {
  return { key: `run/${name}/${player}`, layer: 'zone', target: { kind: 'offence', player }, faint: false };
}

function way(
  picture: Picture,
  name: string,
  player: PlayerId,
  end: Point | null,
  stroke: 'solid' | 'dotted',
): readonly Shape[] {
  const from = picture.playerAt(player);
  if (from === null || end === null) return [];
  const start = toward(from, end, OFFENCE_RADIUS);
  return [path(tagOf(name, player), { points: [start, end], ...LINE, stroke, tip: 'open-head' })];
}

/** A gap that opens, with the place of its slot. */
interface Pill {
  readonly fit: FloatingFit;
  readonly at: Point;
  readonly x: Yards;
}

/** Slots behind the row of the standing ones, near the gap beside which each opens, where nothing is in the way. */
function placePills(picture: Picture, answer: Answered, row: SlotRow, paths: Obstacles['paths']): readonly Pill[] {
  const placed: Pill[] = [];
  const men = [...picture.analysis.facts.players.values()].map((man) => ({
    at: man,
    radius: OFFENCE_RADIUS + PILL.ry,
  }));
  for (const fit of answer.floating) {
    const { x } = fit.floating;
    const places = [0.75, 1.3, 1.9].flatMap((down) =>
      [0, 0.7, -0.7, 1.4, -1.4].map((aside) => ({ x: x + aside, y: row.bottom - down })),
    );
    const others = placed.map(({ at }) => ({ at, radius: PILL.rx + PILL.ry }));
    const at = freestPlace(places, PILL.rx * 0.7, { paths, discs: [...men, ...others] }) ?? { x, y: row.bottom - 0.75 };
    placed.push({ fit, at, x });
  }
  return placed;
}

function pillShapes(picture: Picture, { fit, at, x }: Pill, row: SlotRow): readonly Shape[] {
  const { player, near } = fit.floating;
  const from = picture.playerAt(player);
  const tag: Tag = { ...tagOf('opens', player), key: `run/opens/${player}/${gapKey(near)}`, layer: 'gap' };
  const open = fit.by === null;
  const look = open
    ? ({ line: 'gap-open', stroke: 'dashed', width: 0.14 } as const)
    : ({ line: 'gap', stroke: 'solid', width: 0.07 } as const);
  const leader = {
    points: [{ x, y: row.bottom }, toward(at, { x, y: row.bottom }, PILL.ry)],
    ink: look.line,
    width: 0.05,
  };
  return [
    ...(from === null
      ? []
      : [path({ ...part(tag, 'way'), layer: 'zone' }, { points: pull(from, at), ...LINE, curved: true })]),
    path({ ...part(tag, 'leader'), layer: 'zone' }, leader),
    ellipse(tag, { at, ...PILL, fill: 'ground', ...look }),
    ...(fit.by === null
      ? []
      : [label(part(tag, 'owner'), at, picture.letterOf(fit.by), { size: 0.66, ink: 'gap-text', bold: true })]),
  ];
}

/** From a man to the rim of a slot: a lineman first drops back a step, so that his way is not lost behind the line. */
function pull(from: Point, at: Point): readonly Point[] {
  const way = distance(from, at);
  const back = from.y > -1 && way > 1.5 ? [{ x: from.x + Math.sign(at.x - from.x) * 0.5, y: at.y }] : [];
  const [first = at] = back;
  const before = back[0] ?? from;
  return [toward(from, first, OFFENCE_RADIUS), ...back, toward(at, before, PILL.rx)];
}
