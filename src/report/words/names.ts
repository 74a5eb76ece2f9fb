import type {
  BodyName,
  EdgePlay,
  Gap,
  Leverage,
  Manner,
  OffenceKind,
  Passing,
  Place,
  Room,
  Strength,
  Support,
  Zone,
} from '../../engine/index.ts';

/** The one way a gap is named: "A gap left". The side is the defence's. */
export function gapName(gap: Gap): string {
  return `${gap.letter} gap ${gap.side}`;
}

export const BODY_WORDS: Readonly<Record<BodyName, string>> = {
  snapper: 'snapper',
  guard: 'guard',
  tackle: 'tackle',
  end: 'tight end',
  wing: 'wing',
  last: 'last man',
};

export const LEVERAGE_WORDS: Readonly<Record<Leverage, string>> = {
  inside: 'a man inside',
  'inside-foot': 'inside foot of',
  head: 'head up on',
  'outside-foot': 'outside foot of',
  outside: 'a man outside',
};

/** What a man of the offence is called before his letter. */
export const KIND_WORDS: Readonly<Record<OffenceKind, string>> = {
  snapper: 'snapper',
  lineman: 'lineman',
  'tight-end': 'tight end',
  receiver: 'receiver',
  back: 'back',
  passer: 'passer',
};

export const ROOM_WORDS: Readonly<Record<Room, string>> = {
  line: 'Line',
  linebackers: 'Linebackers',
  secondary: 'Secondary',
};

/** How he goes to his gap, said after the gap. */
export const MANNER_WORDS: Readonly<Record<Manner, string>> = {
  penetrate: 'penetrate',
  slant: 'on the slant',
  loop: 'on the loop',
  'two-gap': 'two-gap',
  read: 'on the read',
};

/** The way past a neighbour, said before him. */
export const PASSING_WORDS: Readonly<Record<Passing, string>> = {
  under: 'under',
  over: 'over',
  'inside-hip': 'off the inside hip of',
  'outside-hip': 'off the outside hip of',
};

export const SUPPORT_WORDS: Readonly<Record<Support, string>> = {
  force: 'force',
  alley: 'alley',
  cutback: 'cutback',
  fold: 'fold',
};

export const EDGE_WORDS: Readonly<Record<EdgePlay, string>> = { spill: 'spill', box: 'box' };

export const STRENGTH_WORDS: Readonly<Record<Strength, string>> = {
  'tight-end': 'the tight end',
  receivers: 'the receivers',
  back: 'the back',
  field: 'the field',
};

/** Where the ball lies, said of the defence's left and right. */
export const SPOT_WORDS: Readonly<Record<Place, string>> = {
  left: 'left hash',
  middle: 'middle',
  right: 'right hash',
};

/** A zone without its side. */
export const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  seam: 'seam',
  hook: 'hook',
  hole: 'hole',
  'curl-flat': 'curl-flat',
  flat: 'flat',
  hot: 'hot zone',
  middle: 'deep middle',
  third: 'deep third',
  half: 'deep half',
  quarter: 'deep quarter',
};

/** Zones that can only be in the middle of the field, so that nobody adds it. */
const MIDDLE_BY_NAME: readonly Zone[] = ['hole', 'middle'];

/**
 * A zone with its side already in words: "seam left", "middle hook", "deep middle third". `middle` for a zone in the
 * middle of the field.
 */
export function zoneName(zone: Zone, side: string): string {
  if (side !== 'middle') return `${ZONE_WORDS[zone]} ${side}`;
  if (MIDDLE_BY_NAME.includes(zone)) return ZONE_WORDS[zone];
  const deep = ZONE_WORDS[zone].startsWith('deep ');
  return deep ? `deep middle ${ZONE_WORDS[zone].slice('deep '.length)}` : `middle ${ZONE_WORDS[zone]}`;
}
