/**
 * The offence's eleven: five linemen on 2 ft splits, the passer, and the rest by name and place. x < 0 is the DEFENCE's
 * left, and "right" in a look's name is the defence's right.
 */
import {
  asLookId,
  asPlayerId,
  type KnownProtection,
  type KnownRun,
  type Look,
  type OffenceKind,
  type OffencePlayer,
  type ProtectionId,
  type RunConcept,
  type Side,
  type Yards,
} from '../../engine/index.ts';

/** Depths of the middle of a circle, in yards: on the line, off it, and the usual backfield spots. */
export const LINE = -0.6;
export const OFF = -1.5;
export const UNDER = -1.3;
export const PISTOL = -4.2;
export const GUN = -5;
export const DEEP = -7;

const player = (id: string, letter: string, kind: OffenceKind, x: Yards, y: Yards): OffencePlayer => ({
  id: asPlayerId(id),
  letter,
  kind,
  x,
  y,
});

/** The offence's left is the defence's right. */
const LINEMEN: readonly OffencePlayer[] = [
  player('rt', 'T', 'lineman', -2.667, LINE),
  player('rg', 'G', 'lineman', -1.333, LINE),
  player('c', 'C', 'snapper', 0, -0.4),
  player('lg', 'G', 'lineman', 1.333, LINE),
  player('lt', 'T', 'lineman', 2.667, LINE),
];

/** Both tackles on the defence's right; the man left of the left guard is an end. */
export const TACKLES_RIGHT: readonly OffencePlayer[] = [
  player('rg', 'G', 'lineman', -1.333, LINE),
  player('c', 'C', 'snapper', 0, -0.4),
  player('lg', 'G', 'lineman', 1.333, LINE),
  player('lt', 'T', 'lineman', 2.667, LINE),
  player('rt', 'T', 'lineman', 4, LINE),
];

export type Place = readonly [x: Yards, y: Yards];
/** Who is where: Q passer; B, F backs; Y, U, W tight ends; X, Z, H, A, V receivers. */
export type Skill = Readonly<Partial<Record<'Q' | 'B' | 'F' | 'Y' | 'U' | 'W' | 'X' | 'Z' | 'H' | 'A' | 'V', Place>>>;

const KIND: Readonly<Record<keyof Skill, OffenceKind>> = {
  Q: 'passer',
  B: 'back',
  F: 'back',
  Y: 'tight-end',
  U: 'tight-end',
  W: 'tight-end',
  X: 'receiver',
  Z: 'receiver',
  H: 'receiver',
  A: 'receiver',
  V: 'receiver',
};
const LETTERS = ['Q', 'B', 'F', 'Y', 'U', 'W', 'X', 'Z', 'H', 'A', 'V'] as const;

/** What the offence is known for in a look, and who moves before the snap. */
export interface Known {
  readonly runs: readonly KnownRun[];
  readonly protections: readonly KnownProtection[];
  /** Who goes in motion, and where he is when the ball is snapped. */
  readonly motion?: readonly [who: keyof Skill, ...to: Place];
  readonly linemen?: readonly OffencePlayer[];
}

export const run = (concept: RunConcept, side: Side): KnownRun => ({ concept, side, passOption: false });
/** The same with a pass read off the same snap. */
export const runOrThrow = (concept: RunConcept, side: Side): KnownRun => ({ concept, side, passOption: true });
export const block = (protection: ProtectionId, slideSide: Side): KnownProtection => ({ protection, slideSide });

export function look(id: string, name: string, skill: Skill, known: Known): Look {
  const others = LETTERS.flatMap((letter) => {
    const place = skill[letter];
    return place === undefined ? [] : [player(letter.toLowerCase(), letter, KIND[letter], ...place)];
  });
  const { runs, protections, motion, linemen = LINEMEN } = known;
  return {
    id: asLookId(id),
    name,
    players: [...linemen, ...others],
    motion:
      motion === undefined ? null : { player: asPlayerId(motion[0].toLowerCase()), to: { x: motion[1], y: motion[2] } },
    runs,
    protections,
  };
}

/** Attached tight ends, on the defence's right and left, and the wing outside the right one. */
export const TE_RIGHT: Place = [4, LINE];
export const TE_LEFT: Place = [-4, LINE];
export const WING_RIGHT: Place = [5.2, -1.6];
