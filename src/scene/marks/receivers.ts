import type { Answer, Point, Yards } from '../../engine/index.ts';
import { manRadius, OFFENCE_RADIUS, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import type { SlotRow } from './gaps.ts';
import { freestPlace, type Obstacles } from './place.ts';
import { ellipse, label, type Tag } from './shape.ts';

/** The ring about a receiver nobody answers: outside his circle, heavy and broken like an open gap. */
const OPEN_RING: Yards = 0.76;

/** Height of the letters, about how wide one of them is, and the space kept between them and his circle. */
const LETTERS = { size: 0.58, width: 0.34, space: 0.1 } as const;

/** Who answers each eligible receiver, if that is asked for; and always a ring about one whom nobody does. */
export function receiverShapes(picture: Picture, row: SlotRow, ways: Obstacles['paths']): readonly Shape[] {
  const slots = picture.analysis.gaps.map(({ x }) => [
    { x, y: 0 },
    { x, y: row.bottom },
  ]);
  const paths = [...ways, ...slots];
  const boxes = picture.analysis.gaps.map(({ x }) => ({
    at: { x, y: row.top - row.halfWidth * 0.7 },
    radius: row.halfWidth,
  }));
  const { answers } = picture.analysis;
  return answers.flatMap((answer) => {
    const at = picture.playerAt(answer.player);
    if (at === null) return [];
    if (answer.by === null) return [openRing(answer, at)];
    return picture.options.answers ? answeredBy(picture, answer, at, { paths, discs: boxes }) : [];
  });
}

function openRing({ player }: Answer, at: Point): Shape {
  const tag: Tag = { key: `offence/${player}/open`, layer: 'gap', target: { kind: 'offence', player }, faint: false };
  return ellipse(tag, {
    at,
    rx: OPEN_RING,
    ry: OPEN_RING,
    fill: null,
    line: 'gap-open',
    stroke: 'dashed',
    width: 0.14,
  });
}

function answeredBy(
  picture: Picture,
  { player, by }: Answer,
  at: Point,
  { paths, discs: boxes }: Obstacles,
): readonly Shape[] {
  if (by === null) return [];
  const text = `(${picture.letterOf(by)})`;
  const halfWidth = (text.length * LETTERS.width) / 2;
  const out = Math.sign(at.x) || 1;
  const beside = OFFENCE_RADIUS + LETTERS.space + halfWidth;
  const numbered = picture.analysis.facts.receivers.some((each) => each.player === player && !each.attached);
  const places = [
    { x: at.x + out * beside, y: at.y },
    { x: at.x - out * beside, y: at.y },
    { x: at.x, y: at.y - (numbered ? 1.5 : 0.85) },
    { x: at.x + out * beside, y: at.y - 0.6 },
    { x: at.x - out * beside, y: at.y - 0.6 },
    { x: at.x + out * beside, y: at.y + 0.6 },
    { x: at.x + out * beside * 0.6, y: at.y + 0.8 },
    { x: at.x + out * (beside + 0.9), y: at.y },
  ];
  const discs = [
    ...boxes,
    ...[...picture.analysis.facts.players.values()]
      .filter((other) => other.id !== player)
      .map((other) => ({ at: other, radius: OFFENCE_RADIUS })),
    ...picture.analysis.assignments.map(({ aligned }) => ({ at: aligned, radius: manRadius(aligned.role.letter) })),
  ];
  const place = freestPlace(places, halfWidth, { paths, discs }) ?? at;
  const tag: Tag = {
    key: `offence/${player}/answer`,
    layer: 'sign',
    target: { kind: 'defender', role: by },
    faint: true,
  };
  return [label(tag, place, text, { size: LETTERS.size, ink: 'muted', halo: true })];
}
