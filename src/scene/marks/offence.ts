import { assertNever } from '../../base/index.ts';
import type { Analysis, LookFacts, OffencePlayer, PlayerId } from '../../engine/index.ts';
import type { Lit } from '../options.ts';
import { OFFENCE_RADIUS } from '../picture.ts';
import type { Shape } from '../shapes.ts';
import { litRing } from './litRing.ts';
import { box, ellipse, label, part, polygon, type Tag } from './shape.ts';

/** The offence: open circles with their letters, the snapper a square, split receivers with their number. */
export function offenceShapes({ facts, answers }: Analysis, faint: boolean, lit: Lit): readonly Shape[] {
  const open = new Set(answers.filter((answer) => answer.by === null).map((answer) => answer.player));
  return [
    ...[...facts.players.values()].flatMap((player) => playerShapes(player, faint, lit.players.includes(player.id))),
    ...receiverNumbers(facts, open),
  ];
}

function playerShapes(player: OffencePlayer, faint: boolean, lit: boolean): readonly Shape[] {
  const tag = tagOf(player, faint);
  const size = player.letter.length <= 1 ? 0.62 : 0.48;
  return [
    outline(player, tag),
    label(part(tag, 'letter'), player, player.letter, { size, ink: 'offence-text' }),
    ...(lit ? [litRing(part(tag, 'lit'), { x: player.x, y: player.y }, OFFENCE_RADIUS)] : []),
  ];
}

function tagOf(player: OffencePlayer, faint: boolean): Tag {
  return { key: `offence/${player.id}`, layer: 'offence', target: { kind: 'offence', player: player.id }, faint };
}

/** A player's outline: the snapper a square, everybody else a circle. */
function outline(player: OffencePlayer, tag: Tag): Shape {
  const look = { fill: 'ground', line: 'offence', width: 0.09 } as const;
  const at = { x: player.x, y: player.y };
  switch (player.kind) {
    case 'snapper':
      return polygon(tag, { points: box(at, OFFENCE_RADIUS * 0.92, OFFENCE_RADIUS * 0.92), ...look });
    case 'lineman':
    case 'tight-end':
    case 'receiver':
    case 'back':
    case 'passer':
      return ellipse(tag, { at, rx: OFFENCE_RADIUS, ry: OFFENCE_RADIUS, ...look });
    default:
      return assertNever(player.kind);
  }
}

/**
 * The numbers of the split receivers, counted from the sideline in; an attached one is read off the surface. A number stands
 * clear of the ring about a receiver nobody answers.
 */
function receiverNumbers(facts: LookFacts, open: ReadonlySet<PlayerId>): readonly Shape[] {
  return facts.receivers.flatMap((receiver) => {
    const player = facts.players.get(receiver.player);
    if (player === undefined || receiver.attached) return [];
    const tag = part(tagOf(player, true), 'number');
    const behind = open.has(receiver.player) ? 1.25 : 0.95;
    return [label(tag, { x: player.x, y: player.y - behind }, String(receiver.number), { size: 0.6, ink: 'muted' })];
  });
}

/** The offence for a picture an inch wide: filled marks without letters. */
export function smallOffence(facts: LookFacts): readonly Shape[] {
  return [...facts.players.values()].map((player) => {
    const tag = tagOf(player, false);
    const look = { fill: player.kind === 'snapper' ? 'offence' : 'ground', line: 'offence', width: 0.22 } as const;
    return player.kind === 'snapper'
      ? polygon(tag, { points: box(player, 0.5, 0.5), ...look })
      : ellipse(tag, { at: { x: player.x, y: player.y }, rx: 0.56, ry: 0.56, ...look });
  });
}
