import type { Result } from '../../../base/index.ts';
import type { Because, Gap, LookFacts, PlayerId, Point, RoleId } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';

/**
 * How the line shares out the rushers. `half-slide`: man on the side away from the slide up to the first uncovered lineman,
 * who starts the slide ("Understanding 1/2 Slide Protection", Blitzology, 2010). `full-slide`: everybody takes the gap toward
 * the slide and a back has the edge left behind ("What GT Does - Pass Blocking", GTSwarm). `man`: big on big, back on backer
 * ("Pass Protection 101", Dawgs By Nature, 2011).
 */
export const PROTECTION_SCHEMES = ['half-slide', 'full-slide', 'man'] as const;
export type ProtectionSchemeName = (typeof PROTECTION_SCHEMES)[number];

/** What the backs do: all of them release, one stays in, or two do (one for each side). */
export const BACK_JOBS = ['releases', 'stays', 'both-stay'] as const;
export type BackJob = (typeof BACK_JOBS)[number];

/** What the attached tight ends and wings do, all of them alike. */
export const TIGHT_END_JOBS = ['release', 'stay'] as const;
export type TightEndJob = (typeof TIGHT_END_JOBS)[number];

/** A protection as called in one look. */
export interface ProtectionScheme {
  readonly scheme: ProtectionSchemeName;
  /**
   * The side the line turns to (the defence's left or right). The single back works the other one. In `man` it only breaks
   * ties: a free lineman looks that way first, the back the other way.
   */
  readonly slideSide: Side;
  readonly back: BackJob;
  readonly tightEnds: TightEndJob;
}

/** A protection of the vocabulary, before its side is known. */
export interface Protection extends Omit<ProtectionScheme, 'slideSide'> {
  /** Stable; never changes its meaning. */
  readonly id: string;
  readonly name: string;
}

/**
 * The protections a coach hears about, simplest first. Free release ("scat"): "Safety Firezone Pressure", Blitzology, 2020.
 * Two backs, a side each: "Pass Protection 101", Dawgs By Nature, 2011. Everybody in ("max"): from memory.
 */
export const PROTECTIONS = [
  {
    id: 'half-slide-five',
    name: 'half slide, free release',
    scheme: 'half-slide',
    back: 'releases',
    tightEnds: 'release',
  },
  { id: 'half-slide-six', name: 'half slide with the back', scheme: 'half-slide', back: 'stays', tightEnds: 'release' },
  {
    id: 'half-slide-end',
    name: 'half slide with the back and the tight end',
    scheme: 'half-slide',
    back: 'stays',
    tightEnds: 'stay',
  },
  {
    id: 'half-slide-backs',
    name: 'half slide with two backs',
    scheme: 'half-slide',
    back: 'both-stay',
    tightEnds: 'release',
  },
  { id: 'full-slide-six', name: 'full slide with the back', scheme: 'full-slide', back: 'stays', tightEnds: 'release' },
  {
    id: 'full-slide-end',
    name: 'full slide with the back and the tight end',
    scheme: 'full-slide',
    back: 'stays',
    tightEnds: 'stay',
  },
  { id: 'man-five', name: 'man, free release', scheme: 'man', back: 'releases', tightEnds: 'release' },
  { id: 'man-six', name: 'man with the back (big on big)', scheme: 'man', back: 'stays', tightEnds: 'release' },
  { id: 'man-end', name: 'man with the back and the tight end', scheme: 'man', back: 'stays', tightEnds: 'stay' },
  { id: 'man-backs', name: 'man with two backs', scheme: 'man', back: 'both-stay', tightEnds: 'release' },
  { id: 'max', name: 'everybody stays in', scheme: 'half-slide', back: 'both-stay', tightEnds: 'stay' },
] as const satisfies readonly Protection[];
export type ProtectionId = (typeof PROTECTIONS)[number]['id'];

/** A defender as he stands at the snap: what the protection is set against. */
export interface Threat extends Point {
  readonly role: RoleId;
}

/** A defender who comes. `from` is where he stands, `endGap` the gap his path ends in, `order` against a mate in that gap. */
export interface Rusher {
  readonly role: RoleId;
  readonly from: Point;
  readonly endGap: Gap;
  readonly order: 'first' | 'second' | null;
}

/** Everything `protect` asks. Every rusher is among the defenders, once. */
export interface ProtectionInput {
  readonly facts: LookFacts;
  readonly scheme: ProtectionScheme;
  readonly defenders: readonly Threat[];
  readonly rushers: readonly Rusher[];
}

/** By what a blocker finds his man: the man he was given, the gap he was given, or a look through the rushers left over. */
export type BlockBy = 'man' | 'gap' | 'scan';

export interface Block {
  readonly blocker: PlayerId;
  readonly rusher: RoleId;
  readonly by: BlockBy;
  readonly because: Because;
}

/** A rusher nobody has by rule, though somebody may be idle. */
export interface UnblockedRusher {
  readonly rusher: RoleId;
  readonly endGap: Gap;
  readonly because: Because;
}

/** A blocker with nobody to block; `lineman` false for a back. */
export interface IdleBlocker {
  readonly blocker: PlayerId;
  readonly lineman: boolean;
  readonly because: Because;
}

/** Who could take an unblocked man if the line passes men on; `hands`, the man he gives to a neighbour first. */
export interface PassOff {
  readonly rusher: RoleId;
  readonly by: PlayerId;
  readonly hands: { readonly rusher: RoleId; readonly to: PlayerId } | null;
  readonly because: Because;
}

/** A block that is had by rule but is a bad one. */
export interface Mismatch {
  readonly kind: 'back-on-line-man' | 'far-redirect';
  readonly blocker: PlayerId;
  readonly rusher: RoleId;
  readonly because: Because;
}

/** The side the passer must throw hot to, and why. */
export interface Hot {
  readonly side: Side;
  readonly why: Because;
}

/** One protection against one rush, by rule; never scouting. */
export interface ProtectionPicture {
  readonly blocks: readonly Block[];
  readonly unblocked: readonly UnblockedRusher[];
  readonly idle: readonly IdleBlocker[];
  readonly passOff: readonly PassOff[];
  readonly mismatches: readonly Mismatch[];
  readonly hot: Hot | null;
  readonly because: Because;
}

/** Refused when the look lacks the back or the tight end the protection keeps in. */
export type ProtectionResult = Result<ProtectionPicture, Because>;
