import type { FormationClass } from '../vocabulary.ts';
import type { Point, Yards } from '../types/index.ts';

/** Who is in: backs, tight ends, and five less those two receivers; "11" is one back, one tight end, three receivers. */
export interface Personnel {
  readonly code: string;
  readonly backs: number;
  readonly tightEnds: number;
}

/** The codes a coach meets, the usual ones first (common practice, no source). Any code of five men can be lined up. */
export const PERSONNEL: readonly Personnel[] = [
  '11',
  '12',
  '10',
  '21',
  '22',
  '20',
  '13',
  '23',
  '00',
  '01',
  '02',
  '30',
  '31',
  '32',
].map((code) => ({ code, backs: Number(code.charAt(0)), tightEnds: Number(code.charAt(1)) }));

/** Where a man goes: the side the formation is strong to, or the other one. */
export type Toward = 'strong' | 'weak';

/**
 * A base formation as a coach names it, strong to the right. Lists are long enough for five men of a kind; whoever comes
 * first stands first. Depths and splits are common practice, no source.
 */
export interface Shape {
  /** Stable; never changes its meaning. */
  readonly id: string;
  readonly name: string;
  readonly passer: Yards;
  /** Spots in the backfield; a back for whom there is none is split out like a receiver. */
  readonly backfield: readonly Point[];
  readonly tightEnds: readonly Toward[];
  readonly receivers: readonly Toward[];
  /** How the men of the strong side stand: from the tackle outward, three close together, or one just outside the line. */
  readonly strong: 'spread' | 'bunch' | 'wing';
  /** Whom it can be made of, so that it is what its name says. */
  readonly suits: (who: Personnel) => boolean;
  /** The class a look of it belongs to; null where a name of the backfield makes none. */
  readonly formation: FormationClass | null;
}

const UNDER: Yards = 1.3;
const GUN: Yards = 5;

const GUN_BACKS: readonly Point[] = [
  { x: -1.5, y: -GUN },
  { x: 1.5, y: -GUN },
  { x: 0, y: -7 },
];
const ONE_BEHIND: readonly Point[] = [{ x: 0, y: -7 }];
const IN_LINE: readonly Point[] = [
  { x: 0, y: -7 },
  { x: 0, y: -4.5 },
  { x: 2, y: -4.5 },
];

const TWO_BY_TWO = {
  tightEnds: ['strong', 'weak', 'strong'],
  receivers: ['weak', 'strong', 'weak', 'strong', 'weak'],
} as const satisfies Partial<Shape>;

/** The shapes, in the order they are offered. */
export const SHAPES = [
  {
    id: 'doubles',
    name: 'doubles',
    passer: GUN,
    backfield: GUN_BACKS,
    ...TWO_BY_TWO,
    strong: 'spread',
    suits: ({ backs }) => backs === 1,
    formation: 'doubles',
  },
  {
    id: 'trips',
    name: 'trips',
    passer: GUN,
    backfield: GUN_BACKS,
    tightEnds: ['strong', 'strong', 'strong'],
    receivers: ['weak', 'strong', 'strong', 'strong', 'weak'],
    strong: 'spread',
    suits: ({ backs, tightEnds }) => backs === 1 && tightEnds <= 2,
    formation: 'trips',
  },
  {
    id: 'bunch',
    name: 'bunch',
    passer: GUN,
    backfield: GUN_BACKS,
    tightEnds: ['strong', 'strong', 'strong'],
    receivers: ['weak', 'strong', 'strong', 'strong', 'weak'],
    strong: 'bunch',
    suits: ({ backs, tightEnds }) => backs === 1 || backs + tightEnds === 0,
    formation: 'bunch',
  },
  {
    id: 'empty',
    name: 'empty',
    passer: GUN,
    backfield: [],
    tightEnds: ['strong', 'weak', 'strong'],
    receivers: ['weak', 'strong', 'strong', 'weak', 'strong'],
    strong: 'spread',
    suits: () => true,
    formation: 'empty-three-by-two',
  },
  {
    id: 'wing',
    name: 'wing',
    passer: GUN,
    backfield: GUN_BACKS,
    tightEnds: ['strong', 'strong', 'weak'],
    receivers: ['weak', 'strong', 'strong', 'weak', 'strong'],
    strong: 'wing',
    suits: ({ backs, tightEnds }) =>
      tightEnds >= 3 || (tightEnds === 2 && backs <= 2) || (backs <= 1 && tightEnds <= 1),
    formation: 'wing',
  },
  {
    id: 'single-back',
    name: 'one back, under the snapper',
    passer: UNDER,
    backfield: ONE_BEHIND,
    ...TWO_BY_TWO,
    strong: 'spread',
    suits: ({ backs }) => backs === 1,
    formation: null,
  },
  {
    id: 'i',
    name: 'I',
    passer: UNDER,
    backfield: IN_LINE,
    ...TWO_BY_TWO,
    strong: 'spread',
    suits: ({ backs }) => backs >= 2,
    formation: 'two-backs',
  },
  {
    id: 'split-backs',
    name: 'two backs in the gun',
    passer: GUN,
    backfield: GUN_BACKS,
    ...TWO_BY_TWO,
    strong: 'spread',
    suits: ({ backs }) => backs >= 2,
    formation: 'two-backs',
  },
] as const satisfies readonly Shape[];
export type ShapeId = (typeof SHAPES)[number]['id'];

/** The shapes that can be made of those men, in the order they are offered; never none. */
export function shapesFor(who: Personnel): readonly (typeof SHAPES)[number][] {
  return SHAPES.filter((shape) => shape.suits(who));
}
