import { gather } from '../../base/index.ts';
import { SIDES, type Side } from '../vocabulary.ts';
import type { LookFacts, OffencePlayer, PlayerId, Point, ReceiverFact, RoleId, Yards } from '../types/index.ts';
import { LEVERAGE_OFFSET, RECEIVER_OFFSET } from '../align/spots.ts';
import type { FieldMarks } from './field.ts';
import { signOf } from './surface.ts';

/** What a coach calls a line on which a man may stand. Sides are the defence's. */
export type LandmarkName =
  /** A shade of a man of the surface; which one, the technique there says. */
  | { readonly kind: 'shade' }
  | {
      readonly kind: 'receiver';
      readonly side: Side;
      readonly number: number;
      readonly leverage: keyof typeof RECEIVER_OFFSET;
    }
  /** Half way between that receiver and the last man of the line. */
  | { readonly kind: 'apex'; readonly side: Side; readonly number: number }
  | { readonly kind: 'ball' }
  | { readonly kind: 'hash'; readonly side: Side }
  | { readonly kind: 'numbers'; readonly side: Side }
  /** So many yards off the ball, a defender. */
  | { readonly kind: 'depth'; readonly yards: Yards }
  /** A usual depth of the offence. */
  | { readonly kind: 'place'; readonly place: OffencePlace }
  /** One line split outside the last man. */
  | { readonly kind: 'split'; readonly outside: PlayerId }
  /** In the middle between two men of the line. */
  | { readonly kind: 'between'; readonly players: readonly [PlayerId, PlayerId] }
  /** As wide as a man on the other side of the ball. */
  | { readonly kind: 'as-wide'; readonly as: PlayerId }
  /** As deep as a man of his own team. */
  | { readonly kind: 'level'; readonly with: Mate };

/** A man of either team. */
export type Mate =
  { readonly kind: 'defender'; readonly role: RoleId } | { readonly kind: 'offence'; readonly player: PlayerId };

/** A named line: along the field at that x, or across it at that y. Yards from the ball. */
export interface Landmark {
  readonly axis: 'x' | 'y';
  readonly at: Yards;
  readonly what: LandmarkName;
}

/** A man of the same team who stands still meanwhile. */
export interface StandingMate {
  readonly mate: Mate;
  readonly at: Point;
}

/**
 * Depths a defence is taught: heads of the line off the ball, linebackers, force and apex men, deep men (common practice,
 * no source; staffs differ by half a yard).
 */
export const DEFENCE_DEPTHS: readonly Yards[] = [1, 4.5, 7, 12];

/**
 * Depths of the offence, at the middle of a man's circle: on the line and off it as this program draws them, the passer
 * under the snapper, pistol 4 yd and gun 5 yd, a fullback and a deep back (common practice, no source).
 */
export const OFFENCE_DEPTHS = {
  'on-line': 0.6,
  'off-line': 1.5,
  'under-snapper': 1.3,
  pistol: 4.2,
  gun: 5,
  fullback: 4.5,
  deep: 7,
} as const satisfies Readonly<Record<string, Yards>>;
export type OffencePlace = keyof typeof OFFENCE_DEPTHS;

/** Middle to middle of two linemen: 2 ft bodies 2 ft apart (a usual split; "Line Splits", smartfootball, 2008, has 2 to 3 ft). */
export const LINE_SPLIT: Yards = 4 / 3;

/** The lines on which a defender may stand, what is nearer to the ball first. */
export function defenceLandmarks(
  facts: LookFacts,
  marks: FieldMarks,
  mates: readonly StandingMate[],
): readonly Landmark[] {
  return [
    ...shades(facts),
    ...gather(facts.receivers, (receiver) => onReceiver(receiver, facts)),
    ...fieldLines(marks),
    ...DEFENCE_DEPTHS.map((yards): Landmark => ({ axis: 'y', at: yards, what: { kind: 'depth', yards } })),
    ...levels(mates),
  ];
}

/** The lines on which that man of the offence may stand. `facts` are of the look without his having moved. */
export function offenceLandmarks(
  player: OffencePlayer,
  facts: LookFacts,
  marks: FieldMarks,
  mates: readonly StandingMate[],
): readonly Landmark[] {
  return [
    ...lineSplits(player, facts),
    ...fieldLines(marks),
    ...gather(mates, ({ mate, at }) => asWide(mate, at)),
    ...PLACES_OF[player.kind].map((place): Landmark => ({
      axis: 'y',
      at: -OFFENCE_DEPTHS[place],
      what: { kind: 'place', place },
    })),
    ...levels(mates),
  ];
}

const PLACES_OF: Readonly<Record<OffencePlayer['kind'], readonly OffencePlace[]>> = {
  snapper: ['on-line'],
  lineman: ['on-line'],
  'tight-end': ['on-line', 'off-line', 'fullback'],
  receiver: ['on-line', 'off-line', 'gun'],
  back: ['on-line', 'off-line', 'fullback', 'gun', 'deep'],
  passer: ['under-snapper', 'pistol', 'gun', 'deep'],
};

/** Every shade of every man of the surface, each spot once: outside the guard is inside the tackle at usual splits. */
function shades(facts: LookFacts): readonly Landmark[] {
  const seen = new Set<number>();
  return gather(SIDES, (side) =>
    gather(facts.surface[side], ({ x }) =>
      gather(Object.values(LEVERAGE_OFFSET), (offset): readonly Landmark[] => {
        const at = x + offset * signOf(side);
        const inches = Math.round(at * 36);
        // What is across the ball belongs to the other side.
        if (seen.has(inches) || at * signOf(side) < -1e-9) return [];
        seen.add(inches);
        return [{ axis: 'x', at, what: { kind: 'shade' } }];
      }),
    ),
  );
}

/** Head up on a receiver split from the line, a yard inside and outside him, and half way between him and the line. */
function onReceiver(receiver: ReceiverFact, facts: LookFacts): readonly Landmark[] {
  const { side, number } = receiver;
  const player = facts.players.get(receiver.player);
  const last = facts.surface[side].at(-1);
  if (player === undefined || last === undefined || receiver.attached || !receiver.eligible) return [];
  const leverages = ['head', 'inside', 'outside'] as const;
  return [
    ...leverages.map((leverage): Landmark => ({
      axis: 'x',
      at: player.x + RECEIVER_OFFSET[leverage] * signOf(side),
      what: { kind: 'receiver', side, number, leverage },
    })),
    { axis: 'x', at: (player.x + last.x) / 2, what: { kind: 'apex', side, number } },
  ];
}

function fieldLines(marks: FieldMarks): readonly Landmark[] {
  return [
    { axis: 'x', at: 0, what: { kind: 'ball' } },
    { axis: 'x', at: marks.leftHash, what: { kind: 'hash', side: 'left' } },
    { axis: 'x', at: marks.rightHash, what: { kind: 'hash', side: 'right' } },
    { axis: 'x', at: marks.leftNumbers, what: { kind: 'numbers', side: 'left' } },
    { axis: 'x', at: marks.rightNumbers, what: { kind: 'numbers', side: 'right' } },
  ];
}

/** One split outside the last man of each side, and the middle between any two who leave room for one. */
function lineSplits(player: OffencePlayer, facts: LookFacts): readonly Landmark[] {
  return gather(SIDES, (side): readonly Landmark[] => {
    const bodies = facts.surface[side].filter((body) => body.player !== player.id);
    const outward = bodies.map((body): Landmark => ({
      axis: 'x',
      at: body.x + LINE_SPLIT * signOf(side),
      what: { kind: 'split', outside: body.player },
    }));
    const between = gather(bodies.slice(1), (body, index): readonly Landmark[] => {
      const inner = bodies[index];
      if (inner === undefined || Math.abs(body.x - inner.x) < LINE_SPLIT * 1.5) return [];
      const players = [inner.player, body.player] as const;
      return [{ axis: 'x', at: (body.x + inner.x) / 2, what: { kind: 'between', players } }];
    });
    return [...between, ...outward];
  });
}

function asWide(mate: Mate, at: Point): readonly Landmark[] {
  if (mate.kind === 'defender' || Math.abs(at.x) < 0.5) return [];
  return [{ axis: 'x', at: -at.x, what: { kind: 'as-wide', as: mate.player } }];
}

function levels(mates: readonly StandingMate[]): readonly Landmark[] {
  return mates.map(({ mate, at }) => ({ axis: 'y', at: at.y, what: { kind: 'level', with: mate } }));
}
