import type { Stamp } from '../move/types.ts';
import type { Gap, PlayerId, Point, RoleId } from '../types/index.ts';
import type { Side } from '../vocabulary.ts';

/** What the offence does while the snap is walked through: a pass nobody has drawn, or a play of the look by its place. */
export type Against =
  | { readonly kind: 'pass' }
  | { readonly kind: 'protection'; readonly index: number }
  | { readonly kind: 'run'; readonly index: number };

/** Where one of the eleven of the defence is, from the snap (t = 0, in seconds) on; he stays where his path ends. */
export interface DefenceTrack {
  readonly role: RoleId;
  readonly path: readonly Stamp[];
}

/** The same for one of the offence. A man whose way is not known stays where he is as the ball is snapped. */
export interface OffenceTrack {
  readonly player: PlayerId;
  readonly path: readonly Stamp[];
}

/** A man is in a run gap of his, `t` seconds after the snap. */
export interface GapFill {
  readonly role: RoleId;
  readonly gap: Gap;
  readonly t: number;
}

/** Something that happens, `t` seconds after the snap. */
export type Moment = { readonly t: number } & (
  | { readonly kind: 'in-gap'; readonly role: RoleId; readonly gaps: readonly Gap[] }
  /** A blocker meets his rusher, who is shown held there. */
  | { readonly kind: 'meets'; readonly blocker: PlayerId; readonly rusher: RoleId }
  /** A rusher is at the passer. `free`: by rule nobody blocks him; else it is only said of him if nobody did. */
  | { readonly kind: 'at-passer'; readonly role: RoleId; readonly free: boolean; readonly thrown: boolean }
  /** The ball is thrown: hot to a side, or as from a drop of five steps. */
  | { readonly kind: 'thrown'; readonly hot: Side | null }
  /** Whoever pulls or leads is where the gap he makes opens. */
  | { readonly kind: 'opens'; readonly player: PlayerId; readonly near: Gap }
  /** A man is in the gap that a player made. */
  | { readonly kind: 'fits-opened'; readonly role: RoleId; readonly player: PlayerId; readonly near: Gap }
  /** The carrier is at the line, and which owners of the gap are there by then. */
  | {
      readonly kind: 'ball-at';
      readonly player: PlayerId;
      readonly gap: Gap;
      readonly there: readonly RoleId[];
    }
);

/** One snap, walked through. Every time in it is an estimate. */
export interface WalkThrough {
  readonly against: Against;
  /** All eleven, in the order of the assignments. */
  readonly defence: readonly DefenceTrack[];
  /** All eleven, in the order of the look. */
  readonly offence: readonly OffenceTrack[];
  /** Where the passer throws from; null: it is a run, or it is open who passes. */
  readonly throwsFrom: Point | null;
  readonly fills: readonly GapFill[];
  /** Gaps that have an owner none of whom comes to them in this play. */
  readonly unfilled: readonly { readonly gap: Gap; readonly owners: readonly RoleId[] }[];
  /** Told two things: they are shown doing what the first pressure says. */
  readonly inDoubt: readonly RoleId[];
  /** In the order of time; at one time in the order of the assignments. */
  readonly moments: readonly Moment[];
  /** How long it takes, in seconds: until the last moment, and a little more. */
  readonly seconds: number;
}
