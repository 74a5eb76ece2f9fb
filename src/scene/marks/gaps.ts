import { gapKey, gapsEqual, type OwnedGap, type Point, type Yards } from '../../engine/index.ts';
import { OFFENCE_RADIUS, type Picture } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import { box, label, part, path, polygon, type Tag } from './shape.ts';

/** Height of one owner's row in a slot, and the size of his letter in it. */
const ROW: Yards = 0.78;
const LETTER: Yards = 0.72;

/** Widest slot, and the space kept free between two. */
const WIDEST: Yards = 1.12;
const BETWEEN: Yards = 0.14;

/**
 * The row of slots behind the offensive line, one a gap, which fill with their owners' letters. `top` is the edge nearer the
 * line (y of the defence's side), `bottom` the farthest edge of the tallest slot; both negative.
 */
export interface SlotRow {
  readonly top: Yards;
  readonly bottom: Yards;
  readonly halfWidth: Yards;
}

/**
 * Places the row right behind the line, or further back where a wing, a passer under the snapper or a sniffing back stands in
 * the way.
 */
export function slotRow(picture: Picture): SlotRow {
  const { gaps, facts } = picture.analysis;
  const onLine = new Set(facts.onLine);
  const players = [...facts.players.values()];
  const line = Math.min(-0.4, ...players.filter((player) => onLine.has(player.id)).map((player) => player.y));
  const first = line - OFFENCE_RADIUS - 0.14;
  const halfWidth = slotHalfWidth(gaps);
  const inTheWay = players.filter((player) => !onLine.has(player.id));
  const step = 0.15;
  for (let top = first; top > first - 4; top -= step) {
    if (inTheWay.every((player) => gaps.every((gap) => isClear(player, gap, top, halfWidth)))) {
      return rowAt(gaps, top, halfWidth);
    }
  }
  return rowAt(gaps, first, halfWidth);
}

function rowAt(gaps: readonly OwnedGap[], top: Yards, halfWidth: Yards): SlotRow {
  const rows = Math.max(1, ...gaps.map((gap) => gap.owners.length));
  return { top, bottom: top - rows * ROW, halfWidth };
}

function slotHalfWidth(gaps: readonly OwnedGap[]): Yards {
  const xs = gaps.map((gap) => gap.x).toSorted((a, b) => a - b);
  const nearest = Math.min(WIDEST + BETWEEN, ...xs.slice(1).map((x, index) => x - (xs[index] ?? -Infinity)));
  return Math.max(0.3, (nearest - BETWEEN) / 2);
}

function slotHeight(gap: OwnedGap): Yards {
  return Math.max(1, gap.owners.length) * ROW;
}

function isClear(player: Point, gap: OwnedGap, top: Yards, halfWidth: Yards): boolean {
  const middle = top - slotHeight(gap) / 2;
  const reach = OFFENCE_RADIUS + 0.06;
  return Math.abs(player.x - gap.x) >= halfWidth + reach || Math.abs(player.y - middle) >= slotHeight(gap) / 2 + reach;
}

/** Every slot: a box with its owners' letters, or an empty dashed one for an open gap. */
export function slotShapes(picture: Picture, row: SlotRow): readonly Shape[] {
  return picture.analysis.gaps.flatMap((gap) => slot(picture, gap, row));
}

/** Every slot empty and drawn alike: for a picture that must not say whose a gap is. */
export function blankSlots(picture: Picture, row: SlotRow): readonly Shape[] {
  return picture.analysis.gaps.map((owned) =>
    polygon(
      { key: `gap/${gapKey(owned.gap)}`, layer: 'gap', target: { kind: 'gap', gap: owned.gap }, faint: false },
      {
        points: box({ x: owned.x, y: row.top - ROW / 2 }, row.halfWidth, ROW / 2),
        fill: 'ground',
        line: 'gap',
        stroke: 'solid',
        width: 0.07,
      },
    ),
  );
}

function slot(picture: Picture, owned: OwnedGap, row: SlotRow): readonly Shape[] {
  const open = owned.owners.length === 0;
  const height = slotHeight(owned);
  const lit = picture.options.lit.gaps.some((gap) => gapsEqual(gap, owned.gap));
  const tag: Tag = {
    key: `gap/${gapKey(owned.gap)}`,
    layer: 'gap',
    target: { kind: 'gap', gap: owned.gap },
    faint: !open && !lit && owned.owners.every((owner) => picture.faint(owner.role)),
  };
  const at = { x: owned.x, y: row.top - height / 2 };
  const stroke = open ? 'dashed' : 'solid';
  const ink = open ? 'gap-open' : 'gap';
  return [
    path(
      { ...part(tag, 'leader'), layer: 'zone' },
      {
        points: [
          { x: owned.x, y: -0.1 },
          { x: owned.x, y: row.top },
        ],
        width: open ? 0.1 : 0.05,
        ink,
        stroke,
      },
    ),
    polygon(tag, {
      points: box(at, row.halfWidth, height / 2),
      fill: 'ground',
      line: ink,
      stroke,
      width: open ? 0.14 : 0.07,
    }),
    ...(lit ? [litSlot(tag, at, row.halfWidth, height / 2)] : []),
    ...ownerLetters(picture, owned, row, tag),
  ];
}

function litSlot(tag: Tag, at: Point, halfWidth: Yards, halfHeight: Yards): Shape {
  return polygon(part(tag, 'lit'), {
    points: box(at, halfWidth + 0.1, halfHeight + 0.1),
    fill: null,
    line: 'highlight',
    stroke: 'double',
    width: 0.08,
  });
}

/** One letter a row; "?" behind a man who is told two jobs, and a thin letter for one of a two-gap man's two. */
function ownerLetters(picture: Picture, owned: OwnedGap, row: SlotRow, tag: Tag): readonly Shape[] {
  return owned.owners.map((owner, index) => {
    const letter = picture.letterOf(owner.role);
    const text = owner.sure ? letter : `${letter}?`;
    const at = { x: owned.x, y: row.top - ROW * (index + 0.5) };
    const fitted = Math.min(LETTER, (row.halfWidth * 2 - 0.12) / (text.length * 0.66));
    const look = { ...part(tag, `owner/${owner.role}`), faint: picture.faint(owner.role) };
    return label(look, at, text, { size: fitted, ink: 'gap-text', bold: !owner.shared });
  });
}
