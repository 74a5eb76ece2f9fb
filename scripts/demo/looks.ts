/**
 * The formations. A look is written from the offence's eleven: five linemen on 2 ft splits, the passer, and the rest by
 * name and place. x < 0 is the DEFENCE's left, and "right" in a look's name is the defence's right.
 */
import {
  asLookId,
  asPlayerId,
  type Look,
  type OffenceKind,
  type OffencePlayer,
  type Yards,
} from '../../src/engine/index.ts';

/** Depths of the middle of a circle, in yards: on the line, off it, and the usual backfield spots. */
const LINE = -0.6;
const OFF = -1.5;
const UNDER = -1.3;
const PISTOL = -4.2;
const GUN = -5;
const DEEP = -7;

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
const TACKLES_RIGHT: readonly OffencePlayer[] = [
  player('rg', 'G', 'lineman', -1.333, LINE),
  player('c', 'C', 'snapper', 0, -0.4),
  player('lg', 'G', 'lineman', 1.333, LINE),
  player('lt', 'T', 'lineman', 2.667, LINE),
  player('rt', 'T', 'lineman', 4, LINE),
];

type Place = readonly [x: Yards, y: Yards];
/** Who is where: Q passer; B, F backs; Y, U, W tight ends; X, Z, H, A, V receivers. */
type Skill = Readonly<Partial<Record<'Q' | 'B' | 'F' | 'Y' | 'U' | 'W' | 'X' | 'Z' | 'H' | 'A' | 'V', Place>>>;

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

function look(id: string, name: string, skill: Skill, linemen: readonly OffencePlayer[] = LINEMEN): Look {
  const others = LETTERS.flatMap((letter) => {
    const place = skill[letter];
    return place === undefined ? [] : [player(letter.toLowerCase(), letter, KIND[letter], ...place)];
  });
  return { id: asLookId(id), name, players: [...linemen, ...others] };
}

/** Attached tight ends, on the defence's right and left, and the wing outside the right one. */
const TE_RIGHT: Place = [4, LINE];
const TE_LEFT: Place = [-4, LINE];
const WING_RIGHT: Place = [5.2, -1.6];

// prettier-ignore
export const looks: readonly Look[] = [
  look('empty-00', '00 empty, three right', { Q: [0, GUN], X: [-14, LINE], H: [-7, OFF], A: [6, OFF], V: [10, OFF], Z: [14.5, LINE] }),
  look('doubles-10', '10 doubles, back right', { Q: [0, GUN], B: [1.5, GUN], X: [-14, LINE], H: [-7.5, OFF], A: [7.5, OFF], Z: [14, LINE] }),
  look('trips-10', '10 trips left, back right', { Q: [0, GUN], B: [1.5, GUN], X: [-14.5, LINE], H: [-10, OFF], A: [-6, OFF], Z: [13, LINE] }),
  look('bunch-10', '10 bunch right, back left', { Q: [0, GUN], B: [-1.5, GUN], X: [-13, LINE], H: [7.5, -1.6], A: [8.7, LINE], Z: [9.9, -1.6] }),
  look('pistol-10', '10 pistol doubles', { Q: [0, PISTOL], B: [0, DEEP], X: [-14, LINE], H: [-6.5, OFF], A: [6.5, OFF], Z: [14, LINE] }),
  look('tight-11', '11 doubles, tight end right', { Q: [0, GUN], B: [-1.5, GUN], Y: TE_RIGHT, X: [-14, LINE], H: [-7.5, OFF], Z: [13, OFF] }),
  look('trips-11', '11 trips right, tight end in', { Q: [0, GUN], B: [-1.5, GUN], Y: TE_RIGHT, X: [-13, LINE], H: [8.5, OFF], Z: [13.5, OFF] }),
  look('trips-open-11', '11 trips right, tight end left', { Q: [0, GUN], B: [-1.5, GUN], Y: TE_LEFT, X: [14.5, LINE], H: [10, OFF], Z: [6.5, OFF] }),
  look('flexed-11', '11 doubles, tight end flexed right', { Q: [0, GUN], B: [1.5, GUN], Y: [6.5, OFF], X: [-14, LINE], H: [-7.5, OFF], Z: [14, LINE] }),
  look('wing-11', '11 wing right', { Q: [0, GUN], B: [-1.5, GUN], Y: [4.2, -1.6], X: [-14, LINE], H: [-7.5, OFF], Z: [13.5, LINE] }),
  look('under-11', '11 under centre, tight end left', { Q: [0, UNDER], B: [0, DEEP], Y: TE_LEFT, X: [13.5, LINE], H: [7, OFF], Z: [-12.5, OFF] }),
  look('unbalanced-11', '11 tackles over right', { Q: [0, GUN], B: [1.5, GUN], Y: [-2.667, LINE], X: [14, LINE], H: [8.5, OFF], Z: [-12.5, OFF] }, TACKLES_RIGHT),
  look('empty-11', '11 empty, tight end right, back left', { Q: [0, GUN], B: [-7, OFF], Y: TE_RIGHT, X: [-14, LINE], H: [8.5, OFF], Z: [14, OFF] }),
  look('ace-12', '12 pistol, tight end each side', { Q: [0, PISTOL], B: [0, DEEP], Y: TE_RIGHT, U: TE_LEFT, X: [-12.5, OFF], Z: [12.5, OFF] }),
  look('wing-12', '12 wing right, receivers left', { Q: [0, UNDER], B: [0, DEEP], Y: TE_RIGHT, U: WING_RIGHT, X: [-14, LINE], Z: [-8, OFF] }),
  look('heavy-13', '13 wing right, tight end each side', { Q: [0, UNDER], B: [0, DEEP], Y: TE_RIGHT, U: TE_LEFT, W: WING_RIGHT, Z: [-12, OFF] }),
  look('split-20', '20 two backs in the gun, slot left', { Q: [0, GUN], B: [1.5, GUN], F: [-1.5, GUN], X: [-14, LINE], H: [-7.5, OFF], Z: [13.5, LINE] }),
  look('i-21', '21 I, tight end right', { Q: [0, UNDER], B: [0, DEEP], F: [0, -4.5], Y: TE_RIGHT, X: [-13, LINE], Z: [12.5, OFF] }),
  look('offset-21', '21 offset I, tight end and fullback left', { Q: [0, UNDER], B: [0, DEEP], F: [-1.5, -4.5], Y: TE_LEFT, X: [13, LINE], Z: [-12.5, OFF] }),
  look('i-22', '22 I, tight end each side, receiver right', { Q: [0, UNDER], B: [0, DEEP], F: [0, -4.5], Y: TE_RIGHT, U: TE_LEFT, Z: [12.5, OFF] }),
];
