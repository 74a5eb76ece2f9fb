import { describe, expect, it } from 'vitest';
import { type Rusher, type Threat } from '../../../src/engine/offence/index.ts';
import { FIVE_LINEMEN, FIVE_UP, meet, ODD_FRONT, row, rush, scheme } from './rushes.ts';

/*
 * Six rushes against six protections, thirty-six rows, literal. Left and right are the OFFENCE's here (LT its left tackle, LE
 * the defender over him); `rushes.ts` turns them.
 *
 * Status: derived from the rules of "Understanding 1/2 Slide Protection", Blitzology, 2010, "Tools of the Trade: Six Man Slide
 * Pass", Gridiron R&D, 2015, "Breaking Half Slide Protection", Blitzology, 2019 (covered up), "What GT Does - Pass Blocking",
 * GTSwarm (full slide), "Pass Protection 101", Dawgs By Nature, 2011, and "3-4 Zone Pressure to Attack the Pass", Blitzology,
 * 2016 (big on big, fan), "Safety Firezone Pressure", Blitzology, 2020 (free release). The rows were worked from these rules by
 * hand before this engine was written; none is copied from a published table.
 */
const SCHEMES = {
  'five, half slide L': scheme('half-slide', 'L', 'releases'),
  'six, half slide L': scheme('half-slide', 'L', 'stays'),
  'six, half slide R': scheme('half-slide', 'R', 'stays'),
  'six, full slide L': scheme('full-slide', 'L', 'stays'),
  'six, full slide R': scheme('full-slide', 'R', 'stays'),
  // Big on big has no slide; the side only says which backer the back looks at first: the left one, away from it.
  'six, big on big': scheme('man', 'R', 'stays'),
} as const;
type SchemeName = keyof typeof SCHEMES;

interface Rush {
  readonly title: string;
  readonly front: readonly Threat[];
  readonly rushers: readonly Rusher[];
  readonly rows: Readonly<Record<SchemeName, readonly [blocks: string, unblocked: string, idle: string]>>;
}

const odd = (...paths: readonly string[]): Pick<Rush, 'front' | 'rushers'> => ({
  front: ODD_FRONT,
  rushers: rush(ODD_FRONT, ...paths),
});

const EDGE_FIRE_ZONE: Rush = {
  title: 'edge fire zone from the right: edge man, inside backer B, end to the right A, nose to the left A',
  ...odd('LE L-C', 'Nose L-A', 'RE R-A', 'RILB R-B', 'ROLB R-C'),
  rows: {
    'five, half slide L': ['LT:LE C:Nose RT:RE', 'RILB ROLB', 'LG RG'],
    'six, half slide L': ['LT:LE C:Nose RT:RE RB:RILB', 'ROLB', 'LG RG'],
    'six, half slide R': ['LT:LE LG:Nose C:RE RG:RILB RT:ROLB', '', ''],
    'six, full slide L': ['LT:LE C:Nose RG:RE RT:RILB RB:ROLB', '', 'LG'],
    'six, full slide R': ['LG:Nose C:RE RG:RILB RT:ROLB RB:LE', '', 'LT'],
    'six, big on big': ['LG:LE C:Nose RG:RE RT:ROLB RB:RILB', '', 'LT'],
  },
};

const CROSS: Rush = {
  title: 'both inside backers cross in the A gaps, the nose to the left B, ends contain',
  ...odd('LE L-C', 'Nose L-B', 'RILB L-A', 'LILB R-A', 'RE R-C'),
  rows: {
    'five, half slide L': ['LT:LE LG:Nose C:RILB RG:LILB RT:RE', '', ''],
    'six, half slide L': ['LT:LE LG:Nose C:RILB RG:LILB RT:RE', '', ''],
    'six, half slide R': ['LT:LE LG:RILB C:LILB RT:RE RB:Nose', '', 'RG'],
    'six, full slide L': ['LT:LE LG:Nose C:RILB RG:LILB RB:RE', '', 'RT'],
    'six, full slide R': ['LT:Nose LG:RILB C:LILB RT:RE RB:LE', '', 'RG'],
    'six, big on big': ['LG:LE C:Nose RG:RE RB:LILB', 'RILB', 'LT RT'],
  },
};

const ONE_PER_GAP: Rush = {
  title: 'six men, one in every gap',
  ...odd('LOLB L-C', 'LE L-B', 'Nose L-A', 'RILB R-A', 'RE R-B', 'ROLB R-C'),
  rows: {
    'five, half slide L': ['LT:LOLB LG:LE C:Nose RG:RILB RT:RE', 'ROLB', ''],
    'six, half slide L': ['LT:LOLB LG:LE C:Nose RG:RILB RT:RE RB:ROLB', '', ''],
    'six, half slide R': ['LT:LE LG:Nose C:RILB RG:RE RT:ROLB RB:LOLB', '', ''],
    'six, full slide L': ['LT:LOLB LG:LE C:Nose RG:RILB RT:RE RB:ROLB', '', ''],
    'six, full slide R': ['LT:LE LG:Nose C:RILB RG:RE RT:ROLB RB:LOLB', '', ''],
    'six, big on big': ['LT:LOLB LG:LE C:Nose RG:RE RT:ROLB RB:RILB', '', ''],
  },
};

const TWO_OFF_ONE_EDGE: Rush = {
  title: 'two off the right edge, the backer outside the edge man; both ends B, nose to the left A, left edge man',
  ...odd('LOLB L-C', 'LE L-B', 'Nose L-A', 'RE R-B', 'ROLB R-C', 'RILB R-C'),
  rows: {
    'five, half slide L': ['LT:LOLB LG:LE C:Nose RT:RE', 'ROLB RILB', 'RG'],
    'six, half slide L': ['LT:LOLB LG:LE C:Nose RT:RE RB:ROLB', 'RILB', 'RG'],
    'six, half slide R': ['LT:LE LG:Nose RG:RE RT:ROLB RB:LOLB', 'RILB', 'C'],
    'six, full slide L': ['LT:LOLB LG:LE C:Nose RT:RE RB:ROLB', 'RILB', 'RG'],
    'six, full slide R': ['LT:LE LG:Nose RG:RE RT:ROLB RB:LOLB', 'RILB', 'C'],
    'six, big on big': ['LT:LOLB LG:LE C:Nose RG:RE RT:ROLB RB:RILB', '', ''],
  },
};

const FIVE_STRAIGHT: Rush = {
  title: 'five over the five linemen, straight ahead',
  front: FIVE_UP,
  rushers: rush(FIVE_UP, 'LE L-C', 'LDT L-B', 'Nose R-A', 'RDT R-B', 'RE R-C'),
  rows: {
    'five, half slide L': ['LT:LE LG:LDT C:Nose RG:RDT RT:RE', '', ''],
    'six, half slide L': ['LT:LE LG:LDT C:Nose RG:RDT RT:RE', '', ''],
    'six, half slide R': ['LT:LE LG:LDT C:Nose RG:RDT RT:RE', '', ''],
    'six, full slide L': ['LT:LE LG:LDT RG:Nose RT:RDT RB:RE', '', 'C'],
    'six, full slide R': ['LT:LDT C:Nose RG:RDT RT:RE RB:LE', '', 'LG'],
    'six, big on big': ['LT:LE LG:LDT C:Nose RG:RDT RT:RE', '', ''],
  },
};

const FOUR_SIMULATED: Rush = {
  title: 'four come, both ends drop: edge men, one inside backer right A, nose left A',
  ...odd('LOLB L-C', 'Nose L-A', 'RILB R-A', 'ROLB R-C'),
  rows: {
    'five, half slide L': ['LT:LOLB C:Nose RG:RILB', 'ROLB', 'LG RT'],
    'six, half slide L': ['LT:LOLB C:Nose RG:RILB RB:ROLB', '', 'LG RT'],
    'six, half slide R': ['LG:Nose C:RILB RT:ROLB RB:LOLB', '', 'LT RG'],
    'six, full slide L': ['LT:LOLB C:Nose RG:RILB RB:ROLB', '', 'LG RT'],
    'six, full slide R': ['LG:Nose C:RILB RT:ROLB RB:LOLB', '', 'LT RG'],
    'six, big on big': ['LT:LOLB C:Nose RT:ROLB RB:RILB', '', 'LG RG'],
  },
};

const RUSHES = [EDGE_FIRE_ZONE, CROSS, ONE_PER_GAP, TWO_OFF_ONE_EDGE, FIVE_STRAIGHT, FOUR_SIMULATED];

const names = Object.keys(SCHEMES).filter((each): each is SchemeName => each in SCHEMES);
const CASES = RUSHES.flatMap((each) => names.map((name) => ({ ...each, name })));

it('has all thirty-six rows', () => {
  expect(CASES).toHaveLength(36);
});

describe.each(RUSHES)('$title', (each) => {
  it.each(names)('%s', (name) => {
    expect(row(meet(FIVE_LINEMEN, SCHEMES[name], each.front, each.rushers))).toEqual(each.rows[name]);
  });
});
