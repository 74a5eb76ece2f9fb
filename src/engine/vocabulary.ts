/**
 * The trade's words the engine reasons with, each list once. Types come from the lists, so that a new word is one edit.
 * Sides are always the DEFENCE's: its left is x < 0.
 */

/** The defence's left (x < 0) and right (x > 0). */
export const SIDES = ['left', 'right'] as const;
export type Side = (typeof SIDES)[number];

/** Where a man stands across the ball: to one side, or in the middle. */
export const PLACES = ['left', 'middle', 'right'] as const;
export type Place = (typeof PLACES)[number];

/** Rule codes that differ in hash marks and formation legality. */
export const RULE_LEVELS = ['high-school', 'college', 'professional'] as const;
export type RuleLevel = (typeof RULE_LEVELS)[number];

/**
 * Gap letters, counted from the snapper outward on each side. Source: "Gaps of understanding", Washington Post, 2020;
 * Wikipedia, "Gap (American football)". F and G only occur beside an unbalanced line.
 */
export const GAP_LETTERS = ['A', 'B', 'C', 'D', 'E', 'F', 'G'] as const;
export type GapLetter = (typeof GAP_LETTERS)[number];

/** The bodies of a surface, from the snapper outward; `last` is whoever is outermost on that side. */
export const BODIES = ['snapper', 'guard', 'tackle', 'end', 'wing', 'last'] as const;
export type BodyName = (typeof BODIES)[number];

/** Where a defender stands on a body: a whole man inside, his inside foot, head up, his outside foot, a whole man outside. */
export const LEVERAGES = ['inside', 'inside-foot', 'head', 'outside-foot', 'outside'] as const;
export type Leverage = (typeof LEVERAGES)[number];

/** What an offensive player came in as; where he stands decides everything else. */
export const OFFENCE_KINDS = ['snapper', 'lineman', 'tight-end', 'receiver', 'back', 'passer'] as const;
export type OffenceKind = (typeof OFFENCE_KINDS)[number];

/** Position rooms, for sheets. */
export const ROOMS = ['line', 'linebackers', 'secondary'] as const;
export type Room = (typeof ROOMS)[number];

/** How a lineman or rusher plays the gap he is sent to. */
export const MANNERS = ['penetrate', 'slant', 'loop', 'two-gap', 'read'] as const;
export type Manner = (typeof MANNERS)[number];

/** Zones a dropping defender may be sent to. */
export const ZONES = [
  'seam',
  'hook',
  'hole',
  'curl-flat',
  'flat',
  'hot',
  'middle',
  'third',
  'half',
  'quarter',
] as const;
export type Zone = (typeof ZONES)[number];

/** Run support beyond a gap. `force` is a run fact; rush contain is a pass fact. */
export const SUPPORTS = ['force', 'alley', 'cutback', 'fold'] as const;
export type Support = (typeof SUPPORTS)[number];

/** How the man on the edge takes a kick-out block. */
export const EDGE_PLAYS = ['spill', 'box'] as const;
export type EdgePlay = (typeof EDGE_PLAYS)[number];

/** What a formation can be strong by. */
export const STRENGTHS = ['tight-end', 'receivers', 'back', 'field'] as const;
export type Strength = (typeof STRENGTHS)[number];

/** Toward a strength (or a man's side), or away from it. */
export const DIRECTIONS = ['to', 'away'] as const;
export type Direction = (typeof DIRECTIONS)[number];

/** How a told job passes its neighbour on the way. */
export const PASSINGS = ['under', 'over', 'inside-hip', 'outside-hip'] as const;
export type Passing = (typeof PASSINGS)[number];

/** How the second pressure of a combined call is turned. */
export const TURNS = ['own', 'same', 'opposite'] as const;
export type Turn = (typeof TURNS)[number];

/** What makes a pressure tell a job; a later one in this list is stronger (docs/decisions/0001). */
export const TOLD_BASES = ['consequence', 'movement', 'path'] as const;
export type ToldBasis = (typeof TOLD_BASES)[number];

/** Everything a job can rest on, weakest first. The shell behind the rush ranks above the front's base job only. */
export const BASES = ['base', 'coverage', ...TOLD_BASES] as const;
export type Basis = (typeof BASES)[number];

/**
 * Classes of formations a staff makes its check-outs by, the most special first: a look's first class that a table names
 * decides. Source: blitz checks by formation, A. Hovorka, "4-3 Blitz Checks to Attack Protections", X&O Labs, 2017; "Check
 * Defense", Football Is Life blog, 5 May 2020; the list itself from memory.
 */
export const FORMATION_CLASSES = [
  'unbalanced',
  'empty-four-by-one',
  'empty-three-by-two',
  'heavy',
  'two-backs',
  'quads',
  'bunch',
  'trips-nub',
  'trips-tight-end',
  'trips',
  'wing',
  'two-tight-ends',
  'doubles-tight-end',
  'doubles',
] as const;
export type FormationClass = (typeof FORMATION_CLASSES)[number];

/** How grave a finding is: do not install it, the coach must decide, worth knowing. */
export const SEVERITIES = ['stop', 'check', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** How a condition compares a count. */
export const COMPARISONS = ['at-least', 'at-most', 'exactly'] as const;
export type Comparison = (typeof COMPARISONS)[number];
