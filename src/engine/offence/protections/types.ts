import type { Result } from '../../../base/index.ts';
import type { Because, Gap, LookFacts, PlayerId, Point, RoleId } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';
import type { BackJob, ProtectionSchemeName, TightEndJob } from './vocabulary.ts';

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
