import { asPlayerId, asRoleId, type Gap, type GapLetter, type PlayerId, type Side } from '../../../src/engine/index.ts';
import {
  protect,
  type ProtectionPicture,
  type ProtectionScheme,
  type Rusher,
  type Threat,
} from '../../../src/engine/offence/index.ts';
import { factsOf, frozen, read } from '../book.ts';

/*
 * The worked rows name men as the OFFENCE does: its left tackle LT, the defender over him LE. Our left and right are the
 * DEFENCE's. This file is the one place where the two meet: `side` turns the offence's side into ours, and everything else
 * goes through it.
 */

/** The offence's L or R as our side. */
const side = (letter: string): Side => (letter === 'L' ? 'right' : 'left');
const sign = (letter: string): 1 | -1 => (side(letter) === 'right' ? 1 : -1);

/** `R-B` in the offence's words. */
function gap(text: string): Gap {
  const [where = '', name = ''] = text.split('-');
  const letters: readonly GapLetter[] = ['A', 'B', 'C', 'D'];
  const letter = letters.find((each) => each === name);
  if (letter === undefined) throw new Error(`No gap: ${text}`);
  return { side: side(where), letter };
}

/** Blockers by the offence's names in the looks below: `line` has T1 G1 C G2 T2 from our left, so T2 is its left tackle. */
const BLOCKERS: Readonly<Record<string, PlayerId>> = {
  LTE: asPlayerId('U'),
  LT: asPlayerId('T2'),
  LG: asPlayerId('G2'),
  C: asPlayerId('C'),
  RG: asPlayerId('G1'),
  RT: asPlayerId('T1'),
  TE: asPlayerId('Y'),
  RB: asPlayerId('B'),
};

/** One back, nobody attached; a tight end on the offence's right; one on each side. */
export const FIVE_LINEMEN = 'line wr:X@-18 wr:H@-9,-1.5 wr:Z@18 wr:S@9,-1.5 qb:Q@0,-5 rb:B@0,-7';
export const TIGHT_END_RIGHT = 'line te:Y@-4 wr:X@-18,-1.5 wr:Z@18 wr:S@9,-1.5 qb:Q@0,-5 rb:B@0,-7';
export const TIGHT_END_EACH_SIDE = 'line te:Y@-4 te:U@4 wr:X@-18,-1.5 wr:Z@18,-1.5 qb:Q@0,-5 rb:B@0,-7';

const GUARD = 4 / 3;
const TACKLE = 8 / 3;
const OUTSIDE_FOOT = 1 / 3;
const at = (role: string, where: string, x: number, y: number): Threat => ({
  role: asRoleId(role),
  x: x === 0 ? 0 : x * sign(where),
  y,
});

/** Nose on the snapper, ends outside the tackles, stand-up edge men at the line, inside backers off it. */
export const ODD_FRONT: readonly Threat[] = [
  at('Nose', 'L', 0, 0.8),
  ...['L', 'R'].flatMap((where) => [
    at(`${where}E`, where, TACKLE + OUTSIDE_FOOT, 0.8),
    at(`${where}OLB`, where, TACKLE + 1.7, 1),
    at(`${where}ILB`, where, GUARD + OUTSIDE_FOOT, 4.5),
  ]),
];

/** Five over the five linemen, two inside backers behind. */
export const FIVE_UP: readonly Threat[] = [
  at('Nose', 'L', 0, 0.8),
  ...['L', 'R'].flatMap((where) => [
    at(`${where}E`, where, TACKLE + OUTSIDE_FOOT, 0.8),
    at(`${where}DT`, where, GUARD + OUTSIDE_FOOT, 0.8),
    at(`${where}ILB`, where, GUARD + OUTSIDE_FOOT, 4.5),
  ]),
];

/** `ROLB R-C`, `ROLB R-C first`: who comes, the gap he ends in, and his turn in it where it is told. */
export function rush(front: readonly Threat[], ...paths: readonly string[]): readonly Rusher[] {
  return paths.map((path) => {
    const [name = '', end = '', order] = path.split(' ');
    const man = front.find((each) => each.role === asRoleId(name));
    if (man === undefined) throw new Error(`Nobody is called ${name}`);
    return {
      role: man.role,
      from: { x: man.x, y: man.y },
      endGap: gap(end),
      order: order === 'first' || order === 'second' ? order : null,
    };
  });
}

/** The protections of the rows, by their names there. `slide L` turns the offence's way. */
export function scheme(
  name: ProtectionScheme['scheme'],
  toward: 'L' | 'R',
  back: ProtectionScheme['back'],
  tightEnds: ProtectionScheme['tightEnds'] = 'release',
): ProtectionScheme {
  return { scheme: name, slideSide: side(toward), back, tightEnds };
}

/** The offence's side of one of ours, for what a picture says of sides. */
export const theirs = (ours: Side): string => (ours === 'right' ? 'L' : 'R');

const ORDER = Object.keys(BLOCKERS);
const name = (player: PlayerId): string => ORDER.find((each) => BLOCKERS[each] === player) ?? player;

/** A picture as the rows write it: blocks from the offence's left to its right, free men by name, idle linemen. */
export function row(picture: ProtectionPicture): readonly [blocks: string, unblocked: string, idle: string] {
  const rank = (text: string): number => ORDER.indexOf(text.split(':')[0] ?? '');
  const inOrder = (items: readonly string[]): string => [...items].sort((a, b) => rank(a) - rank(b)).join(' ');
  return [
    inOrder(picture.blocks.map((block) => `${name(block.blocker)}:${block.rusher}`)),
    picture.unblocked.map((each) => each.rusher).join(' '),
    inOrder(picture.idle.flatMap((each) => (each.lineman ? [name(each.blocker)] : []))),
  ];
}

/** `RT takes ROLB, RE to RG`, for every man who could be passed on. */
export function passedOn(picture: ProtectionPicture): readonly string[] {
  return picture.passOff.map(
    ({ by, rusher, hands }) =>
      `${name(by)} takes ${rusher}${hands === null ? '' : `, ${hands.rusher} to ${name(hands.to)}`}`,
  );
}

/** `RB Nose back-on-line-man`, for every bad block. */
export function badBlocks(picture: ProtectionPicture): readonly string[] {
  return picture.mismatches.map((each) => `${name(each.blocker)} ${each.rusher} ${each.kind}`);
}

/** One protection of a look against one rush, its input frozen. */
export function meet(
  look: string,
  called: ProtectionScheme,
  front: readonly Threat[],
  rushers: readonly Rusher[],
): ProtectionPicture {
  return read(protect(frozen({ facts: factsOf(look), scheme: called, defenders: front, rushers })));
}
