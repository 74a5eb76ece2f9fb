import type { Result } from '../../../base/index.ts';
import type { BackJob, ProtectionSchemeName, TightEndJob } from '../../offenceVocabulary.ts';
import type { Because, Gap, LookFacts, Point, ProtectionPicture, RoleId } from '../../types/index.ts';
import type { Side } from '../../vocabulary.ts';

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

/** Refused when the look lacks the back or the tight end the protection keeps in. */
export type ProtectionResult = Result<ProtectionPicture, Because>;
