import type { FloatingKind, OptionPhase, RunConcept } from '../offenceVocabulary.ts';
import type { Side } from '../vocabulary.ts';
import type { Because } from './because.ts';
import type { PlayerId, RoleId } from './ids.ts';
import type { Gap } from './job.ts';
import type { Yards } from './look.ts';

/** A blocker who leaves his place in the surface: the gap beside him closes, another opens where he arrives. */
export interface Puller {
  readonly player: PlayerId;
  readonly from: Gap;
  readonly to: Gap;
}

/** A man from the backfield who leads: a gap opens where he inserts. */
export interface Lead {
  readonly player: PlayerId;
  readonly to: Gap;
}

/** A gap that is not there before the snap. It needs a defender like any other. */
export interface FloatingGap {
  /** Unique in one picture: its kind and its player. */
  readonly id: string;
  readonly kind: FloatingKind;
  readonly side: Side;
  /** The standing gap beside which it opens. */
  readonly near: Gap;
  /** Where to draw it, in yards from the ball: at that gap, a pitch outside it. An estimate. */
  readonly x: Yards;
  readonly player: PlayerId;
}

/** Which defender a rule points at, told by where he stands and never by a name. Distances go outward from the ball. */
export interface ManRule {
  readonly side: Side;
  /** The middle of the body he is counted from. */
  readonly from: Yards;
  /** True: a man head up on that body counts too. */
  readonly headUp: boolean;
  /** True: only a man at a lineman's depth. */
  readonly atLineOnly: boolean;
  /** A man at the line farther out than this is none of the line. */
  readonly reach: Yards;
  /** The first such man, or the next one. */
  readonly which: 'first' | 'next';
  readonly words: Because;
}

/** What follows from what the read man does: which phase he takes, and where the ball then goes. */
export interface ReadOutcome {
  readonly takes: OptionPhase;
  readonly ball: 'give' | 'keep' | 'pitch';
}

/** The option in a concept: the gaps of the man who is handed the ball, and what each reaction of the read man brings. */
export interface OptionRule {
  /** Empty: nobody is handed the ball. */
  readonly give: readonly Gap[];
  readonly ifCrash: ReadOutcome;
  readonly ifWait: ReadOutcome;
}

/** One run concept in one look to one side, by the textbook; never scouting. */
export interface RunPicture {
  readonly concept: RunConcept;
  /** The side the run goes to: the defence's left or right. */
  readonly side: Side;
  /** Who carries, or would be handed the ball. */
  readonly carrier: PlayerId;
  /** The point of attack: the first of `aims`. */
  readonly aim: Gap;
  /** Every gap the concept calls its point of attack, the first one first. */
  readonly aims: readonly Gap[];
  /** Where the ball bounces out, or winds back, if its aim is closed. */
  readonly bounce: Gap | null;
  readonly cutback: Gap | null;
  readonly pullers: readonly Puller[];
  readonly leads: readonly Lead[];
  /** The passer runs, or may: who he is and where. */
  readonly keeper: { readonly player: PlayerId; readonly where: Gap } | null;
  readonly pitch: { readonly player: PlayerId; readonly where: Gap } | null;
  /** The defender who is read instead of blocked. */
  readonly read: ManRule | null;
  /** The defender the pitch is decided on, where it is not the read man. */
  readonly pitchRead: ManRule | null;
  readonly option: OptionRule | null;
  /** Whom nobody blocks: in words, and where he stands if the concept says so. */
  readonly leftUnblocked: { readonly words: Because; readonly man: ManRule | null } | null;
  /** Gaps more or fewer than before the snap, on each side; the sum of what floats in and what closes. */
  readonly gapChange: Readonly<Record<Side, number>>;
  readonly floating: readonly FloatingGap[];
  /** What must fit, in words. */
  readonly fit: Because;
  readonly because: Because;
}

/** Who has which phase of an option, after the read man did what he does. */
export interface OptionDuties {
  readonly ball: ReadOutcome['ball'];
  readonly dive: readonly RoleId[];
  readonly quarterback: readonly RoleId[];
  readonly pitch: readonly RoleId[];
  /** Phases of this concept nobody has. */
  readonly missing: readonly OptionPhase[];
  readonly because: Because;
}
