import type { BodyName, Comparison, Direction, GapLetter, Leverage, Room, Side, Strength } from '../vocabulary.ts';
import type { FrontId, GroupId, LookId, RoleId } from './ids.ts';
import type { Yards } from './look.ts';

/** A side told in relation to somebody: the call's, the defender's own, or a plain left or right. */
export type SideRef = 'call' | 'away' | 'mine' | 'other' | Side;

/** A gap named by a rule, before it is known which side is which. */
export type GapRef =
  | { readonly kind: 'letter'; readonly side: SideRef; readonly letter: GapLetter }
  /** The outermost gap of that side, whatever its letter in this look. */
  | { readonly kind: 'edge'; readonly side: SideRef }
  /** The gap just outside a named body; unresolved when that body is not there. */
  | { readonly kind: 'outside'; readonly side: SideRef; readonly body: BodyName };

/** One condition of a rule, told about the look. All conditions of a list must hold; an empty list always holds. */
export type LookTest =
  /** Attached bodies outside the snapper on a side: guard and tackle are 2, an attached tight end makes 3. */
  | { readonly kind: 'bodies'; readonly side: SideRef; readonly compare: Comparison; readonly count: number }
  /** Eligible receivers outside the backfield on a side, an attached tight end included. */
  | { readonly kind: 'receivers'; readonly side: SideRef; readonly compare: Comparison; readonly count: number }
  /** Backs in the backfield, the passer not counted. */
  | { readonly kind: 'backs'; readonly compare: Comparison; readonly count: number }
  /** The side is the wide side of the field; false when the ball is in the middle. */
  | { readonly kind: 'field'; readonly side: SideRef }
  /** The backs are offset to that side. */
  | { readonly kind: 'back'; readonly side: SideRef };

/** One step of a rule that picks a side; the first step that decides wins. */
export type SideStep =
  | { readonly kind: 'fixed'; readonly side: Side }
  | { readonly kind: 'strength'; readonly by: Strength; readonly toward: Direction }
  | { readonly kind: 'role'; readonly role: RoleId; readonly toward: Direction };

/** How a role chooses its side. A man in the middle has none. */
export type RoleSide = { readonly kind: 'middle' } | { readonly kind: 'steps'; readonly steps: readonly SideStep[] };

/** One of the defensive roles of the playbook. */
export interface Role {
  readonly id: RoleId;
  /** One or two letters, as drawn on the board. */
  readonly letter: string;
  readonly name: string;
  readonly room: Room;
  /** What a pressure calls him with his mate: "end", "outside backer". */
  readonly group: GroupId;
  readonly side: RoleSide;
}

/** Where an alignment rule puts a man, on his own side. `depth` is yards off the ball, into the defensive backfield. */
export type Spot =
  | { readonly kind: 'technique'; readonly on: BodyName; readonly leverage: Leverage; readonly depth: Yards }
  /** `offset` yards outside the last body of his side. */
  | { readonly kind: 'edge'; readonly offset: Yards; readonly depth: Yards }
  /** On the receiver with that number of his side, counted from the sideline inward. */
  | {
      readonly kind: 'receiver';
      readonly number: number;
      readonly leverage: 'inside' | 'head' | 'outside';
      readonly depth: Yards;
    }
  /** Halfway between the last body of his side and that receiver. */
  | { readonly kind: 'apex'; readonly number: number; readonly depth: Yards }
  /** `offset` yards from the ball toward his side. */
  | { readonly kind: 'ball'; readonly offset: Yards; readonly depth: Yards };

/** If all of `when` hold, he stands there. The first rule of a list that holds and can be placed wins. */
export interface AlignRule {
  readonly when: readonly LookTest[];
  readonly spot: Spot;
}

/** What a role plays in this front when nobody tells him anything else. */
export interface BaseJob {
  /** The gaps he may fit, the most natural first; a two-gap man plays the first two. Empty: none. */
  readonly gaps: readonly GapRef[];
  readonly style: 'one-gap' | 'two-gap';
  /** What he does when it is a pass: rush his lane, rush and keep the passer inside on his side, or neither. */
  readonly pass: 'rush' | 'contain' | 'none';
}

/** One role in a front. */
export interface FrontRole {
  readonly role: RoleId;
  readonly rules: readonly AlignRule[];
  readonly base: BaseJob;
}

/** A coach's drag: for this look he stands here, whatever the rule says. */
export interface ByHand {
  readonly look: LookId;
  readonly role: RoleId;
  readonly x: Yards;
  readonly y: Yards;
}

/** A front: eleven roles, where each stands by rule, what each plays at base, and the spots set by hand. */
export interface Front {
  readonly id: FrontId;
  readonly name: string;
  readonly roles: readonly FrontRole[];
  readonly byHand: readonly ByHand[];
}
