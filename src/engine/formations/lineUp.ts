import { gather } from '../../base/index.ts';
import { LINE_SPLIT, OFFENCE_DEPTHS } from '../facts/landmarks.ts';
import { mirrorX } from '../mirror.ts';
import { asPlayerId } from '../types/ids.ts';
import type { OffenceKind, Side } from '../vocabulary.ts';
import type { OffencePlayer, Point, Yards } from '../types/index.ts';
import type { Personnel, Shape, Toward } from './shapes.ts';

const LINE: Yards = -OFFENCE_DEPTHS['on-line'];
const OFF: Yards = -OFFENCE_DEPTHS['off-line'];
/** The snapper has the ball in his hand: his circle reaches farther forward than a lineman's. */
const OVER_BALL: Yards = -0.4;

/** Distances from the ball: an attached tight end, a wing outside him, and whoever is attached beyond. */
const ATTACHED: readonly Yards[] = [3 * LINE_SPLIT, 3 * LINE_SPLIT + 1.2, 3 * LINE_SPLIT + 2.4];
const WING_DEPTH: Yards = -1.6;

/** Splits of one to five receivers of a side, the widest first. All are on the field from either hash of every level. */
const SPLITS: readonly (readonly Yards[])[] = [
  [],
  [13.5],
  [13.5, 7.5],
  [13.5, 10.5, 7.5],
  [14.5, 12, 9.75, 7.5],
  [15.5, 13.5, 11.5, 9.5, 7.5],
];

/** Three close together, the one in front on the line; whoever comes after them is wide. */
const BUNCH: readonly Point[] = [
  { x: 7.6, y: LINE },
  { x: 9, y: OFF },
  { x: 6.2, y: OFF },
  { x: 14, y: OFF },
  { x: 4, y: OFF },
];

/** Letters by what a man comes in as, in the order he is lined up (common practice, no source; a staff may change them). */
const LETTERS = {
  back: ['B', 'F', 'R', 'S', 'E'],
  'tight-end': ['Y', 'U', 'W', 'V', 'J'],
  receiver: ['X', 'Z', 'H', 'A', 'D'],
} as const;

type SkillKind = keyof typeof LETTERS;

interface Skill {
  readonly kind: SkillKind;
  readonly letter: string;
}

/**
 * The eleven of a new look: five linemen on 2 ft splits, the passer, and the five who are in, so that the formation is
 * legal at every level: one end on the line on each side, seven on it, four off it.
 */
export function lineUp(who: Personnel, shape: Shape, strong: Side): readonly OffencePlayer[] {
  const men = skill(who);
  const backs = men.filter(({ kind }) => kind === 'back');
  const inBackfield = backs.slice(0, shape.backfield.length);
  const placed: readonly OffencePlayer[] = [
    ...linemen(),
    player('Q', 'passer', { x: 0, y: -shape.passer }),
    ...inBackfield.map((man, index) => player(man.letter, man.kind, shape.backfield[index] ?? { x: 0, y: 0 })),
    ...ends(
      men.filter((man) => !inBackfield.includes(man)),
      shape,
    ),
  ];
  return strong === 'right' ? placed : placed.map(mirrorX);
}

function skill({ backs, tightEnds }: Personnel): readonly Skill[] {
  const counts: Readonly<Record<SkillKind, number>> = {
    back: backs,
    'tight-end': tightEnds,
    receiver: 5 - backs - tightEnds,
  };
  return gather(['back', 'tight-end', 'receiver'] as const, (kind) =>
    LETTERS[kind].slice(0, Math.max(counts[kind], 0)).map((letter) => ({ kind, letter })),
  );
}

/** The defence's left is the offence's right: ids keep the offence's own names. */
function linemen(): readonly OffencePlayer[] {
  const man = (id: string, letter: string, splits: number): OffencePlayer => ({
    ...player(letter, 'lineman', { x: splits * LINE_SPLIT, y: LINE }),
    id: asPlayerId(id),
  });
  return [
    man('rt', 'T', -2),
    man('rg', 'G', -1),
    { ...player('C', 'snapper', { x: 0, y: OVER_BALL }), id: asPlayerId('c') },
    man('lg', 'G', 1),
    man('lt', 'T', 2),
  ];
}

function player(letter: string, kind: OffenceKind, { x, y }: Point): OffencePlayer {
  const kept = (value: Yards): Yards => Math.round(value * 1000) / 1000;
  return { id: asPlayerId(letter.toLowerCase()), letter, kind, x: kept(x), y: kept(y) };
}

/** Everybody who is not in the backfield. A side that would have nobody gets the last man of the other. */
function ends(men: readonly Skill[], shape: Shape): readonly OffencePlayer[] {
  const tights = men.filter(({ kind }) => kind === 'tight-end');
  const wides = men.filter(({ kind }) => kind !== 'tight-end').toSorted((a, b) => rank(a) - rank(b));
  const went = (list: readonly Skill[], toward: readonly Toward[]) =>
    list.map((man, index) => ({ man, toward: toward[index] ?? 'weak' }));
  const all = [...went(tights, shape.tightEnds), ...went(wides, shape.receivers)];
  const last = all.at(-1);
  const lopsided = last !== undefined && all.length > 1 && all.every(({ toward }) => toward === last.toward);
  const other = lopsided ? (last.toward === 'strong' ? 'weak' : 'strong') : null;
  const sides = all.map((each) => (each === last && other !== null ? { ...each, toward: other } : each));
  const of = (toward: Toward): readonly Skill[] => sides.filter((each) => each.toward === toward).map(({ man }) => man);
  return [
    ...sideSpots(of('strong'), shape.strong).map(({ man, at }) => player(man.letter, man.kind, at)),
    ...sideSpots(of('weak'), 'spread').map(({ man, at }) => player(man.letter, man.kind, { x: -at.x, y: at.y })),
  ];
}

/** Receivers before backs who are split out. */
function rank({ kind }: Skill): number {
  return kind === 'receiver' ? 0 : 1;
}

interface Placed {
  readonly man: Skill;
  readonly at: Point;
}

/** The men of one side, drawn on the right. Exactly one of them is on the line, the outermost of those who could be. */
function sideSpots(men: readonly Skill[], how: Shape['strong']): readonly Placed[] {
  const tights = men.filter(({ kind }) => kind === 'tight-end');
  const wides = men.filter(({ kind }) => kind !== 'tight-end');
  if (how === 'bunch' && men.length >= 3) return inBunch([...tights, ...wides]);
  const wing = how === 'wing' && tights.length < 2 ? wides.slice(1).at(-1) : undefined;
  const close = wing === undefined ? tights : [...tights, wing];
  const out = wides.filter((man) => man !== wing);
  // A wing without a tight end stands outside the tackle.
  const inner = close.map((man, index): Placed => {
    const on = man.kind === 'tight-end' && index === 0;
    return { man, at: { x: ATTACHED[index] ?? 0, y: on ? LINE : WING_DEPTH } };
  });
  const onLine = tights.length === 0;
  const outer = out.map((man, index): Placed => ({
    man,
    at: { x: SPLITS[out.length]?.[index] ?? 0, y: onLine && index === 0 ? LINE : OFF },
  }));
  return [...inner, ...outer];
}

function inBunch(men: readonly Skill[]): readonly Placed[] {
  return men.map((man, index) => ({ man, at: BUNCH[index] ?? { x: 0, y: 0 } }));
}
