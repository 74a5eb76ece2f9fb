import type { Side } from '../vocabulary.ts';
import type { Because } from './because.ts';
import type { PlayerId, RoleId } from './ids.ts';
import type { Gap } from './job.ts';

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
