import type { EdgePlay, GapLetter, Manner, Passing, Side, Support, Zone } from '../vocabulary.ts';
import type { GapRef, SideRef } from './defence.ts';
import type { GroupId, PlayerId, RoleId } from './ids.ts';
import type { Yards } from './look.ts';

/** A run gap of a look, in absolute terms. */
export interface Gap {
  readonly side: Side;
  readonly letter: GapLetter;
}

/** A defender named by a rule: one role, or the man of a group on the call side or away from it. */
export type Who =
  | { readonly kind: 'role'; readonly role: RoleId }
  | { readonly kind: 'group'; readonly group: GroupId; readonly side: 'call' | 'away' };

/** A receiver named by a rule. */
export type ReceiverRef =
  | { readonly kind: 'number'; readonly side: SideRef; readonly number: number }
  /** Backs are counted from the man's own side outward: 1 is the only back, or the one nearest to his side. */
  | { readonly kind: 'back'; readonly number: number };

/** The way to a gap: straight, or past a named neighbour. */
export type Track<W> =
  { readonly kind: 'straight' } | { readonly kind: 'past'; readonly how: Passing; readonly neighbour: W };

/** Who goes first of two whose paths meet: the penetrator first, the looper second. */
export interface Order<W> {
  readonly turn: 'first' | 'second';
  readonly neighbour: W;
}

/** What a coverage player does against the run. */
export interface RunSupport<G> {
  /** Gaps of his. */
  readonly fits: readonly G[];
  /** True: these are his own. False: he takes one of them only if nobody else has it, the first one first. */
  readonly firm: boolean;
  readonly support: Support | null;
}

/** Kinds of names a job is told with: relative ones in a rule, absolute ones in a look. */
export interface Names {
  readonly gap: unknown;
  readonly who: unknown;
  readonly side: unknown;
  readonly receiver: unknown;
}

/** Names in a rule. A zone in the middle has side `middle`. */
export interface RuleNames {
  readonly gap: GapRef;
  readonly who: Who;
  readonly side: SideRef | 'middle';
  readonly receiver: ReceiverRef;
}

/** Names in one look. */
export interface LookNames {
  readonly gap: Gap;
  readonly who: RoleId;
  readonly side: Side | 'middle';
  readonly receiver: PlayerId;
}

/** Rush a gap: against the run it is his gap, against the pass his lane. Two gaps only for a man who two-gaps. */
export interface RushJob<N extends Names> {
  readonly kind: 'rush';
  readonly gaps: readonly N['gap'][];
  readonly manner: Manner;
  readonly track: Track<N['who']>;
  readonly edge: EdgePlay | null;
  /** He leaves with the back if the back flares to his side. */
  readonly peel: boolean;
  /** Before or after a named neighbour; null: at the snap, whatever the others do. */
  readonly order: Order<N['who']> | null;
}

/** Rush that also keeps the passer inside, on the side of his gap. */
export interface ContainJob<N extends Names> {
  readonly kind: 'contain';
  readonly gaps: readonly N['gap'][];
  readonly manner: Manner;
  readonly track: Track<N['who']>;
  readonly edge: EdgePlay | null;
  /** He leaves with the back if the back flares to his side. */
  readonly peel: boolean;
  /** Before or after a named neighbour; null: at the snap, whatever the others do. */
  readonly order: Order<N['who']> | null;
}

/** Play a run gap after a read; not a rush. */
export interface FitJob<N extends Names> {
  readonly kind: 'fit';
  readonly gaps: readonly N['gap'][];
  readonly manner: Manner;
  readonly support: Support | null;
}

/** Drop to a zone of the shell. */
export interface DropJob<N extends Names> {
  readonly kind: 'drop';
  readonly zone: Zone;
  readonly side: N['side'];
  readonly run: RunSupport<N['gap']>;
}

/** Cover one receiver. */
export interface ManJob<N extends Names> {
  readonly kind: 'man';
  readonly receiver: N['receiver'];
  readonly run: RunSupport<N['gap']>;
}

/** Stay with the passer. */
export interface SpyJob<N extends Names> {
  readonly kind: 'spy';
  readonly run: RunSupport<N['gap']>;
}

/** One defender's job, run and pass told at once. */
export type JobOf<N extends Names> = RushJob<N> | ContainJob<N> | FitJob<N> | DropJob<N> | ManJob<N> | SpyJob<N>;

/** A job as a rule tells it. */
export type RuleJob = JobOf<RuleNames>;

/** A job in one look, all sides known. */
export type Job = JobOf<LookNames>;

/** What a man does before the snap because of this job. */
export type PreSnap =
  /** Stand as deep as the heels of that man. */
  | { readonly kind: 'heels'; readonly of: Who }
  /** Stand that deep. */
  | { readonly kind: 'depth'; readonly depth: Yards };
